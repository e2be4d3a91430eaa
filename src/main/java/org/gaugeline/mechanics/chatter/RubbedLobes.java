package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import org.gaugeline.mechanics.receptance.TipModel;

/**
 * Limit depth of a milling cut whose flanks damp, at given speeds.
 *
 * <p>The matrix of the cut depends on ωT with its turns, so that its eigenvalues with the tip
 * change with speed; they are followed along ω, in steps of a sixteenth of a turn of ωT. Places at
 * which no eigenvalue can be larger than the largest real one found so far are passed over.
 *
 * <p>Not for use by two threads at once.
 */
final class RubbedLobes {
  private static final double STEPS_PER_TURN = 16;
  private static final int AROUND_PEAK = 8;

  private final TipModel tip;
  private final CutMatrix cut;

  /** Frequencies, and the larger response of each. */
  private final double[] omega;

  private final double[] most;
  private final int[] peaks;
  private final double[] g = new double[4];
  private final LobeTrace trace;
  private final MillingProcess process;
  private double periodS;

  RubbedLobes(MillingProcess process, TipModel tip, double[] support) {
    this.process = process;
    this.tip = tip;
    cut = new CutMatrix(process);
    omega = support;
    most = new double[omega.length];
    for (int i = 0; i < omega.length; i++) {
      respond(omega[i]);
      most[i] = Math.sqrt(Math.max(g[0] * g[0] + g[1] * g[1], g[2] * g[2] + g[3] * g[3]));
    }
    peaks = peaks(most);
    trace = new LobeTrace(this::eigenvalues);
  }

  private void eigenvalues(double omegaRadPerS, double[] q) {
    respond(omegaRadPerS);
    cut.eigenvalues(omegaRadPerS * periodS, g, q);
  }

  private void respond(double omegaRadPerS) {
    tip.x().at(omegaRadPerS, g, 0);
    if (tip.x() == tip.y()) {
      g[2] = g[0];
      g[3] = g[1];
    } else {
      tip.y().at(omegaRadPerS, g, 2);
    }
  }

  /** Local maxima, largest first. */
  private static int[] peaks(double[] values) {
    int[] found = new int[values.length];
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      boolean rises = i == 0 || values[i] > values[i - 1];
      boolean falls = i == values.length - 1 || values[i] >= values[i + 1];
      if (rises && falls) {
        int at = count++;
        while (at > 0 && values[found[at - 1]] < values[i]) {
          found[at] = found[at - 1];
          at--;
        }
        found[at] = i;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Limit at one speed. */
  ChatterLimit limitAt(double spindleRadPerS) {
    periodS = process.toothPeriodS(spindleRadPerS);
    trace.startAgain(0);
    for (int peak : peaks) {
      search(Math.max(1, peak - AROUND_PEAK), Math.min(omega.length - 1, peak + AROUND_PEAK));
    }
    search(1, omega.length - 1);
    return trace.limit();
  }

  /** Looks between the node before the first and the last, where the bound leaves hope. */
  private void search(int first, int last) {
    trace.jump();
    for (int i = first; i <= last; i++) {
      if (cut.boundPa(omega[i] * periodS) * Math.max(most[i - 1], most[i]) <= trace.bestQ()) {
        trace.jump();
        continue;
      }
      double low = omega[i - 1];
      if (!trace.isUnderWay()) {
        trace.step(low);
      }
      double width = omega[i] - low;
      double turns = width * periodS / (2 * Math.PI);
      int steps = Math.max(1, (int) Math.ceil(turns * STEPS_PER_TURN));
      for (int step = 1; step <= steps; step++) {
        trace.step(step == steps ? omega[i] : low + width * step / steps);
      }
    }
  }
}
