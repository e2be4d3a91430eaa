package org.gaugeline.assessment;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Demand against capacity in one unit (SI): the currency from which scores, verdicts, limits and
 * text derive.
 *
 * @param pair which pair it is
 * @param demandMedian demand at the median
 * @param demand demand at the asked confidence
 * @param capacityMedian capacity at the median; +∞ where nothing limits
 * @param capacity capacity at the asked confidence
 * @param chance probability that capacity ≥ demand, computed when asked for
 * @param basis source keys that decided it
 * @param isTentative predicted by a model that nothing backs in this case: what falls short of it
 *     is marginal and not unsuitable
 */
public record Margin(
    Pair pair,
    double demandMedian,
    double demand,
    double capacityMedian,
    double capacity,
    DoubleSupplier chance,
    List<String> basis,
    boolean isTentative) {
  private static final double TENTATIVE_STRETCH = 12;

  Margin(
      Pair pair,
      double demandMedian,
      double demand,
      double capacityMedian,
      double capacity,
      DoubleSupplier chance,
      List<String> basis) {
    this(pair, demandMedian, demand, capacityMedian, capacity, chance, basis, false);
  }

  /** Probability that capacity ≥ demand. */
  public double probability() {
    return chance.getAsDouble();
  }

  /** Capacity over demand at the asked confidence; +∞ without demand. */
  public double ratio() {
    return ratio(capacity, demand);
  }

  /** How hard falling short is; null where it does not. */
  @Nullable Severity severity() {
    Severity severity = Inspection.severity(medianRatio(), ratio());
    return severity == Severity.ERROR && isTentative ? Severity.WARNING : severity;
  }

  /** Capacity over demand at the median. */
  public double medianRatio() {
    return ratio(capacityMedian, demandMedian);
  }

  static double ratio(double capacity, double demand) {
    if (capacity <= 0) {
      return 0;
    }
    return demand <= 0 ? Double.POSITIVE_INFINITY : capacity / demand;
  }

  /**
   * Score of this margin alone, 0 … 100. What is only predicted takes points away as slowly as
   * little is known of it.
   */
  public double score() {
    double ratio = ratio();
    return Score.of(
        isTentative && ratio < 1 ? Math.pow(ratio, 1 / TENTATIVE_STRETCH) : ratio,
        pair.fullRatio());
  }
}
