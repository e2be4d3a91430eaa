package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Clamp screws on the flats of a shank.
 *
 * @param shankDiameterM shank diameter d, m, above 0
 * @param flatHeightM height h1 over the flat, measured to the opposite side of the shank, m, above
 *     d/2 and below d
 * @param screw one clamp screw
 * @param screwCount number of screws, at least 1
 * @param allowable allowable shear stress of the screw and bearing pressure on the flat
 */
public record SideLock(
    double shankDiameterM,
    double flatHeightM,
    ClampScrew screw,
    int screwCount,
    AllowableStress allowable)
    implements PositiveStop {
  /** Checks the ranges. */
  public SideLock {
    Require.positive("shankDiameterM", shankDiameterM);
    Require.between("flatHeightM", flatHeightM, shankDiameterM / 2, shankDiameterM);
    Require.within("screwCount", screwCount, 1, Integer.MAX_VALUE);
  }

  /**
   * Torque as the smaller of two limits, times the number of screws. Bearing: the turning flat
   * presses evenly on half of the round screw end of diameter ds, at the lever of the half disc's
   * centroid, p·(π·ds²/8)·(2·ds/(3π)) = p·ds³/12. Shear: the screw's core at the lever of the flat,
   * τ·(π·dc²/4)·(h1 − d/2).
   *
   * @return torque, N·m
   */
  @Override
  public double torqueNm() {
    double end = screw.endDiameterM();
    double bearing = allowable.bearingPa() * end * end * end / 12;
    double shear = shearForceN() * (flatHeightM - shankDiameterM / 2);
    return screwCount * Math.min(bearing, shear);
  }

  /**
   * Axial force, once the shank has crept until the screws meet the ends of the flats, as the
   * smaller of two limits, times the number of screws. Shear of the screw's core τ·π·dc²/4; bearing
   * of the screw end on the flat's end, p·ds·(d − h1).
   *
   * @return axial force, N
   */
  @Override
  public double axialForceN() {
    double depthM = shankDiameterM - flatHeightM;
    double bearing = allowable.bearingPa() * screw.endDiameterM() * depthM;
    return screwCount * Math.min(bearing, shearForceN());
  }

  private double shearForceN() {
    return allowable.shearPa() * Math.PI / 4 * screw.coreDiameterM() * screw.coreDiameterM();
  }

  /**
   * Clamp screw of a side-lock.
   *
   * @param coreDiameterM core diameter dc of the thread, m, above 0
   * @param endDiameterM diameter ds of the end face that meets the flat, m, above 0
   */
  public record ClampScrew(double coreDiameterM, double endDiameterM) {
    /** Checks the ranges. */
    public ClampScrew {
      Require.positive("coreDiameterM", coreDiameterM);
      Require.positive("endDiameterM", endDiameterM);
    }
  }
}
