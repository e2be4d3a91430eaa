package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Groove in the shank that a locking body of the holder enters and that stops the tool from being
 * pulled out.
 *
 * @param shankDiameterM shank diameter d, m, above 0
 * @param coreDiameterM diameter dk left at the bottom of the groove, m, above 0 and below d
 * @param landLengthM length of full shank behind the groove that would have to shear off, m, above
 *     0
 * @param engagedShare share of the circumference on which the locking bodies bear, above 0 to 1
 * @param allowable allowable stresses of the weaker of shank and locking body
 */
public record LockingGroove(
    double shankDiameterM,
    double coreDiameterM,
    double landLengthM,
    double engagedShare,
    AllowableStress allowable)
    implements PositiveStop {
  /** Checks the ranges. */
  public LockingGroove {
    Require.positive("shankDiameterM", shankDiameterM);
    Require.between("coreDiameterM", coreDiameterM, 0, shankDiameterM);
    Require.positive("landLengthM", landLengthM);
    Require.positive("engagedShare", engagedShare);
    Require.within("engagedShare", engagedShare, 0, 1);
  }

  /**
   * The groove is an axial stop; torque is left to the friction of the host grip.
   *
   * @return 0
   */
  @Override
  public double torqueNm() {
    return 0;
  }

  /**
   * Axial force as the smaller of the land shearing off at the core, s·τ·π·dk·l, and the groove's
   * wall being crushed, s·p·π/4·(d² − dk²).
   *
   * @return axial force, N
   */
  @Override
  public double axialForceN() {
    double shear = allowable.shearPa() * Math.PI * coreDiameterM * landLengthM;
    double wallM2 = Math.PI / 4 * (shankDiameterM * shankDiameterM - coreDiameterM * coreDiameterM);
    return engagedShare * Math.min(shear, allowable.bearingPa() * wallM2);
  }
}
