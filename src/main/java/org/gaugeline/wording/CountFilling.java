package org.gaugeline.wording;

import org.gaugeline.quantity.TextBytes;
import org.gaugeline.toollist.ListFinding;

/** Fills sentences about a list, whose numbers are counts. */
record CountFilling(ListFinding finding) implements Filling {

  @Override
  public boolean has(Placeholder placeholder) {
    return switch (placeholder) {
      case DEMAND -> !Double.isNaN(finding.demand());
      case CAPACITY -> !Double.isNaN(finding.capacity());
      case SUBJECT -> true;
      case VALUE, OVERLAP, CONFIDENCE, TAIL, MATERIAL, SPEED, INTERFACE, NAME, FROM -> false;
    };
  }

  @Override
  public void write(TextBytes out, Placeholder placeholder) {
    switch (placeholder) {
      case DEMAND -> out.append(Long.toString((long) finding.demand()));
      case CAPACITY -> out.append(Long.toString((long) finding.capacity()));
      case SUBJECT -> out.append(finding.subject());
      case VALUE, OVERLAP, CONFIDENCE, TAIL, MATERIAL, SPEED, INTERFACE, NAME, FROM ->
          throw new IllegalStateException("{" + placeholder.id() + "} is not for lists");
    }
  }
}
