package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;

/**
 * What one joint adds to the runout at the tip: a parallel offset and an axis tilt.
 *
 * <p>The two sizes are either standard deviations per transverse axis or bounds; {@link
 * RunoutStack} says for each method which it takes.
 *
 * @param offsetM parallel offset of the axes at the joint, m, at least 0
 * @param tiltRad tilt of the axes at the joint, rad, at least 0
 * @param armM distance from the joint to the tip, m, at least 0
 */
public record RunoutJoint(double offsetM, double tiltRad, double armM) {
  /** Checks the ranges. */
  public RunoutJoint {
    Require.notNegative("offsetM", offsetM);
    Require.notNegative("tiltRad", tiltRad);
    Require.notNegative("armM", armM);
  }

  double varianceM2() {
    double swing = armM * tiltRad;
    return offsetM * offsetM + swing * swing;
  }

  double sumM() {
    return offsetM + armM * tiltRad;
  }
}
