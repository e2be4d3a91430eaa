package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;

/** What runout does to chip load, force, surface and hole. */
public final class RunoutEffects {
  /** Mean deviation of a row of parabolic cusps as a share of their height, 4/(9√3). */
  private static final double RA_PER_CUSP_HEIGHT = 4 / (9 * Math.sqrt(3));

  private RunoutEffects() {}

  /**
   * Largest chip thickness that a parallel offset adds to one tooth: TIR·sin(π/z) (after Kline and
   * DeVor, 1983).
   *
   * @param tirM total indicated runout at the tip, m, at least 0
   * @param toothCount number of evenly spaced teeth z, at least 1
   * @return extra feed per tooth, m; 0 for a single tooth
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double extraChipLoadM(double tirM, int toothCount) {
    Require.notNegative("tirM", tirM);
    Require.within("toothCount", toothCount, 1, Integer.MAX_VALUE);
    return toothCount == 1 ? 0 : tirM * Math.sin(Math.PI / toothCount);
  }

  /**
   * Whether a tooth stops cutting because runout takes away more than its feed.
   *
   * @param tirM total indicated runout at the tip, m, at least 0
   * @param toothCount number of teeth, at least 1
   * @param feedPerToothM feed per tooth, m, above 0
   * @return true if a tooth runs idle
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static boolean leavesToothIdle(double tirM, int toothCount, double feedPerToothM) {
    return extraChipLoadM(tirM, toothCount) > Require.positive("feedPerToothM", feedPerToothM);
  }

  /**
   * Growth of the peak force of the most loaded tooth: (1 + TIR·sin(π/z)/fz)^(1 − mc), Kienzle's
   * exponent mc.
   *
   * @param extraChipLoadM extra chip thickness, m, at least 0
   * @param feedPerToothM feed per tooth fz, m, above 0
   * @param chipThicknessExponent Kienzle's exponent mc, at least 0 and below 1
   * @return ratio of the peak forces with and without runout, at least 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double peakForceFactor(
      double extraChipLoadM, double feedPerToothM, double chipThicknessExponent) {
    Require.notNegative("extraChipLoadM", extraChipLoadM);
    Require.positive("feedPerToothM", feedPerToothM);
    Require.within("chipThicknessExponent", chipThicknessExponent, 0, Math.nextDown(1.0));
    return Math.pow(1 + extraChipLoadM / feedPerToothM, 1 - chipThicknessExponent);
  }

  /**
   * Height of the feed cusps on a side-milled wall: f²/(4D). With f = fz every tooth marks the
   * wall; with f = z·fz one tooth dominates and the height grows z² times (parabola for the arc).
   *
   * @param feedPerMarkM feed f between marks on the wall, m, at least 0
   * @param cutterDiameterM cutter diameter D, m, above 0
   * @return cusp height Rt, m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double sideMilledCuspM(double feedPerMarkM, double cutterDiameterM) {
    Require.notNegative("feedPerMarkM", feedPerMarkM);
    return feedPerMarkM * feedPerMarkM / (4 * Require.positive("cutterDiameterM", cutterDiameterM));
  }

  /**
   * Height of the feed marks of a turned or bored surface: f²/(8·rε) (parabola for the nose arc,
   * feed well below the nose radius).
   *
   * @param feedPerTurnM feed f per turn, m, at least 0
   * @param noseRadiusM nose radius rε, m, above 0
   * @return cusp height Rt, m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double turnedCuspM(double feedPerTurnM, double noseRadiusM) {
    Require.notNegative("feedPerTurnM", feedPerTurnM);
    return feedPerTurnM * feedPerTurnM / (8 * Require.positive("noseRadiusM", noseRadiusM));
  }

  /**
   * Mean roughness of a row of parabolic cusps: Ra = 4/(9√3)·Rt = 0.2566·Rt. With the cusps of a
   * nose radius this is f²/(31.2·rε).
   *
   * @param cuspHeightM cusp height Rt, m, at least 0
   * @return mean roughness Ra, m
   * @throws IllegalArgumentException if the height is negative
   */
  public static double meanRoughnessM(double cuspHeightM) {
    return RA_PER_CUSP_HEIGHT * Require.notNegative("cuspHeightM", cuspHeightM);
  }

  /**
   * Largest hole of a drill or reamer that runs out: D + TIR. A guided tool cuts less oversize.
   *
   * @param toolDiameterM tool diameter D, m, above 0
   * @param tirM total indicated runout at the tip, m, at least 0
   * @return bound on the hole diameter, m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double holeDiameterBoundM(double toolDiameterM, double tirM) {
    return Require.positive("toolDiameterM", toolDiameterM) + Require.notNegative("tirM", tirM);
  }
}
