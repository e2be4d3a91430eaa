package org.gaugeline.mechanics.spread;

import org.gaugeline.mechanics.Require;

/**
 * A positive quantity known by its 5 %, 50 % and 95 % points.
 *
 * <p>Between and beyond the three points it is a two-piece log-normal: with z a standard normal
 * variable, ln x = ln(median) + s·z, where s = ln(median/p05)/1.645 below the median and s =
 * ln(p95/median)/1.645 above it. Median, p05 and p95 are met exactly. A side of width zero holds
 * its half of the probability at the median. Products treat their factors as independent; the
 * product of two-piece variables is only approximately two-piece, exactly so when both sides are
 * alike.
 *
 * @param p05 value undercut with 5 % probability, above 0
 * @param median value undercut with 50 % probability, at least p05
 * @param p95 value undercut with 95 % probability, at least the median
 */
public record Quantiles(double p05, double median, double p95) {
  /** Checks that the three points are positive, finite and in order. */
  public Quantiles {
    Require.positive("p05", p05);
    Require.positive("p95", p95);
    Require.within("median", median, p05, p95);
  }

  /**
   * Spread that reaches by the same factor to either side: p05 = median/factor, p95 =
   * median·factor.
   *
   * @param median middle value, above 0
   * @param factor ratio of p95 to the median, at least 1
   * @return the spread
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static Quantiles of(double median, double factor) {
    Require.within("factor", factor, 1, Double.MAX_VALUE);
    return new Quantiles(median / factor, median, median * factor);
  }

  /**
   * A value without spread.
   *
   * @param value the value, above 0
   * @return spread whose three points are equal
   * @throws IllegalArgumentException if the value is not above 0
   */
  public static Quantiles exact(double value) {
    return new Quantiles(value, value, value);
  }

  /**
   * Product with an independent quantity: medians multiply, log half-widths of like sides add in
   * quadrature.
   *
   * @param other the other factor
   * @return the product
   */
  public Quantiles times(Quantiles other) {
    return product(median * other.median, other.widthBelow(), other.widthAbove());
  }

  /**
   * Quotient by an independent quantity: medians divide, and each side widens by the opposite side
   * of the divisor.
   *
   * @param other the divisor
   * @return the quotient
   */
  public Quantiles dividedBy(Quantiles other) {
    return product(median / other.median, other.widthAbove(), other.widthBelow());
  }

  /**
   * The quantity times a number that is known exactly.
   *
   * @param factor the number, above 0
   * @return the scaled quantity
   * @throws IllegalArgumentException if the factor is not above 0
   */
  public Quantiles scale(double factor) {
    Require.positive("factor", factor);
    return new Quantiles(p05 * factor, median * factor, p95 * factor);
  }

  /**
   * Value that is undercut with the given probability.
   *
   * @param probability above 0 and below 1
   * @return the quantile, in the unit of the quantity
   * @throws IllegalArgumentException if the probability is not between 0 and 1
   */
  public double quantile(double probability) {
    Require.between("probability", probability, 0, 1);
    return atStandardScore(StandardNormal.quantile(probability));
  }

  /**
   * Value at a standard normal score, for callers that keep the score of a probability.
   *
   * @param z score; 0 is the median, ±1.645 the 95th and 5th percentile
   * @return the quantile, in the unit of the quantity
   */
  public double atStandardScore(double z) {
    double width = z < 0 ? widthBelow() : widthAbove();
    return median * Math.exp(z / StandardNormal.Z95 * width);
  }

  /**
   * Probability that the quantity is x or less.
   *
   * @param x limit in the unit of the quantity; any number
   * @return probability within 0 and 1
   */
  public double probabilityAtMost(double x) {
    if (!(x > 0)) {
      return 0;
    }
    if (x == median) {
      return widthAbove() == 0 ? 1 : 0.5;
    }
    return StandardNormal.probabilityAtMost(standardScore(x));
  }

  /**
   * Probability that the quantity is x or more.
   *
   * @param x limit in the unit of the quantity; any number
   * @return probability within 0 and 1
   */
  public double probabilityAtLeast(double x) {
    if (!(x > 0)) {
      return 1;
    }
    if (x == median) {
      return widthBelow() == 0 ? 1 : 0.5;
    }
    return StandardNormal.probabilityAtMost(-standardScore(x));
  }

  private double standardScore(double x) {
    double width = x < median ? widthBelow() : widthAbove();
    // A side without width has no quantity beyond the median: division gives the infinite score.
    return Math.log(x / median) / width * StandardNormal.Z95;
  }

  private Quantiles product(double newMedian, double otherBelow, double otherAbove) {
    double below = Math.sqrt(widthBelow() * widthBelow() + otherBelow * otherBelow);
    double above = Math.sqrt(widthAbove() * widthAbove() + otherAbove * otherAbove);
    return new Quantiles(newMedian * Math.exp(-below), newMedian, newMedian * Math.exp(above));
  }

  private double widthBelow() {
    return Math.log(median / p05);
  }

  private double widthAbove() {
    return Math.log(p95 / median);
  }
}
