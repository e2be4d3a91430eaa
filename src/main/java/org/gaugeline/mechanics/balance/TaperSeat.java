package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;

/**
 * Conical seat with a tolerance on its angle.
 *
 * @param halfAngleRad half angle of the cone, rad, above 0 and below π/4
 * @param lengthM cone length, m, above 0
 * @param angleToleranceRad tolerance AT on the included angle, rad, at least 0 (ISO 1947 gives it
 *     in µrad by grade and cone length)
 */
public record TaperSeat(double halfAngleRad, double lengthM, double angleToleranceRad) {
  /** Half angle of the 7/24 steep taper, atan(7/48), rad. */
  public static final double STEEP_HALF_ANGLE_RAD = Math.atan(7.0 / 48.0);

  /** Checks the ranges. */
  public TaperSeat {
    Require.between("halfAngleRad", halfAngleRad, 0, Math.PI / 4);
    Require.positive("lengthM", lengthM);
    Require.notNegative("angleToleranceRad", angleToleranceRad);
  }

  /**
   * Allowance on the diameter over the cone length: AT·L (ISO 1947, small angles).
   *
   * @return difference of diameters, m
   */
  public double diameterAllowanceM() {
    return angleToleranceRad * lengthM;
  }

  /**
   * Axial shift of the shank for a change of radius: Δr/tan of the half angle.
   *
   * @param radiusChangeM change of radius, m, of either sign
   * @return axial shift, m
   */
  public double axialShiftM(double radiusChangeM) {
    return radiusChangeM / Math.tan(halfAngleRad);
  }

  /**
   * Diametral clearance at the free end when this seat and its counterpart use up their angle
   * tolerances in opposite senses and meet at the other end only.
   *
   * @param counterpart the other cone of the joint
   * @return diametral clearance over the shorter of the two lengths, m
   */
  public double freeEndClearanceM(TaperSeat counterpart) {
    return (angleToleranceRad + counterpart.angleToleranceRad)
        * Math.min(lengthM, counterpart.lengthM);
  }
}
