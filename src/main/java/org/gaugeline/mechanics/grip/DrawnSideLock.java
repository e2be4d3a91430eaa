package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Clamp screws on flats that slope towards the shank's end and so draw the shank back against a
 * stop: it does not first creep, and cannot be pushed in.
 *
 * @param lock the screws as on flats without slope
 * @param preloadN force of all screws together, N, at least 0
 * @param slopeRad slope of the flats against the axis, rad, above 0 and below π/4
 */
public record DrawnSideLock(SideLock lock, double preloadN, double slopeRad)
    implements PositiveStop {
  /** Checks the ranges. */
  public DrawnSideLock {
    Require.notNegative("preloadN", preloadN);
    Require.between("slopeRad", slopeRad, 0, Math.PI / 4);
  }

  /**
   * Torque as on flats without slope.
   *
   * @return torque, N·m
   */
  @Override
  public double torqueNm() {
    return lock.torqueNm();
  }

  /**
   * Axial force: the wedge of the slope, N·tan α, beside the screws once they are driven against
   * the flats (statics of a wedge; friction is counted apart).
   *
   * @return force, N
   */
  @Override
  public double axialForceN() {
    return drawForceN() + lock.axialForceN();
  }

  /**
   * Force that draws the shank against its stop without friction, N·tan α.
   *
   * @return force, N
   */
  public double drawForceN() {
    return preloadN * Math.tan(slopeRad);
  }
}
