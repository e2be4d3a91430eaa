package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * A round shank held by friction alone, as Coulomb's limit on the joint surface.
 *
 * <p>Torque and axial force add as vectors at the surface (DIN 7190-1). Gross slip only: under a
 * lateral force that changes with each tooth a shank can creep below this limit.
 *
 * @param diameterM diameter d of the joint, m, above 0
 * @param forceN largest friction force on the surface, N, at least 0
 */
public record FrictionGrip(double diameterM, double forceN) {
  /** Checks the ranges. */
  public FrictionGrip {
    Require.positive("diameterM", diameterM);
    Require.notNegative("forceN", forceN);
  }

  /**
   * Grip of an even contact pressure: F = μ·p·π·d·L (Shigley 9th ed. ch. 7).
   *
   * @param friction coefficient of friction μ, at least 0
   * @param pressurePa contact pressure p, Pa, at least 0
   * @param diameterM diameter d of the joint, m, above 0
   * @param lengthM engaged length L, m, at least 0
   * @return the grip
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static FrictionGrip ofPressure(
      double friction, double pressurePa, double diameterM, double lengthM) {
    Require.notNegative("friction", friction);
    Require.notNegative("pressurePa", pressurePa);
    Require.notNegative("lengthM", lengthM);
    return new FrictionGrip(diameterM, friction * pressurePa * Math.PI * diameterM * lengthM);
  }

  /**
   * Largest torque without axial force: T = F·d/2.
   *
   * @return torque, N·m
   */
  public double torqueNm() {
    return forceN * diameterM / 2;
  }

  /**
   * Demand on the joint surface by torque and axial force together: √((2M/d)² + Fa²).
   *
   * @param torqueNm torque M, N·m, of either sign
   * @param axialForceN axial force Fa, N, of either sign
   * @return tangential force on the surface, N; the joint holds while it stays below the grip force
   */
  public double slipForceN(double torqueNm, double axialForceN) {
    double turning = 2 * torqueNm / diameterM;
    return Math.sqrt(turning * turning + axialForceN * axialForceN);
  }

  /**
   * Axial force that the grip can take besides a torque: √(F² − (2M/d)²).
   *
   * @param torqueNm torque M, N·m, of either sign
   * @return axial capacity left, N; 0 if the torque alone exceeds the grip
   */
  public double axialForceLeftN(double torqueNm) {
    double turning = 2 * torqueNm / diameterM;
    return Math.sqrt(Math.max(0, forceN * forceN - turning * turning));
  }

  /**
   * Torque that the grip can take besides an axial force: d/2·√(F² − Fa²).
   *
   * @param axialForceN axial force Fa, N, of either sign
   * @return torque capacity left, N·m; 0 if the axial force alone exceeds the grip
   */
  public double torqueLeftNm(double axialForceN) {
    return diameterM / 2 * Math.sqrt(Math.max(0, forceN * forceN - axialForceN * axialForceN));
  }
}
