package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * Specific cutting force over chip thickness.
 *
 * <p>From the calibrated chip thickness upwards kc = kc1.1·(h/1 mm)^(−mc)·K (Kienzle and Victor, as
 * in Tschätsch, <em>Applied Machining Technology</em>). Below it, kc = kcKienzle^(1−w) · kcSecond^w
 * with a weight w that rises linearly in ln h from 0 at the calibrated thickness to ½ at half of
 * it: from there down the geometric mean of both routes. The blend is our own.
 *
 * @param kc11Pa specific force at h = b = 1 mm, Pa, &gt; 0
 * @param mc exponent of chip thickness, 0 to below 1
 * @param correction product K of chip compression, rake, speed and wear factors, &gt; 0; it
 *     multiplies the Kienzle route, the handbook route carries its own factor
 * @param calibratedFromM smallest chip thickness at which the constants were measured, m, &gt; 0
 * @param thinChips what is believed below that thickness
 */
public record SpecificForce(
    double kc11Pa, double mc, double correction, double calibratedFromM, ThinChipRoute thinChips) {

  /**
   * Checks the ranges and that force per width rises with chip thickness everywhere.
   *
   * @throws IllegalArgumentException if a value is out of range, or the second route lies so far
   *     above the Kienzle value that a thinner chip would take more force
   */
  public SpecificForce {
    Require.positive("kc11Pa", kc11Pa);
    Require.within("mc", mc, 0, 0.99);
    Require.positive("correction", correction);
    Require.positive("calibratedFromM", calibratedFromM);
    double slope =
        ForceLaw.of(kc11Pa * correction, mc, calibratedFromM, thinChips).smallestForceSlope();
    if (!(slope > 0)) {
      throw new IllegalArgumentException(
          "thinChips ("
              + thinChips
              + ") must stay near the Kienzle value: d ln(force)/d ln(h) ("
              + slope
              + ") must be > 0");
    }
  }

  /**
   * Specific cutting force.
   *
   * @param chipThicknessM uncut chip thickness h, m, &gt; 0
   * @return kc, Pa
   */
  public double specificForcePa(double chipThicknessM) {
    Require.positive("chipThicknessM", chipThicknessM);
    return law().forcePerWidth(chipThicknessM) / chipThicknessM;
  }

  /**
   * Tangential force per width of cut, kc·h; it rises with h and tends to 0 with h.
   *
   * @param chipThicknessM uncut chip thickness h, m, &ge; 0
   * @return force per width, N/m
   */
  public double forcePerWidthNPerM(double chipThicknessM) {
    Require.notNegative("chipThicknessM", chipThicknessM);
    return law().forcePerWidth(chipThicknessM);
  }

  /** The same law with its logarithms taken once, for integration. */
  ForceLaw law() {
    return ForceLaw.of(kc11Pa * correction, mc, calibratedFromM, thinChips);
  }
}
