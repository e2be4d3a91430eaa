package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.formats.CsvRecords;
import org.gaugeline.formats.CsvRecords.Csv;
import org.gaugeline.formats.TextLines;
import org.jspecify.annotations.Nullable;

/** A list as a table: a line of column names, then one row a line. */
final class CsvList implements LineSource {
  private final TextLines lines;
  private final CsvRecords records;
  private final CsvColumns known;
  private final List<CsvColumns.@Nullable Column> columns = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();
  private final ListHead head;
  private @Nullable Csv first;

  /**
   * Reads the column names and the first row.
   *
   * @throws ProblemException where there are none, or no column is known, or one stands twice
   */
  CsvList(TextLines lines, Charset charset, CsvColumns known, ListHeads.Parameters parameters)
      throws IOException {
    this.lines = lines;
    this.records = new CsvRecords(lines, charset);
    this.known = known;
    Csv header = records.next();
    if (header != null && !header.fault().isEmpty()) {
      throw new ProblemException(
          Problem.malformedTable(header.fault(), Map.of("line", Math.toIntExact(header.line()))));
    }
    readHeader(header == null ? List.of() : header.cells());
    first = records.next();
    if (first == null) {
      throw new ProblemException(Problem.invalid(List.of(JsonList.noLines(""))));
    }
    ListHeads.Parameters constant =
        new ListHeads.Parameters(
            constant(CsvColumns.FAIL_ON, parameters.failOn(), first),
            constant(CsvColumns.ARTIFACT_URI, parameters.artifactUri(), first));
    constant.check("/");
    head = ListHead.none(constant.failOnOrError(), constant.uriOrNone());
  }

  private void readHeader(List<String> names) {
    List<Fault> faults = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String cell : names) {
      String name = cell.strip();
      CsvColumns.Column column = known.find(name);
      columns.add(column);
      if (column == null && !name.isEmpty()) {
        unknown.add(name);
      } else if (column != null && !seen.add(column.name())) {
        faults.add(
            new Fault(
                column.pointer(),
                "column-twice",
                "The column " + SchemaFaults.shown(name) + " stands twice: keep one.",
                Map.of("column", SchemaFaults.shown(name))));
      }
    }
    if (seen.isEmpty()) {
      faults.add(noKnownColumn(names));
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(Problem.invalid(faults));
    }
  }

  private Fault noKnownColumn(List<String> names) {
    List<String> near =
        names.isEmpty() ? List.of() : Nearest.of(names.get(0).strip(), known.names());
    return new Fault(
        "",
        "no-known-column",
        "The first line must hold column names such as tool.diameterMm"
            + (near.isEmpty() ? "" : "; nearest to the first are " + String.join(", ", near))
            + ". Maybe the header is missing, or the separator is neither comma, semicolon nor"
            + " tab.",
        Map.of());
  }

  /** A value for the whole list, which stands in each row and is read in the first; it wins. */
  private @Nullable String constant(String name, @Nullable String parameter, Csv row) {
    for (int i = 0; i < columns.size() && i < row.cells().size(); i++) {
      CsvColumns.Column column = columns.get(i);
      String cell = row.cells().get(i).strip();
      if (column != null && column.name().equals(name) && !cell.isEmpty()) {
        return cell;
      }
    }
    return parameter;
  }

  @Override
  public ListHead head() {
    return head;
  }

  @Override
  public List<String> unknownColumns() {
    return List.copyOf(unknown);
  }

  @Override
  public @Nullable RawLine next() throws IOException {
    Csv row = first == null ? records.next() : first;
    first = null;
    return row == null ? null : line(row);
  }

  @Override
  public boolean waiting() throws IOException {
    return first != null || lines.waiting();
  }

  private RawLine line(Csv row) {
    if (!row.fault().isEmpty()) {
      return new RawLine.Unreadable(row.line(), Problem.malformedTable(row.fault(), Map.of()));
    }
    ObjectNode line = StrictJson.MAPPER.createObjectNode();
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < row.cells().size(); i++) {
      String cell = row.cells().get(i).strip();
      if (cell.isEmpty()) {
        continue;
      }
      if (i >= columns.size()) {
        faults.add(tooManyCells(row));
        break;
      }
      CsvColumns.Column column = columns.get(i);
      if (column != null && !isConstant(column)) {
        put(column, cell, line, faults);
      }
    }
    return new RawLine.Read(row.line(), row.line(), line, faults);
  }

  private static boolean isConstant(CsvColumns.Column column) {
    return column.name().equals(CsvColumns.FAIL_ON)
        || column.name().equals(CsvColumns.ARTIFACT_URI);
  }

  private void put(CsvColumns.Column column, String cell, ObjectNode line, List<Fault> faults) {
    boolean decimalComma = records.separator() != ',';
    JsonNode value = CsvColumns.value(column, cell, decimalComma);
    if (value == null) {
      faults.add(unreadable(column, cell, decimalComma));
    } else if (!SymbolLines.put(line, column.pointer(), value)) {
      faults.add(
          new Fault(
              column.pointer(),
              "given-twice",
              "Column "
                  + column.name()
                  + " says again what another column says, maybe in another"
                  + " unit: fill one of them.",
              Map.of("column", column.name())));
    }
  }

  private static Fault unreadable(CsvColumns.Column column, String cell, boolean decimalComma) {
    String asked =
        switch (column.kind()) {
          case NUMBER -> "a number";
          case INTEGER -> "a whole number";
          case BOOLEAN -> "true or false";
          case STRING, ARRAY, OBJECT -> "a text";
        };
    String hint =
        column.kind() == Schema.Kind.BOOLEAN
            ? ""
            : decimalComma
                ? " Write no thousands separators and no units."
                : " A decimal comma is read only where cells are separated by semicolons or tabs;"
                    + " write no thousands separators and no units.";
    return new Fault(
        column.pointer(),
        "unreadable-cell",
        "The cell of column "
            + column.name()
            + " ("
            + SchemaFaults.shown(cell)
            + ") is not "
            + asked
            + "."
            + hint,
        Map.of("actual", SchemaFaults.shown(cell), "column", column.name()));
  }

  private Fault tooManyCells(Csv row) {
    return new Fault(
        "",
        "too-many-cells",
        "The row has "
            + row.cells().size()
            + " cells for "
            + columns.size()
            + " columns. Put cells that hold the separator between quotes.",
        Map.of("actual", row.cells().size(), "maximum", columns.size()));
  }
}
