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
   * Fewer of them, between which features show but are not resolved.
   *
   * @return ω, rad/s
   */
  default double[] coarseSupportRadPerS() {
    return supportRadPerS();
  }

  /**
   * Writes H at many frequencies.
   *
   * @param omegaRadPerS ω, rad/s, 0 or more each
   * @param target receives real and imaginary parts in turn, m/N
   */
  default void sample(double[] omegaRadPerS, double[] target) {
    for (int i = 0; i < omegaRadPerS.length; i++) {
      at(omegaRadPerS[i], target, 2 * i);
    }
  }
}
