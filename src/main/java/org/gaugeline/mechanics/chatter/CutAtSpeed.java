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
 * <p>Frequencies are looked at in blocks, those around the modes first, and others where a bound
 * leaves hope; κ of a block is computed when it is first looked at.
 *
 * <p>For tips that dissipate, with damping ratios of about 0.005 and more; a sharper resonance may
 * be missed between places.
 *
 * <p>Not for use by two threads at once.
 */
public final class CutAtSpeed {
  private static final double STEPS_PER_TURN = 16;
  private static final double STEP = 0.008;
  private static final int BLOCK = 12;

  /** Blocks that are asked for together before each is. */
  private static final int TOGETHER = 5;

  private final CutMatrix cut;
  private final double[] omega;
  private final Block[] blocks;
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
    blocks = new Block[(omega.length + BLOCK - 1) / BLOCK];
    for (int i = 0; i < blocks.length; i++) {
      blocks[i] = new Block(i);
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
    trace.startAgain();
    for (Block block : blocks) {
      block.isDone = false;
    }
    for (double peak : both.peaksRadPerS()) {
      Block block = blocks[blockOf(peak)];
      if (trace.bestQ() == 0 || block.mayExceed(both)) {
        block.look();
      }
    }
    for (int from = 0; from < blocks.length; from += TOGETHER) {
      int to = Math.min(blocks.length, from + TOGETHER);
      if (!(both instanceof ModalResponse modal) || mayExceed(from, to, modal)) {
        for (int i = from; i < to; i++) {
          if (blocks[i].mayExceed(both)) {
            blocks[i].look();
          }
        }
      }
    }
    return trace.limit();
  }

  /** Whether one of several blocks may hold more: of modes a bound holds over any range. */
  private boolean mayExceed(int from, int to, ModalResponse both) {
    double most = 0;
    for (int i = from; i < to; i++) {
      most = Math.max(most, blocks[i].isDone ? 0 : blocks[i].most);
    }
    return most > 0
        && both.mostMPerN(omega[blocks[from].first], omega[blocks[to - 1].end - 1]) * most
            > trace.bestQ();
  }

  private int blockOf(double omegaRadPerS) {
    int place = Arrays.binarySearch(omega, omegaRadPerS);
    return Math.min(omega.length - 1, place < 0 ? -place - 1 : place) / BLOCK;
  }

  /** Some places in a row. */
  private final class Block {
    /** Two places of the block before belong to it, so that no step and no touch is lost. */
    private final int first;

    private final int end;

    /** What |κ| does not exceed where it may drive; rough until κ is computed. */
    private double most;

    /** Real and imaginary part of the first branch, then of the second; none until needed. */
    private double[] kappa = new double[0];

    private boolean isDone;

    Block(int index) {
      first = Math.max(0, index * BLOCK - 2);
      end = Math.min(omega.length, (index + 1) * BLOCK);
      most = cut.boundPa(omega[end - 1]);
    }

    boolean mayExceed(TipResponse both) {
      if (isDone) {
        return false;
      }
      double response = both.mostMPerN(omega[first], omega[end - 1]);
      if (response * most <= trace.bestQ()) {
        return false;
      }
      prepare();
      return response * most > trace.bestQ();
    }

    void look() {
      if (isDone) {
        return;
      }
      isDone = true;
      prepare();
      trace.jump();
      for (int i = first; i < end; i++) {
        tip.at(omega[i], response, 0);
        trace.step(omega[i], response[0], response[1], kappa, 4 * (i - first));
      }
    }

    private void prepare() {
      if (kappa.length > 0) {
        return;
      }
      int count = end - first;
      kappa = new double[4 * count];
      double[] now = new double[4];
      double[] last = new double[4];
      for (int i = 0; i < count; i++) {
        cut.eigenvalues(omega[first + i], unit, 0, now);
        if (i > 0) {
          CutMatrix.keepBranches(now, last);
        }
        System.arraycopy(now, 0, last, 0, 4);
        System.arraycopy(now, 0, kappa, 4 * i, 4);
      }
      most = 0;
      for (int i = 0; i < count; i++) {
        most = Math.max(most, Math.max(driving(i, count, 0), driving(i, count, 2)));
      }
    }

    /**
     * |κ| of a branch where it may make q = G·κ real and positive: the response of what dissipates
     * lags, Im G &lt; 0, so that this takes Im κ &gt; 0 there or at the place before or after.
     */
    private double driving(int place, int count, int branch) {
      boolean may = false;
      for (int i = Math.max(0, place - 1); i <= Math.min(count - 1, place + 1); i++) {
        may |= kappa[4 * i + branch + 1] > 0;
      }
      int at = 4 * place + branch;
      return may ? Math.sqrt(kappa[at] * kappa[at] + kappa[at + 1] * kappa[at + 1]) : 0;
    }
  }
}
