package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * The square at the end of a tap's shank in a square socket.
 *
 * @param widthM width a across the flats, m, above 0
 * @param lengthM length l in the socket, m, above 0
 * @param allowable allowable stresses of the square
 */
public record SquareDrive(double widthM, double lengthM, AllowableStress allowable)
    implements PositiveStop {
  /** Largest shear stress of a twisted square bar is M/(0.208·a³) (Timoshenko; Roark). */
  private static final double SQUARE_TORSION = 0.208;

  /** Checks the ranges. */
  public SquareDrive {
    Require.positive("widthM", widthM);
    Require.positive("lengthM", lengthM);
  }

  /**
   * Torque as the smaller of two limits. Torsion of the square bar: 0.208·a³·τ. Bearing: once the
   * play is taken up each of the four flats bears evenly on its leading half, width a/2 at the
   * lever a/4, so 4·p·(a/2)·l·(a/4) = p·a²·l/2.
   *
   * @return torque, N·m
   */
  @Override
  public double torqueNm() {
    double torsion = SQUARE_TORSION * allowable.shearPa() * widthM * widthM * widthM;
    double bearing = allowable.bearingPa() * widthM * widthM * lengthM / 2;
    return Math.min(torsion, bearing);
  }

  /**
   * A square does not block axial travel.
   *
   * @return 0
   */
  @Override
  public double axialForceN() {
    return 0;
  }
}
