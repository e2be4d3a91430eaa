package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Corrections that multiply the Kienzle value. */
public final class ForceCorrections {
  private static final double M_PER_MIN_PER_M_PER_S = 60;
  private static final double REFERENCE_M_PER_MIN = 100;

  private ForceCorrections() {}

  /**
   * Rake factor Kγ = 1 − (γ − γ0)/100 with both angles in degrees: one per cent per degree
   * (Tabellenbuch Zerspantechnik, 5th ed. 2022, pp. 215–216; Tschätsch).
   *
   * @param rakeRad rake angle γ, rad, −0.7 to 0.7
   * @param referenceRakeRad rake γ0 at which kc1.1 was measured, rad, −0.7 to 0.7
   * @return factor, about 0.2 to 1.8
   */
  public static double rake(double rakeRad, double referenceRakeRad) {
    Require.within("rakeRad", rakeRad, -0.7, 0.7);
    Require.within("referenceRakeRad", referenceRakeRad, -0.7, 0.7);
    return 1 - Math.toDegrees(rakeRad - referenceRakeRad) / 100;
  }

  /**
   * Speed factor: 2.023/vc^0.153 below 100 m/min, 1.380/vc^0.07 above, vc in m/min; 1 at 100 m/min
   * (Paucksch et al., <em>Zerspantechnik</em>, from memory). The source's lower limit of validity
   * was not read; the factor grows without bound towards standstill.
   *
   * @param cuttingSpeedMPerS cutting speed, m/s, &gt; 0
   * @return factor, &gt; 0
   */
  public static double speed(double cuttingSpeedMPerS) {
    Require.positive("cuttingSpeedMPerS", cuttingSpeedMPerS);
    double mPerMin = cuttingSpeedMPerS * M_PER_MIN_PER_M_PER_S;
    return mPerMin < REFERENCE_M_PER_MIN
        ? 2.023 / Math.pow(mPerMin, 0.153)
        : 1.380 / Math.pow(mPerMin, 0.07);
  }
}
