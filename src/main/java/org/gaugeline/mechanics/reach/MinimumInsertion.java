package org.gaugeline.mechanics.reach;

import org.gaugeline.mechanics.Require;

/**
 * How much of a shank sits in its holder, against how much must.
 *
 * @param shankDiameterM diameter d of the shank, m
 * @param perDiameter least insertion in diameters, 0 or more
 * @param leastM least insertion whatever the diameter, m, 0 or more
 */
public record MinimumInsertion(double shankDiameterM, double perDiameter, double leastM) {
  public MinimumInsertion {
    Require.positive("shankDiameterM", shankDiameterM);
    Require.within("perDiameter", perDiameter, 0, Double.MAX_VALUE);
    Require.within("leastM", leastM, 0, Double.MAX_VALUE);
  }

  /**
   * Required insertion, max(perDiameter·d, leastM).
   *
   * @return insertion, m
   */
  public double requiredM() {
    return Math.max(perDiameter * shankDiameterM, leastM);
  }

  /**
   * Longest stick-out that leaves the required insertion.
   *
   * @param toolLengthM overall length of the tool, m
   * @return stick-out, m; negative if the tool is too short to be held
   */
  public double largestStickOutM(double toolLengthM) {
    return toolLengthM - requiredM();
  }

  /**
   * Insertion beyond the required one at a stick-out.
   *
   * @param toolLengthM overall length of the tool, m
   * @param stickOutM stick-out, m
   * @return spare insertion, m; negative = too little shank is gripped
   */
  public double spareM(double toolLengthM, double stickOutM) {
    return toolLengthM - stickOutM - requiredM();
  }
}
