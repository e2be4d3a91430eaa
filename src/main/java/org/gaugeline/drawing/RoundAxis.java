package org.gaugeline.drawing;

/**
 * A linear axis with round marks.
 *
 * @param from value at the start
 * @param to value at the end
 * @param step distance of marks
 */
record RoundAxis(double from, double to, double step) {
  private static final double[] ROUND = {1, 2, 2.5, 5, 10};
  private static final double SLACK = 1e-9;

  /** About so many marks between two values; the end is the first mark at or after it. */
  static RoundAxis covering(double from, double to, int marks) {
    double step = roundStep((to - from) / marks);
    return new RoundAxis(from, Math.ceil(to / step - SLACK) * step, step);
  }

  /** About so many marks between two values that are both kept. */
  static RoundAxis within(double from, double to, int marks) {
    return new RoundAxis(from, to, roundStep((to - from) / marks));
  }

  private static double roundStep(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double round : ROUND) {
      if (round * power >= least * (1 - SLACK)) {
        return round * power;
      }
    }
    return 10 * power;
  }

  /** First mark on the axis. */
  double firstMark() {
    return Math.ceil(from / step - SLACK) * step;
  }

  boolean holds(double value) {
    return value <= to + SLACK * (to - from);
  }

  /** Share of the axis at a value, 0 to 1; beyond the end 1. */
  double share(double value) {
    return share(value, 1);
  }

  /** The same, beyond the end up to {@code most}. */
  double share(double value, double most) {
    return Math.min(most, Math.max(0, (value - from) / (to - from)));
  }
}
