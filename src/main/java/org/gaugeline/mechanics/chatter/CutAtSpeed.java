package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import java.util.List;
import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipResponse;

/**
 * A milling cut at one speed, prepared once for many tips that give way alike in both directions:
 * the eigenvalues κ of the cut's matrix along frequency do not know the tip, and with it are q =
 * G·κ. Zeroth-order solution with damping by the flanks, as {@link StabilityLobes}; the limit is
 * sought at frequencies 0.8 % and a sixteenth of a turn of ωT apart and then solved for.
 *
 * <p>For damping ratios of about 0.005 and more; a sharper resonance may be missed between places.
 *
 * <p>Not for use by two threads at once.
 */
public final class CutAtSpeed {
  private static final double STEPS_PER_TURN = 16;
  private static final double STEP = 0.008;

  private final CutMatrix cut;
  private final double[] omega;

  /** Real and imaginary part of the first branch, then of the second. */
  private final double[] kappa;

  private final double[] g;
  private final double[] q = new double[4];
  private final double[] unit = {1, 0, 1, 0};
  private final double[] response = new double[4];
  private final LobeTrace trace;
  private TipResponse tip = new ModalResponse(List.of(), 0);

  /**
   * Prepares a cut.
   *
   * @param process the cut
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @param lowRadPerS lowest chatter frequency of interest, rad/s, greater than 0
   * @param highRadPerS highest, rad/s, above the lowest
   */
  public CutAtSpeed(
      MillingProcess process, double spindleRadPerS, double lowRadPerS, double highRadPerS) {
    Require.positive("lowRadPerS", lowRadPerS);
    Require.positive("highRadPerS - lowRadPerS", highRadPerS - lowRadPerS);
    cut = new CutMatrix(process);
    cut.turnAt(spindleRadPerS);
    omega = places(lowRadPerS, highRadPerS, 2 * Math.PI / cut.periodS() / STEPS_PER_TURN);
    kappa = new double[4 * omega.length];
    g = new double[2 * omega.length];
    double[] last = new double[4];
    for (int i = 0; i < omega.length; i++) {
      cut.eigenvalues(omega[i], unit, 0, q);
      if (i > 0) {
        CutMatrix.keepBranches(q, last);
      }
      System.arraycopy(q, 0, last, 0, 4);
      System.arraycopy(q, 0, kappa, 4 * i, 4);
    }
    trace = new LobeTrace(this::eigenvalues);
  }

  private static double[] places(double low, double high, double most) {
    double[] places = new double[256];
    int size = 0;
    for (double w = low; w < high; w += Math.min(most, STEP * w)) {
      if (size == places.length) {
        places = Arrays.copyOf(places, 2 * size);
      }
      places[size++] = w;
    }
    return Arrays.copyOf(places, size);
  }

  private void eigenvalues(double w, double[] target) {
    tip.at(w, response, 0);
    response[2] = response[0];
    response[3] = response[1];
    cut.eigenvalues(w, response, 0, target);
  }

  /**
   * Limit with a tip.
   *
   * @param both response of the tip in either direction
   * @return least depth that chatters, with its frequency
   */
  public ChatterLimit limit(TipResponse both) {
    tip = both;
    both.sample(omega, g);
    trace.startAgain();
    for (int i = 0; i < omega.length; i++) {
      double re = g[2 * i];
      double im = g[2 * i + 1];
      int at = 4 * i;
      q[0] = re * kappa[at] - im * kappa[at + 1];
      q[1] = re * kappa[at + 1] + im * kappa[at];
      q[2] = re * kappa[at + 2] - im * kappa[at + 3];
      q[3] = re * kappa[at + 3] + im * kappa[at + 2];
      trace.step(omega[i], q);
    }
    return trace.limit();
  }
}
