package org.gaugeline.reference;

/**
 * What is known of an uncertain positive quantity: its 5th percentile, median and 95th percentile,
 * in the unit that the name of the carrying field ends in.
 *
 * @param p05 5th percentile, finite, ≥ 0, ≤ median
 * @param median median, finite, ≥ 0
 * @param p95 95th percentile, finite, ≥ median
 */
public record Spread(double p05, double median, double p95) {
  public Spread {
    if (!(p05 >= 0 && p05 <= median && median <= p95 && p95 < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "spread must be 0 ≤ p05 ≤ median ≤ p95 < ∞, was " + p05 + ", " + median + ", " + p95);
    }
  }

  /** A value that is taken as known without scatter, such as a marking or a measurement. */
  public static Spread exact(double value) {
    return new Spread(value, value, value);
  }

  /** A median with the 5th and 95th percentile at ÷ and × {@code factor} ≥ 1. */
  public static Spread around(double median, double factor) {
    return new Spread(median / factor, median, median * factor);
  }

  /** The same spread in another unit or with a known multiplier, {@code k} ≥ 0. */
  public Spread scaled(double k) {
    return new Spread(p05 * k, median * k, p95 * k);
  }
}
