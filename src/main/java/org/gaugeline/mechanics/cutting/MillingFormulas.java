package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Closed forms of milling, as printed in the textbooks. */
public final class MillingFormulas {
  private MillingFormulas() {}

  /**
   * Mean chip thickness hm = fz·sin κ·(cos φ1 − cos φ2)/(φ2 − φ1) (Tschätsch).
   *
   * @param feedPerToothM fz, m, &gt; 0
   * @param leadAngleRad κ, rad, above 0 to π/2
   * @param engagement arc of contact
   * @return hm, m
   */
  public static double meanChipThicknessM(
      double feedPerToothM, double leadAngleRad, MillingEngagement engagement) {
    Require.positive("feedPerToothM", feedPerToothM);
    return feedPerToothM * Math.sin(leadAngleRad) * engagement.meanSine();
  }

  /**
   * Largest chip thickness fz·sin κ·max sin φ.
   *
   * @param feedPerToothM fz, m, &gt; 0
   * @param leadAngleRad κ, rad, above 0 to π/2
   * @param engagement arc of contact
   * @return hmax, m
   */
  public static double maxChipThicknessM(
      double feedPerToothM, double leadAngleRad, MillingEngagement engagement) {
    Require.positive("feedPerToothM", feedPerToothM);
    return feedPerToothM * Math.sin(leadAngleRad) * engagement.largestSine();
  }

  /**
   * Mean number of teeth in the arc, ze = z·φs/2π.
   *
   * @param teeth z, &ge; 1
   * @param engagement arc of contact
   * @return ze
   */
  public static double teethEngaged(int teeth, MillingEngagement engagement) {
    return Require.atLeastOne("teeth", teeth) * engagement.arcRad() / (2 * Math.PI);
  }

  /**
   * Tangential force of one straight tooth, Ft = b·kc(h)·h with b = ap/sin κ.
   *
   * @param specificForce specific cutting force
   * @param edgeWidthM b, m, &gt; 0
   * @param chipThicknessM h, m, &ge; 0
   * @return Ft, N
   */
  public static double toothForceN(
      SpecificForce specificForce, double edgeWidthM, double chipThicknessM) {
    Require.positive("edgeWidthM", edgeWidthM);
    return edgeWidthM * specificForce.forcePerWidthNPerM(chipThicknessM);
  }

  /**
   * Removal rate Q = ap·ae·vf.
   *
   * @param axialDepthM ap, m, &gt; 0
   * @param radialDepthM ae, m, &gt; 0
   * @param feedRateMPerS vf, m/s, &gt; 0
   * @return Q, m³/s
   */
  public static double removalRateM3PerS(
      double axialDepthM, double radialDepthM, double feedRateMPerS) {
    Require.positive("axialDepthM", axialDepthM);
    Require.positive("radialDepthM", radialDepthM);
    return axialDepthM * radialDepthM * Require.positive("feedRateMPerS", feedRateMPerS);
  }

  /**
   * Cutting power P = kc·Q.
   *
   * @param specificForcePa kc, usually at the mean chip thickness, Pa, &gt; 0
   * @param removalRateM3PerS Q, m³/s, &gt; 0
   * @return P, W
   */
  public static double cuttingPowerW(double specificForcePa, double removalRateM3PerS) {
    Require.positive("specificForcePa", specificForcePa);
    return specificForcePa * Require.positive("removalRateM3PerS", removalRateM3PerS);
  }
}
