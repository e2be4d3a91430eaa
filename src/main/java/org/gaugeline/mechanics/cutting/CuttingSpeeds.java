package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Kinematics of spindle and feed. */
public final class CuttingSpeeds {
  private CuttingSpeeds() {}

  /**
   * Angular velocity ω = 2·vc/D.
   *
   * @param cuttingSpeedMPerS vc, m/s, &gt; 0
   * @param diameterM D, m, &gt; 0
   * @return ω, rad/s
   */
  public static double angularVelocityRadPerS(double cuttingSpeedMPerS, double diameterM) {
    Require.positive("cuttingSpeedMPerS", cuttingSpeedMPerS);
    return 2 * cuttingSpeedMPerS / Require.positive("diameterM", diameterM);
  }

  /**
   * Cutting speed vc = ω·D/2.
   *
   * @param angularVelocityRadPerS ω, rad/s, &gt; 0
   * @param diameterM D, m, &gt; 0
   * @return vc, m/s
   */
  public static double cuttingSpeedMPerS(double angularVelocityRadPerS, double diameterM) {
    Require.positive("angularVelocityRadPerS", angularVelocityRadPerS);
    return angularVelocityRadPerS * Require.positive("diameterM", diameterM) / 2;
  }

  /**
   * Feed rate vf = fz·z·ω/2π.
   *
   * @param feedPerToothM fz, m, &gt; 0
   * @param teeth z, &ge; 1
   * @param angularVelocityRadPerS ω, rad/s, &gt; 0
   * @return vf, m/s
   */
  public static double feedRateMPerS(
      double feedPerToothM, int teeth, double angularVelocityRadPerS) {
    Require.positive("feedPerToothM", feedPerToothM);
    Require.positive("angularVelocityRadPerS", angularVelocityRadPerS);
    return feedPerToothM
        * Require.atLeastOne("teeth", teeth)
        * angularVelocityRadPerS
        / (2 * Math.PI);
  }
}
