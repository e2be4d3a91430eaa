package org.gaugeline.mechanics.receptance;

import java.util.Arrays;
import org.gaugeline.mechanics.Require;

/**
 * A response as triples of frequency, real and imaginary part, measured or computed; straight
 * between the samples and held at its ends. Immutable.
 */
public final class SampledResponse implements TipResponse {
  private final double[] omega;
  private final double[] re;
  private final double[] im;

  /**
   * A response of given samples.
   *
   * @param angularFrequenciesRadPerS ω, rad/s, ascending, at least two
   * @param realMPerN real parts, m/N
   * @param imaginaryMPerN imaginary parts, m/N
   * @throws IllegalArgumentException if the arrays differ in length, are too short, do not ascend
   *     or hold a number that is not finite
   */
  public SampledResponse(
      double[] angularFrequenciesRadPerS, double[] realMPerN, double[] imaginaryMPerN) {
    omega = angularFrequenciesRadPerS.clone();
    re = realMPerN.clone();
    im = imaginaryMPerN.clone();
    if (omega.length < 2 || re.length != omega.length || im.length != omega.length) {
      throw new IllegalArgumentException(
          "a sampled response has "
              + omega.length
              + " frequencies, "
              + re.length
              + " real and "
              + im.length
              + " imaginary parts but needs the same number, at least two, of each");
    }
    Require.notNegative("first angularFrequencyRadPerS", omega[0]);
    for (int i = 0; i < omega.length; i++) {
      Require.notNegative("size of the response, m/N,", Math.hypot(re[i], im[i]));
      if (i > 0) {
        Require.positive("step of angularFrequencyRadPerS", omega[i] - omega[i - 1]);
      }
    }
  }

  @Override
  public void at(double omegaRadPerS, double[] target, int at) {
    int found = Arrays.binarySearch(omega, omegaRadPerS);
    int right = Math.min(omega.length - 1, Math.max(1, found >= 0 ? found : -found - 1));
    double share = (omegaRadPerS - omega[right - 1]) / (omega[right] - omega[right - 1]);
    double held = Math.min(1, Math.max(0, share));
    target[at] = re[right - 1] + held * (re[right] - re[right - 1]);
    target[at + 1] = im[right - 1] + held * (im[right] - im[right - 1]);
  }

  @Override
  public double[] peaksRadPerS() {
    return new double[0];
  }

  @Override
  public double leastDampingRatio() {
    return 0;
  }

  @Override
  public double mostMPerN(double lowRadPerS, double highRadPerS) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double[] supportRadPerS() {
    return omega.clone();
  }
}
