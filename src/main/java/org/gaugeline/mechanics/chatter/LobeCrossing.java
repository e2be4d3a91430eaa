package org.gaugeline.mechanics.chatter;

/**
 * Where a branch meets the phase condition of a speed.
 *
 * @param node the node after it; the one before belongs to the same run
 * @param lobe the integer met
 * @param re Re λ there, straight between the nodes
 */
record LobeCrossing(int node, double lobe, double re) {
  private static final LobeCrossing NONE = new LobeCrossing(-1, 0, 0);

  boolean exists() {
    return node >= 0;
  }

  /**
   * The crossing with the largest Re λ, which is the least depth, where ω·perOmega − turn is an
   * integer.
   *
   * @param nodes samples of the branches
   * @param perOmega 1/(NΩ), s/rad
   */
  static LobeCrossing deepest(LobeNodes nodes, double perOmega) {
    LobeCrossing best = NONE;
    double before = 0;
    double floorBefore = 0;
    for (int i = 0; i < nodes.size; i++) {
      double value = nodes.omega[i] * perOmega - nodes.turn[i];
      double floor = Math.floor(value);
      if (floor != floorBefore
          && !nodes.opensRun[i]
          && Math.max(nodes.re[i - 1], nodes.re[i]) > best.re) {
        best = better(best, nodes, i, before, value);
      }
      before = value;
      floorBefore = floor;
    }
    return best;
  }

  /** Looks at the first and the last integer passed; Re λ is straight between them. */
  private static LobeCrossing better(
      LobeCrossing best, LobeNodes nodes, int node, double before, double value) {
    double first = Math.floor(Math.min(before, value)) + 1;
    double last = Math.floor(Math.max(before, value));
    double atFirst = LobeNodes.between(nodes.re, node, (first - before) / (value - before));
    double atLast = LobeNodes.between(nodes.re, node, (last - before) / (value - before));
    if (Math.max(atFirst, atLast) <= best.re) {
      return best;
    }
    return atFirst >= atLast
        ? new LobeCrossing(node, first, atFirst)
        : new LobeCrossing(node, last, atLast);
  }
}
