package org.gaugeline.mechanics.grip;

/**
 * A stop that holds by its shape, once the play is taken up, until a part shears or is crushed.
 *
 * <p>Elementary strength of materials: nominal stresses spread evenly, several stops share evenly.
 */
public sealed interface PositiveStop
    permits SideLock, DrawnSideLock, DriveKey, LockingGroove, SquareDrive {
  /**
   * Torque that the stop itself bears, without friction of the fit.
   *
   * @return torque, N·m; 0 if the stop does not block rotation
   */
  double torqueNm();

  /**
   * Axial force that the stop itself bears, without friction of the fit.
   *
   * @return force, N; 0 if the stop does not block axial travel
   */
  double axialForceN();
}
