package org.gaugeline.mechanics;

import java.util.function.DoubleUnaryOperator;

/** Search for the largest value of a function that has one peak in an interval (golden section). */
public final class GoldenSection {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private GoldenSection() {}

  /**
   * Place of the largest value.
   *
   * @param from lower end
   * @param to upper end
   * @param steps evaluations; each shrinks the interval by 0.618
   * @param function function with one peak between the ends
   * @return the place, in the middle of the interval left
   */
  public static double peak(double from, double to, int steps, DoubleUnaryOperator function) {
    double low = from;
    double high = to;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = function.applyAsDouble(left);
    double atRight = function.applyAsDouble(right);
    for (int step = 0; step < steps; step++) {
      if (atLeft > atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = function.applyAsDouble(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = function.applyAsDouble(right);
      }
    }
    return (low + high) / 2;
  }
}
