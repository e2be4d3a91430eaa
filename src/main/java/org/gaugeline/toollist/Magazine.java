package org.gaugeline.toollist;

/** What one machine's magazine has to hold. */
final class Magazine {
  private final Places ordinary = new Places();
  private final Places large = new Places();

  /** The least that a line says; 0 where none says any. */
  private int pockets;

  void add(JudgedLine line) {
    (line.needsEmptyNeighbours() ? large : ordinary).add(line.place());
    if (line.pockets() > 0) {
      pockets = pockets == 0 ? line.pockets() : Math.min(pockets, line.pockets());
    }
  }

  int pockets() {
    return pockets;
  }

  Places large() {
    return large;
  }

  /**
   * Pockets that a ring of them must have: large tools stand side by side with one empty pocket
   * between two of them, so n + 2k + 1 for n ordinary and k large ones, 2k where all are large (one
   * alone still needs both neighbours empty: 3, or 2 in a ring of two).
   */
  long needed() {
    long k = large.count();
    long n = ordinary.count();
    if (k == 0) {
      return n;
    }
    return n == 0 ? 2 * k : n + 2 * k + 1;
  }
}
