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
