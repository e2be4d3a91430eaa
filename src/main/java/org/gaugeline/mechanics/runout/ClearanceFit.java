package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;

/**
 * A shank that can shift and tilt freely in its bore.
 *
 * @param clearanceM diametral clearance c, m, at least 0
 * @param engagementM engaged length l, m, above 0
 */
public record ClearanceFit(double clearanceM, double engagementM) {
  /** Checks the ranges. */
  public ClearanceFit {
    Require.notNegative("clearanceM", clearanceM);
    Require.positive("engagementM", engagementM);
  }

  /**
   * Largest eccentricity at the tip: offset c/2 and tilt c/l together, c·(½ + L/l) (geometry).
   *
   * @param overhangM distance L from the mouth of the bore to the tip, m, at least 0
   * @return bound on the eccentricity, m; the total indicated runout is twice this
   * @throws IllegalArgumentException if the overhang is negative
   */
  public double eccentricityBoundM(double overhangM) {
    return clearanceM * (0.5 + Require.notNegative("overhangM", overhangM) / engagementM);
  }
}
