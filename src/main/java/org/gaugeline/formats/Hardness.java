package org.gaugeline.formats;

import java.util.Comparator;
import java.util.List;
import org.gaugeline.assessment.Finding;

/** Findings by how hard they are. */
final class Hardness {
  private static final Comparator<Finding> HARDEST_FIRST =
      Comparator.comparing(Finding::severity).reversed();

  private Hardness() {}

  /** The hardest first; among equals in the order in which they were told. */
  static List<Finding> hardestFirst(List<Finding> findings) {
    return findings.stream().sorted(HARDEST_FIRST).toList();
  }
}
