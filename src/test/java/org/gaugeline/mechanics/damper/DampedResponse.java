package org.gaugeline.mechanics.damper;

import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.SampledResponse;
import org.gaugeline.mechanics.receptance.TipMode;

/** Responses of tips whose host has a tuned mass. */
public final class DampedResponse {
  private DampedResponse() {}

  /**
   * A response of modes with a tuned mass on the lowest of them: H = H_host + (G₁ with the mass −
   * G₁ without it), the first as in {@link TunedDamper#response}. The other modes and the residual
   * stay as they are, because the mass hangs soft against them; what it does to the second mode is
   * left out. Of a bar in a spindle joint the floors of the depth limit are within 2 % of the full
   * coupling of the mass at its place from four diameters on, at two an eighth too low (computed).
   *
   * @param host at least one mode, the lowest first and with real residue (β = 0)
   * @param damper ratios to that mode
   * @return the response, sampled where the host's own asks for it
   * @throws IllegalArgumentException if there is no mode
   */
  public static SampledResponse onFirstMode(ModalResponse host, TunedDamper damper) {
    if (host.modes().isEmpty()) {
      throw new IllegalArgumentException("a rigid tip has no mode to hang a tuned mass on");
    }
    TipMode first = host.modes().get(0);
    ModalResponse alone = ModalResponse.of(first);
    double[] omega = host.supportRadPerS();
    double[] re = new double[omega.length];
    double[] im = new double[omega.length];
    double[] g = new double[4];
    double[] kg = new double[2];
    for (int i = 0; i < omega.length; i++) {
      host.at(omega[i], g, 0);
      alone.at(omega[i], g, 2);
      damper.response(omega[i] / first.angularFrequencyRadPerS(), first.dampingRatio(), kg);
      re[i] = g[0] - g[2] + kg[0] / first.stiffnessNPerM();
      im[i] = g[1] - g[3] + kg[1] / first.stiffnessNPerM();
    }
    return new SampledResponse(omega, re, im);
  }
}
