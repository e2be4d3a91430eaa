package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Metric clamping thread of a collet nut and the ring on which the nut rubs.
 *
 * @param pitchM thread pitch P, m, above 0
 * @param pitchDiameterM pitch diameter d2 of the thread, m, above 0
 * @param bearingDiameterM mean diameter Dk of the nut's rubbing face, m, at least 0
 */
public record NutThread(double pitchM, double pitchDiameterM, double bearingDiameterM) {
  /** Pitch diameter lies 3√3/8 of a pitch below the nominal diameter (ISO 724). */
  private static final double PITCH_DIAMETER_DROP = 3 * Math.sqrt(3) / 8;

  /** Checks the ranges. */
  public NutThread {
    Require.positive("pitchM", pitchM);
    Require.positive("pitchDiameterM", pitchDiameterM);
    Require.notNegative("bearingDiameterM", bearingDiameterM);
  }

  /**
   * Thread from its designation M nominal × pitch: d2 = d − 0.6495·P (ISO 724).
   *
   * @param nominalDiameterM nominal diameter, m, above 0.6495 pitches
   * @param pitchM pitch, m, above 0
   * @param bearingDiameterM mean diameter of the nut's rubbing face, m, at least 0
   * @return the thread
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static NutThread metric(double nominalDiameterM, double pitchM, double bearingDiameterM) {
    return new NutThread(pitchM, nominalDiameterM - PITCH_DIAMETER_DROP * pitchM, bearingDiameterM);
  }

  /**
   * Axial force of a tightening torque: F = T/(0.16·P + 0.58·d2·μ + μ·Dk/2) (VDI 2230, one
   * coefficient of friction for thread and face).
   *
   * @param torqueNm tightening torque T, N·m, at least 0
   * @param friction coefficient of friction μ of thread and face, at least 0
   * @return axial force, N
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double axialForceN(double torqueNm, double friction) {
    Require.notNegative("torqueNm", torqueNm);
    Require.notNegative("friction", friction);
    return torqueNm
        / (0.16 * pitchM + 0.58 * pitchDiameterM * friction + friction * bearingDiameterM / 2);
  }
}
