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
   * Folds the integral along one tooth's arc over all teeth.
   *
   * @param alongArc integral at the steps from the grid's start to the exit; constant after
   * @param grid the grid
   */
  PeriodicIntegral(double[] alongArc, RotationGrid grid) {
    this.steps = grid.steps();
    this.growth = alongArc[grid.arcSteps()];
    this.values = new double[2 * steps + 1];
    for (int i = 0; i <= steps; i++) {
      double sum = 0;
      for (int base = 0; base < grid.arcSteps(); base += steps) {
        sum += alongArc[Math.min(base + i, grid.arcSteps())] - alongArc[base];
      }
      values[i] = sum;
      values[steps + i] = sum + growth;
    }
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
