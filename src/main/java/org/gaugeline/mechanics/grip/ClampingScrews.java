package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Screws that press a cutter with a bore onto the face of its arbor: one in the middle, or several
 * on a bolt circle.
 *
 * @param thread thread of one screw and the ring on which its head rubs
 * @param count number of screws, at least 1
 */
public record ClampingScrews(NutThread thread, int count) {
  /** Checks the ranges. */
  public ClampingScrews {
    Require.atLeastOne("count", count);
  }

  /**
   * Force that presses the cutter onto the face, all screws tightened alike (VDI 2230, as for
   * {@link NutThread}).
   *
   * @param torqueNm tightening torque of each screw, N·m, at least 0
   * @param friction coefficient of friction of thread and head, at least 0
   * @return force, N; it is also the axial pull at which the face begins to open
   */
  public double preloadN(double torqueNm, double friction) {
    return count * thread.axialForceN(torqueNm, friction);
  }
}
