package org.gaugeline.mechanics.receptance;

/** Direct frequency response H(ω) = x/f of a tool tip in one direction. */
public sealed interface TipResponse permits ModalResponse, SampledResponse, TunedResponse {
  /**
   * Writes H(ω).
   *
   * @param omegaRadPerS ω, rad/s, 0 or more
   * @param target receives the real part at {@code at} and the imaginary part after it, m/N
   * @param at index
   */
  void at(double omegaRadPerS, double[] target, int at);

  /**
   * Writes H at several frequencies.
   *
   * @param omegaRadPerS ω, rad/s, each 0 or more
   * @param count how many of them
   * @param re receives the real parts, m/N
   * @param im receives the imaginary parts, m/N
   */
  default void at(double[] omegaRadPerS, int count, double[] re, double[] im) {
    double[] h = new double[2];
    for (int i = 0; i < count; i++) {
      at(omegaRadPerS[i], h, 0);
      re[i] = h[0];
      im[i] = h[1];
    }
  }

  /**
   * Angular frequencies, ascending, between which the response is smooth enough for linear
   * interpolation of what is derived from it.
   *
   * @return ω, rad/s
   */
  double[] supportRadPerS();

  /**
   * Frequencies at which the response is large, the largest first.
   *
   * @return ω, rad/s; none where they are not known
   */
  double[] peaksRadPerS();

  /**
   * Damping ratio of the sharpest resonance.
   *
   * @return ζ; 0 where it is not known, +∞ where there is none
   */
  double leastDampingRatio();

  /**
   * What |H| does not exceed between two frequencies that are not far apart.
   *
   * @param lowRadPerS ω, rad/s, greater than 0
   * @param highRadPerS ω, rad/s, not below the other
   * @return m/N; +∞ where nothing is known
   */
  double mostMPerN(double lowRadPerS, double highRadPerS);

  /**
   * Fewer frequencies than {@link #supportRadPerS}, between which features show but are not
   * resolved.
   *
   * @return ω, rad/s
   */
  default double[] coarseSupportRadPerS() {
    return supportRadPerS();
  }
}
