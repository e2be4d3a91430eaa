package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;

/**
 * The holders of a spindle end by the shanks that they may take: of hundreds few take one, and
 * reading two numbers of each is cheaper than asking it.
 */
final class ShankIndex {
  /**
   * More than any holder allows a shank to be off: the index may offer too much, never too little.
   */
  private static final double MARGIN_M = 1e-4;

  private final HolderBody[] holders;
  private final double[] leastM;
  private final double[] mostM;

  ShankIndex(List<HolderBody> holders) {
    this.holders = holders.toArray(new HolderBody[0]);
    this.leastM = new double[this.holders.length];
    this.mostM = new double[this.holders.length];
    for (int i = 0; i < this.holders.length; i++) {
      leastM[i] = this.holders[i].leastShankM() - MARGIN_M;
      mostM[i] = this.holders[i].boreM() + MARGIN_M;
    }
  }

  /** Holders that take a shank, in the order in which they were given. */
  List<HolderBody> taking(double shankDiameterM) {
    List<HolderBody> taking = new ArrayList<>();
    for (int i = 0; i < holders.length; i++) {
      if (shankDiameterM >= leastM[i]
          && shankDiameterM <= mostM[i]
          && holders[i].takes(shankDiameterM)) {
        taking.add(holders[i]);
      }
    }
    return taking;
  }
}
