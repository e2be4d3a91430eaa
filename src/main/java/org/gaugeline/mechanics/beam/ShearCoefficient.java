package org.gaugeline.mechanics.beam;

/**
 * Timoshenko shear coefficient κ of round sections.
 *
 * <p>Source: G. R. Cowper, "The shear coefficient in Timoshenko's beam theory", J. Appl. Mech. 33
 * (1966) 335 (memory). Valid for slow bending of homogeneous isotropic sections.
 */
public final class ShearCoefficient {
  private ShearCoefficient() {}

  /**
   * Solid circle: κ = 6(1 + ν) / (7 + 6ν).
   *
   * @param poisson Poisson's ratio ν, 0 to 0.5
   * @return κ, dimensionless, 0.857 to 0.9
   */
  public static double solidRound(double poisson) {
    return 6 * (1 + poisson) / (7 + 6 * poisson);
  }

  /**
   * Annulus: κ = 6(1 + ν)(1 + m²)² / [(7 + 6ν)(1 + m²)² + (20 + 12ν)m²] with m = d/D.
   *
   * @param poisson Poisson's ratio ν, 0 to 0.5
   * @param boreRatio m, bore diameter over outer diameter, 0 to below 1
   * @return κ, dimensionless; the solid circle's at m = 0, falling to about half for thin tubes
   */
  public static double hollowRound(double poisson, double boreRatio) {
    double m2 = boreRatio * boreRatio;
    double s = (1 + m2) * (1 + m2);
    return 6 * (1 + poisson) * s / ((7 + 6 * poisson) * s + (20 + 12 * poisson) * m2);
  }
}
