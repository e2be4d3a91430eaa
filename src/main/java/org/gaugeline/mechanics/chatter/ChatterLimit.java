package org.gaugeline.mechanics.chatter;

/**
 * Depth at which a cut starts to chatter.
 *
 * @param depthM limit depth (width of chip in turning), m; infinite if there is none
 * @param chatterRadPerS angular frequency of the chatter there, rad/s; 0 if there is none
 */
public record ChatterLimit(double depthM, double chatterRadPerS) {
  static final ChatterLimit NONE = new ChatterLimit(Double.POSITIVE_INFINITY, 0);

  /**
   * Chatter frequency.
   *
   * @return frequency, Hz
   */
  public double chatterHz() {
    return chatterRadPerS / (2 * Math.PI);
  }
}
