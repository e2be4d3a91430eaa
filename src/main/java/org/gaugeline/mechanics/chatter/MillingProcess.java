package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.cutting.MillingEngagement;

/**
 * A milling cut as stability sees it: equally spaced teeth with forces F_t = K_t·a·h and F_r =
 * K_r·F_t, edge forces and helix left out (of the mean over a tooth period a helix takes nothing).
 *
 * @param teeth N, 1 or more
 * @param tangentialPa K_t, Pa, greater than 0
 * @param radialRatio K_r, dimensionless, 0 to 10
 * @param engagement arc of contact; angles from the normal to the feed, with the rotation
 * @param damping by the flanks
 */
public record MillingProcess(
    int teeth,
    double tangentialPa,
    double radialRatio,
    MillingEngagement engagement,
    ProcessDamping damping) {
  public MillingProcess {
    Require.atLeastOne("teeth", teeth);
    Require.positive("tangentialPa", tangentialPa);
    Require.within("radialRatio", radialRatio, 0, 10);
  }

  /**
   * A process without damping by the flanks.
   *
   * @param teeth N, 1 or more
   * @param tangentialPa K_t, Pa, greater than 0
   * @param radialRatio K_r, dimensionless, 0 to 10
   * @param engagement arc of contact
   */
  public MillingProcess(
      int teeth, double tangentialPa, double radialRatio, MillingEngagement engagement) {
    this(teeth, tangentialPa, radialRatio, engagement, ProcessDamping.NONE);
  }

  /** The same cut with flanks that do not damp. */
  public MillingProcess undamped() {
    return with(ProcessDamping.NONE);
  }

  /** The same cut with damping by the flanks. */
  public MillingProcess with(ProcessDamping other) {
    return new MillingProcess(teeth, tangentialPa, radialRatio, engagement, other);
  }

  /**
   * A process from the resultant coefficient K_s and its angle β to the normal of the surface: K_t
   * = K_s sin β, K_r = cot β.
   *
   * @param teeth N, 1 or more
   * @param resultantPa K_s, Pa, greater than 0
   * @param forceAngleRad β, rad, above 0 to π/2
   * @param engagement arc of contact
   * @return the process
   */
  public static MillingProcess ofResultant(
      int teeth, double resultantPa, double forceAngleRad, MillingEngagement engagement) {
    Require.positive("forceAngleRad", forceAngleRad);
    Require.within("forceAngleRad", forceAngleRad, 0, Math.PI / 2);
    return new MillingProcess(
        teeth, resultantPa * Math.sin(forceAngleRad), 1 / Math.tan(forceAngleRad), engagement);
  }

  /**
   * Time between teeth, T = 2π/(NΩ).
   *
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @return T, s
   */
  public double toothPeriodS(double spindleRadPerS) {
    return 2 * Math.PI / (teeth * Require.positive("spindleRadPerS", spindleRadPerS));
  }
}
