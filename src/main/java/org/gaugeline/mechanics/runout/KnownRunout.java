package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.spread.StandardNormal;

/**
 * Runout made of one known eccentricity, such as a marked spindle error, and a random scatter: the
 * size of the sum is Rice-distributed (Rice 1945).
 *
 * @param knownEccentricityM size ν of the known eccentricity, m, at least 0
 * @param sigmaM standard deviation σ of the scatter per transverse axis, m, at least 0
 */
public record KnownRunout(double knownEccentricityM, double sigmaM) {
  private static final double SERIES_LIMIT = 20;
  private static final double REACH = 10;
  private static final double STEP = 0.5;
  private static final double TOLERANCE = 1e-10;
  private static final double ROUNDING = 1e-14;
  private static final int MAX_ITERATIONS = 200;

  /** Checks the ranges. */
  public KnownRunout {
    Require.notNegative("knownEccentricityM", knownEccentricityM);
    Require.notNegative("sigmaM", sigmaM);
  }

  /**
   * Probability that the total indicated runout is at most T: 1 − Q1(ν/σ, T/(2σ)) with Marcum's Q
   * function, absolute error below 1e-11.
   *
   * @param tirM limit T, m
   * @return probability within 0 and 1
   */
  public double probabilityAtMost(double tirM) {
    double limitM = tirM / 2;
    if (!(limitM >= 0)) {
      return 0;
    }
    if (sigmaM == 0) {
      return knownEccentricityM <= limitM ? 1 : 0;
    }
    return distribution(knownEccentricityM / sigmaM, limitM / sigmaM);
  }

  /**
   * Total indicated runout that is not exceeded with the given probability.
   *
   * @param probability above 0 and below 1
   * @return runout, m
   * @throws IllegalArgumentException if the probability is outside its range
   */
  public double quantileTirM(double probability) {
    Require.between("probability", probability, 0, 1);
    if (sigmaM == 0) {
      return 2 * knownEccentricityM;
    }
    return 2 * sigmaM * quantile(knownEccentricityM / sigmaM, probability);
  }

  private static double distribution(double known, double limit) {
    if (limit <= known - REACH) {
      return 0;
    }
    if (limit >= known + REACH) {
      return 1;
    }
    return known <= SERIES_LIMIT ? poissonMixture(known, limit) : farFromCentre(known, limit);
  }

  /**
   * The squared size is a chi-square with 2 + 2k degrees of freedom, k Poisson-distributed with
   * mean known²/2 (non-central chi-square); the inner sum grows by one Poisson term a step.
   */
  private static double poissonMixture(double known, double limit) {
    double mean = known * known / 2;
    double y = limit * limit / 2;
    double weight = Math.exp(-mean);
    double term = Math.exp(-y);
    double inside = -Math.expm1(-y);
    double weightLeft = 1 - weight;
    double sum = weight * inside;
    for (int k = 1; weightLeft * inside > 1e-16 && inside > 0; k++) {
      weight *= mean / k;
      term *= y / k;
      inside -= term;
      weightLeft -= weight;
      sum += weight * Math.max(0, inside);
    }
    return Math.min(1, sum);
  }

  /**
   * Trapezoids over the component across the known direction; the integrand is smooth because the
   * circle passes far from the centre, so the rule converges beyond double precision.
   */
  private static double farFromCentre(double known, double limit) {
    double sum = 0;
    double weights = 0;
    for (double across = -9; across <= 9; across += STEP) {
      double weight = Math.exp(-across * across / 2);
      double along = Math.sqrt(Math.max(0, limit * limit - across * across));
      sum += weight * StandardNormal.probabilityAtMost(along - known);
      weights += weight;
    }
    return sum / weights;
  }

  /**
   * False position with the stale end's value halved (Illinois rule). The sum is at least its
   * component along the known direction and at most the known size plus the scatter's size, which
   * brackets the quantile by a normal and a Rayleigh quantile.
   */
  private static double quantile(double known, double probability) {
    double low = Math.max(0, known + StandardNormal.quantile(probability));
    double high = known + Math.sqrt(-2 * Math.log1p(-probability));
    double atLow = distribution(known, low) - probability;
    double atHigh = distribution(known, high) - probability;
    if (atLow >= 0 || atHigh <= 0) {
      return atLow >= 0 ? low : high;
    }
    int lastSide = 0;
    for (int i = 0; i < MAX_ITERATIONS && high - low > TOLERANCE; i++) {
      double middle = (low * atHigh - high * atLow) / (atHigh - atLow);
      double value = distribution(known, middle) - probability;
      if (Math.abs(value) < ROUNDING || middle <= low || middle >= high) {
        return middle;
      }
      if (value < 0) {
        low = middle;
        atLow = value;
        atHigh = lastSide < 0 ? atHigh / 2 : atHigh;
        lastSide = -1;
      } else {
        high = middle;
        atHigh = value;
        atLow = lastSide > 0 ? atLow / 2 : atLow;
        lastSide = 1;
      }
    }
    return (low + high) / 2;
  }
}
