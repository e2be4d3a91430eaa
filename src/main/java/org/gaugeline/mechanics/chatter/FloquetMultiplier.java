package org.gaugeline.mechanics.chatter;

/**
 * The largest multiplier of a cut over one tooth period: disturbances shrink if its size is below
 * 1.
 *
 * @param re real part
 * @param im imaginary part, not negative
 */
public record FloquetMultiplier(double re, double im) {
  private static final double ON_THE_AXIS = 1e-6;

  /**
   * Size of the multiplier.
   *
   * @return |µ|
   */
  public double size() {
    return Math.hypot(re, im);
  }

  /**
   * Whether every disturbance dies out.
   *
   * @return true if |µ| is below 1
   */
  public boolean isStable() {
    return size() < 1;
  }

  /**
   * Whether the disturbance changes its sign from tooth to tooth (period doubling, flip), which the
   * zeroth-order solution cannot show.
   *
   * @return true if µ is real and negative
   */
  public boolean doublesPeriod() {
    return re < 0 && im <= ON_THE_AXIS * -re;
  }
}
