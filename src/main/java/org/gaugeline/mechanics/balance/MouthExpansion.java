package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.grip.ElasticMaterial;

/**
 * Opening of a spindle mouth around a solid taper shank at speed.
 *
 * <p>Rotating discs in plane stress, spindle and shank of one material, the taper just touching at
 * rest; preload of the drawbar delays the opening.
 *
 * @param shankRadiusM radius a of the shank at the mouth, m, above 0
 * @param noseRadiusM outside radius b of the spindle nose, m, above a
 * @param steel material of spindle and shank
 */
public record MouthExpansion(double shankRadiusM, double noseRadiusM, ElasticMaterial steel) {
  /** Checks the ranges. */
  public MouthExpansion {
    Require.positive("shankRadiusM", shankRadiusM);
    Require.between("noseRadiusM", noseRadiusM, shankRadiusM, Double.POSITIVE_INFINITY);
  }

  /**
   * Radial clearance that opens: δ = (3+ν)·ρ·ω²·a·b²/(4E) (rotating disc and ring, Timoshenko and
   * Goodier, Theory of Elasticity).
   *
   * @param angularVelocityRadPerS angular velocity ω, rad/s, at least 0
   * @return radial clearance, m
   * @throws IllegalArgumentException if the angular velocity is negative
   */
  public double radialClearanceM(double angularVelocityRadPerS) {
    Require.notNegative("angularVelocityRadPerS", angularVelocityRadPerS);
    return (3 + steel.poissonRatio())
        * steel.densityKgPerM3()
        * (angularVelocityRadPerS * angularVelocityRadPerS)
        * shankRadiusM
        * (noseRadiusM * noseRadiusM)
        / (4 * steel.youngsModulusPa());
  }

  /**
   * Distance by which the drawbar pulls the shank in when nothing but the taper stops it: δ/tan of
   * the half angle. A face stop blocks it and leaves the clearance instead.
   *
   * @param angularVelocityRadPerS angular velocity, rad/s, at least 0
   * @param halfAngleRad half angle of the taper, rad, above 0 and below π/4
   * @return axial travel, m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double pullInM(double angularVelocityRadPerS, double halfAngleRad) {
    Require.between("halfAngleRad", halfAngleRad, 0, Math.PI / 4);
    return radialClearanceM(angularVelocityRadPerS) / Math.tan(halfAngleRad);
  }
}
