package org.gaugeline.mechanics.damper;

import java.util.function.DoubleUnaryOperator;
import org.gaugeline.mechanics.GoldenSection;
import org.gaugeline.mechanics.Require;

/**
 * What a tuned mass gains on one mode of a host, and how much of that wrong tuning costs. Ceilings:
 * one mode, linear, the damper's frequency and damping as named.
 */
public final class DamperGain {
  private static final double LOWEST = 0.4;
  private static final double HIGHEST = 2;
  private static final double STEP = 0.004;
  private static final int STEPS = 24;
  private static final int TUNING_STEPS = 26;

  private DamperGain() {}

  /**
   * Depth of the negative real part of the plain host, 1/(4ζ₁(1 + ζ₁)), reached at r = √(1 + 2ζ₁)
   * (Tlusty; memory).
   *
   * @param hostDampingRatio ζ₁, above 0 to 1
   * @return k·|min Re G|, dimensionless
   */
  public static double plainNegativeReal(double hostDampingRatio) {
    Require.positive("hostDampingRatio", hostDampingRatio);
    Require.within("hostDampingRatio", hostDampingRatio, 0, 1);
    return 1 / (4 * hostDampingRatio * (1 + hostDampingRatio));
  }

  /**
   * Depth of the negative real part with a damper, searched over r from 0.4 to 2.
   *
   * @param damper the damper
   * @param hostDampingRatio ζ₁, 0 to 1
   * @return k·|min Re G|, dimensionless
   */
  public static double negativeReal(TunedDamper damper, double hostDampingRatio) {
    Require.within("hostDampingRatio", hostDampingRatio, 0, 1);
    double[] g = new double[2];
    return highest(
        r -> {
          damper.response(r, hostDampingRatio, g);
          return -g[0];
        });
  }

  /**
   * Largest size of the response with a damper, searched over r from 0.4 to 2.
   *
   * @param damper the damper
   * @param hostDampingRatio ζ₁, 0 to 1
   * @return k·max|G|, dimensionless
   */
  public static double largestResponse(TunedDamper damper, double hostDampingRatio) {
    Require.within("hostDampingRatio", hostDampingRatio, 0, 1);
    double[] g = new double[2];
    return highest(
        r -> {
          damper.response(r, hostDampingRatio, g);
          return Math.hypot(g[0], g[1]);
        });
  }

  /**
   * Gain in critical depth of one mode, |min Re G| without over with the damper.
   *
   * @param damper the damper
   * @param hostDampingRatio ζ₁, above 0 to 1
   * @return gain; 1 = none
   */
  public static double of(TunedDamper damper, double hostDampingRatio) {
    return plainNegativeReal(hostDampingRatio) / negativeReal(damper, hostDampingRatio);
  }

  /**
   * Least gain when frequency and damping of the damper are off by as much as given, either way.
   *
   * @param damper the damper as tuned
   * @param hostDampingRatio ζ₁, above 0 to 1
   * @param frequencyTolerance largest relative error of its frequency, 0 to below 1; 0.05 = 5 %
   * @param dampingTolerance largest relative error of its damping, 0 to below 1
   * @return least gain at the corners and the middle of the two ranges
   */
  public static double least(
      TunedDamper damper,
      double hostDampingRatio,
      double frequencyTolerance,
      double dampingTolerance) {
    Require.within("frequencyTolerance", frequencyTolerance, 0, 0.99);
    Require.within("dampingTolerance", dampingTolerance, 0, 0.99);
    double least = Double.POSITIVE_INFINITY;
    for (int i = -1; i <= 1; i++) {
      for (int j = -1; j <= 1; j++) {
        TunedDamper off =
            damper.detuned(i * frequencyTolerance).withDampingChanged(j * dampingTolerance);
        least = Math.min(least, of(off, hostDampingRatio));
      }
    }
    return least;
  }

  /**
   * Numerical optimum against chatter for a damped host: least |min Re G| over f and ζ, by nested
   * golden section from the closed form. Takes some milliseconds.
   *
   * @param massRatio µ, above 0 to 1
   * @param hostDampingRatio ζ₁, 0 to 1
   * @return the optimum damper
   */
  public static TunedDamper optimum(double massRatio, double hostDampingRatio) {
    TunedDamper start = TunedDamper.chatter(massRatio);
    double damping =
        GoldenSection.peak(
            0.4 * start.dampingRatio(),
            3 * start.dampingRatio(),
            TUNING_STEPS,
            zeta -> -negativeReal(tuned(massRatio, zeta, hostDampingRatio), hostDampingRatio));
    return tuned(massRatio, damping, hostDampingRatio);
  }

  /** Best frequency for a given damping. */
  private static TunedDamper tuned(double massRatio, double zeta, double hostDampingRatio) {
    double middle = TunedDamper.chatter(massRatio).frequencyRatio();
    double f =
        GoldenSection.peak(
            0.8 * middle,
            1.25 * middle,
            TUNING_STEPS,
            each -> -negativeReal(new TunedDamper(massRatio, each, zeta), hostDampingRatio));
    return new TunedDamper(massRatio, f, zeta);
  }

  /** Highest value over the range, refined at every local maximum. */
  private static double highest(DoubleUnaryOperator function) {
    double before = function.applyAsDouble(LOWEST);
    double now = function.applyAsDouble(LOWEST + STEP);
    double best = Math.max(before, now);
    for (double r = LOWEST + 2 * STEP; r <= HIGHEST; r += STEP) {
      double next = function.applyAsDouble(r);
      if (now >= before && now >= next && now > 0.9 * best) {
        double at = GoldenSection.peak(r - 2 * STEP, r, STEPS, function);
        best = Math.max(best, function.applyAsDouble(at));
      }
      best = Math.max(best, next);
      before = now;
      now = next;
    }
    return best;
  }
}
