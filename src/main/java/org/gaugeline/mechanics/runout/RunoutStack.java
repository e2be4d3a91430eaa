package org.gaugeline.mechanics.runout;

import java.util.List;
import org.gaugeline.mechanics.Require;

/**
 * Runout at the tip of a stack of joints whose errors point in independent random directions.
 *
 * <p>The eccentricity vector E = Σ(e + L·t) (Modeling of Metal Cutting eq. 12.16 and 12.17 as plane
 * vectors) with Gaussian components has a Rayleigh-distributed size; the total indicated runout is
 * 2·|E|.
 *
 * @param sigmaM standard deviation of the eccentricity per transverse axis, m, at least 0
 */
public record RunoutStack(double sigmaM) {
  /** P95 of the total indicated runout in units of sigma: 2·√(2·ln 20) = 4.895. */
  private static final double TIR_P95_PER_SIGMA = 2 * Math.sqrt(2 * Math.log(20));

  /** Checks the range. */
  public RunoutStack {
    Require.notNegative("sigmaM", sigmaM);
  }

  /**
   * Stack of joints given by standard deviations: σ² = Σ(σe² + L²·σt²).
   *
   * @param joints joints with offset and tilt as standard deviations per axis
   * @return the stack
   */
  public static RunoutStack of(List<RunoutJoint> joints) {
    double varianceM2 = 0;
    for (int i = 0; i < joints.size(); i++) {
      varianceM2 += joints.get(i).varianceM2();
    }
    return new RunoutStack(Math.sqrt(varianceM2));
  }

  /**
   * This stack with one more joint.
   *
   * @param joint joint with offset and tilt as standard deviations per axis
   * @return the longer stack
   */
  public RunoutStack with(RunoutJoint joint) {
    return new RunoutStack(Math.sqrt(sigmaM * sigmaM + joint.varianceM2()));
  }

  /**
   * Standard deviation per axis of an offset whose total indicated runout is met in 95 of 100
   * cases: σ = TIR/4.895. Reading a stated "at most" as a 95 % point is an assumption of the
   * caller.
   *
   * @param tirP95M 95 % point of the total indicated runout, m, at least 0
   * @return standard deviation per axis, m
   * @throws IllegalArgumentException if the runout is negative
   */
  public static double sigmaFromP95TirM(double tirP95M) {
    return Require.notNegative("tirP95M", tirP95M) / TIR_P95_PER_SIGMA;
  }

  /**
   * Median of the total indicated runout: 2·√(2·ln 2)·σ = 2.355·σ.
   *
   * @return runout, m
   */
  public double medianTirM() {
    return quantileTirM(0.5);
  }

  /**
   * Total indicated runout that is not exceeded with the given probability: 2σ·√(−2·ln(1 − p)).
   *
   * @param probability at least 0 and below 1
   * @return runout, m
   * @throws IllegalArgumentException if the probability is outside its range
   */
  public double quantileTirM(double probability) {
    Require.within("probability", probability, 0, Math.nextDown(1.0));
    return 2 * sigmaM * Math.sqrt(-2 * Math.log1p(-probability));
  }

  /**
   * Probability that the total indicated runout is at most T: 1 − exp(−T²/(8σ²)).
   *
   * @param tirM limit T, m
   * @return probability within 0 and 1
   */
  public double probabilityAtMost(double tirM) {
    if (!(tirM >= 0)) {
      return 0;
    }
    if (sigmaM == 0) {
      return 1;
    }
    double ratio = tirM / sigmaM;
    return -Math.expm1(-ratio * ratio / 8);
  }

  /**
   * Largest possible total indicated runout: 2·Σ(e + L·t), all errors in one direction. A limit,
   * never an expectation.
   *
   * @param joints joints with offset and tilt as bounds
   * @return runout, m
   */
  public static double worstCaseTirM(List<RunoutJoint> joints) {
    double sumM = 0;
    for (int i = 0; i < joints.size(); i++) {
      sumM += joints.get(i).sumM();
    }
    return 2 * sumM;
  }

  /**
   * Root of the summed squares of fixed errors: 2·√Σ(e² + (L·t)²). It is the root mean square over
   * random directions, not a 95 % point.
   *
   * @param joints joints with offset and tilt as fixed sizes
   * @return runout, m
   */
  public static double rootSumSquareTirM(List<RunoutJoint> joints) {
    return 2 * of(joints).sigmaM;
  }
}
