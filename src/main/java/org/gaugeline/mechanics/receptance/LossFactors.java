package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;

/**
 * Hysteretic loss factors of a chain, E(1 + iη) and k(1 + iη). Damping cannot be predicted; at a
 * lightly damped resonance the modal damping ratio is about η/2.
 *
 * @param segments η of all segments, 0 to 1
 * @param joints η of all joints in the chain, 0 to 1
 */
public record LossFactors(double segments, double joints) {
  public LossFactors {
    Require.within("segments", segments, 0, 1);
    Require.within("joints", joints, 0, 1);
  }

  /**
   * One loss factor for segments and joints.
   *
   * @param lossFactor η, 0 to 1
   * @return the pair
   */
  public static LossFactors uniform(double lossFactor) {
    return new LossFactors(lossFactor, lossFactor);
  }
}
