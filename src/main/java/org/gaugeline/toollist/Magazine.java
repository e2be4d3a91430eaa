package org.gaugeline.toollist;

/** What one machine's magazine has to hold. */
final class Magazine {
  private final int pockets;
  private final Places ordinary = new Places();
  private final Places large = new Places();

  /**
   * An empty magazine.
   *
   * @param pockets how many it has; 0 where not known
   */
  Magazine(int pockets) {
    this.pockets = pockets;
  }

  void add(JudgedLine line) {
    (line.needsEmptyNeighbours() ? large : ordinary).add(line.place());
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
