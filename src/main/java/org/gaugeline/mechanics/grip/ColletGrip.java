package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Conical collet drawn into its seat by a nut.
 *
 * <p>The whole radial force is taken to reach the shank; what a collet used below its nominal bore
 * spends on closing itself is left to the caller as a lower tightening torque or friction.
 *
 * @param thread clamping thread and rubbing face of the nut
 * @param coneHalfAngleRad half angle of the cone, rad, above 0 and below π/4
 * @param threadFriction coefficient of friction of thread and nut face, at least 0
 * @param coneFriction coefficient of friction between collet and seat, at least 0
 */
public record ColletGrip(
    NutThread thread, double coneHalfAngleRad, double threadFriction, double coneFriction) {
  /** Checks the ranges. */
  public ColletGrip {
    Require.between("coneHalfAngleRad", coneHalfAngleRad, 0, Math.PI / 4);
    Require.notNegative("threadFriction", threadFriction);
    Require.notNegative("coneFriction", coneFriction);
  }

  /**
   * Sum of the radial forces on the collet: Fa/tan(α + ρ), ρ = arctan μc (wedge with friction).
   *
   * @param nutTorqueNm tightening torque of the nut, N·m, at least 0
   * @return sum of the radial forces over the circumference, N
   * @throws IllegalArgumentException if the torque is negative
   */
  public double radialForceSumN(double nutTorqueNm) {
    double slope = Math.tan(coneHalfAngleRad);
    // Tangent of the summed angles, written out to spare an arctangent and a second tangent.
    double wedge = (slope + coneFriction) / (1 - slope * coneFriction);
    return thread.axialForceN(nutTorqueNm, threadFriction) / wedge;
  }

  /**
   * Grip on the shank: F = μs·ΣFr.
   *
   * @param nutTorqueNm tightening torque of the nut, N·m, at least 0
   * @param shankDiameterM shank diameter, m, above 0
   * @param shankFriction coefficient of friction μs between collet and shank, at least 0
   * @return friction grip
   * @throws IllegalArgumentException if a value is outside its range
   */
  public FrictionGrip grip(double nutTorqueNm, double shankDiameterM, double shankFriction) {
    Require.notNegative("shankFriction", shankFriction);
    return new FrictionGrip(shankDiameterM, shankFriction * radialForceSumN(nutTorqueNm));
  }
}
