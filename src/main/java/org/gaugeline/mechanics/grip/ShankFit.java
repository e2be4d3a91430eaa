package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Play between a bore and a shank at the limits of their tolerances.
 *
 * @param minimumClearanceM smallest diametral clearance, m, at least 0
 * @param maximumClearanceM largest diametral clearance, m, at least the smallest
 */
public record ShankFit(double minimumClearanceM, double maximumClearanceM) {
  /** Checks the ranges. */
  public ShankFit {
    Require.notNegative("minimumClearanceM", minimumClearanceM);
    Require.within("maximumClearanceM", maximumClearanceM, minimumClearanceM, Double.MAX_VALUE);
  }

  /**
   * Fit of an H bore and an h shank of the same nominal diameter: bore 0 to +T, shank −t to 0 (ISO
   * 286-1).
   *
   * @param boreToleranceM width T of the bore's tolerance, m, at least 0
   * @param shankToleranceM width t of the shank's tolerance, m, at least 0
   * @return the fit
   * @throws IllegalArgumentException if a width is negative
   */
  public static ShankFit boreHShankH(double boreToleranceM, double shankToleranceM) {
    Require.notNegative("boreToleranceM", boreToleranceM);
    Require.notNegative("shankToleranceM", shankToleranceM);
    return new ShankFit(0, boreToleranceM + shankToleranceM);
  }

  /**
   * Diametral clearance midway between its limits.
   *
   * @return clearance, m
   */
  public double meanClearanceM() {
    return (minimumClearanceM + maximumClearanceM) / 2;
  }

  /**
   * Eccentricity of a shank that a side screw pushes against the bore: c/2.
   *
   * @param clearanceM diametral clearance c, m, at least 0
   * @return parallel offset of the axes, m; the total indicated runout is twice this
   * @throws IllegalArgumentException if the clearance is negative
   */
  public static double sideLockEccentricityM(double clearanceM) {
    return Require.notNegative("clearanceM", clearanceM) / 2;
  }

  /**
   * Total indicated runout of a shank that a side screw pushes against the bore: c, the same all
   * along the tool.
   *
   * @param clearanceM diametral clearance c, m, at least 0
   * @return total indicated runout, m
   * @throws IllegalArgumentException if the clearance is negative
   */
  public static double sideLockTirM(double clearanceM) {
    return 2 * sideLockEccentricityM(clearanceM);
  }
}
