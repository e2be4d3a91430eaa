package org.gaugeline.mechanics.cutting;

/**
 * Integral of a function that repeats with the tooth pitch, tabulated over two pitches and
 * continued without end: it grows by the same amount each pitch.
 */
final class PeriodicIntegral {
  private final int steps;
  private final double[] values;
  final double growth;

  /**
   * Cumulates the integrals over the steps of a pitch.
   *
   * @param overSteps integral over each step, all teeth summed
   */
  PeriodicIntegral(double[] overSteps) {
    this.steps = overSteps.length;
    this.values = new double[2 * steps + 1];
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      values[i] = sum;
      sum += overSteps[i];
    }
    for (int i = 0; i < steps; i++) {
      values[steps + i] = values[i] + sum;
    }
    values[2 * steps] = 2 * sum;
    this.growth = sum;
  }

  /** Integral between two offsets from a step, 0 to below the steps per pitch. */
  double difference(int step, Shift upper, Shift lower) {
    return (upper.pitches() - lower.pitches()) * growth
        + at(step + upper.step(), upper.fraction())
        - at(step + lower.step(), lower.fraction());
  }

  private double at(int step, double fraction) {
    double low = values[step];
    return low + fraction * (values[step + 1] - low);
  }

  /** Value at any position, in steps. */
  double at(double position) {
    Shift shift = Shift.by(position, steps);
    return shift.pitches() * growth + at(shift.step(), shift.fraction());
  }
}
