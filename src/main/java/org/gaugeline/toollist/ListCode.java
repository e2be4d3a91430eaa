package org.gaugeline.toollist;

import java.util.List;
import org.gaugeline.assessment.Severity;
import org.gaugeline.reference.Word;

/** Kinds of list-wide findings. */
public enum ListCode implements Word {
  /** An id names more than one line. */
  DUPLICATE_ID("duplicate-id", Severity.ERROR, Severity.ERROR),
  /** More lines ask for one holder at the same time than the stock has. */
  HOLDER_ASKED_TWICE("holder-asked-twice", Severity.WARNING, Severity.ERROR),
  /** A holder is asked for that the stock does not list. */
  STOCK_MISSING("stock-missing", Severity.WARNING, Severity.ERROR),
  /** More tools than pockets, large ones counted with the neighbours that must stay empty. */
  MAGAZINE_FULL("magazine-full", Severity.ERROR, Severity.ERROR),
  /** Tools so large that their neighbour pockets must stay empty. */
  NEIGHBOURS_EMPTY("neighbours-empty", Severity.NOTE, Severity.NOTE),
  /** A line that cannot be read or weighed; told with the line, in reports under this code. */
  LINE_REFUSED("line-refused", Severity.ERROR, Severity.ERROR),
  /** A column that was not read. */
  UNKNOWN_COLUMN("unknown-column", Severity.NOTE, Severity.NOTE),
  /** Too many lines to look for what only shows when all are seen. */
  LIST_NOT_FULLY_COMPARED("list-not-fully-compared", Severity.NOTE, Severity.NOTE);

  private final String id;
  private final Severity usual;
  private final Severity hardest;

  ListCode(String id, Severity usual, Severity hardest) {
    this.id = id;
    this.usual = usual;
    this.hardest = hardest;
  }

  @Override
  public String id() {
    return id;
  }

  /** How hard it can be, hardest first. */
  public List<Severity> severities() {
    return usual == hardest ? List.of(usual) : List.of(hardest, usual);
  }
}
