package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import java.util.List;
import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.jspecify.annotations.Nullable;

/**
 * A milling cut prepared once for many speeds and many tips that give way alike in both directions.
 *
 * <p>The eigenvalues κ of the cut's matrix know neither the tip nor the speed: chip and flanks
 * enter by 1 − e^{−iωT} and 2ω·ℓ/v = ωT·Nℓ/(πR), both of the phase ωT alone. With a tip, q = G·κ.
 * Zeroth-order solution with damping by the flanks, as {@link StabilityLobes}; the limit is sought
 * at phases 0.8 % and a sixteenth of a turn apart and then solved for.
 *
 * <p>Phases are looked at in blocks, those around the modes first, and others where a bound leaves
 * hope; κ of a block is computed when it is first looked at.
 *
 * <p>For tips that dissipate, with damping ratios of about 0.005 and more; a sharper resonance may
 * be missed between places.
 *
 * <p>Not for use by two threads at once.
 */
public final class PreparedCut {
  private static final int BLOCK = 18;

  /** Blocks that are asked for together before each is. */
  private static final int TOGETHER = 4;

  private final MillingProcess process;
  private final CutMatrix cut;
  private final double lowRadPerS;
  private final double highRadPerS;
  private @Nullable Block[] blocks = new Block[0];
  private final double[] response = new double[4];
  private final double[] omega = new double[BLOCK + 2];
  private final double[] re = new double[BLOCK + 2];
  private final double[] im = new double[BLOCK + 2];
  private final LobeTrace trace = new LobeTrace(this::eigenvalues);

  private TipResponse tip = new ModalResponse(List.of(), 0);
  private double periodS;

  /** First and last place of interest at the speed. */
  private int first;

  private int last;

  /** Counts limits, so that a block knows whether it was looked at for this one. */
  private long now;

  /**
   * Prepares a cut.
   *
   * @param process the cut
   * @param lowRadPerS lowest chatter frequency of interest, rad/s, greater than 0
   * @param highRadPerS highest, rad/s, above the lowest
   */
  public PreparedCut(MillingProcess process, double lowRadPerS, double highRadPerS) {
    Require.positive("lowRadPerS", lowRadPerS);
    Require.positive("highRadPerS - lowRadPerS", highRadPerS - lowRadPerS);
    this.process = process;
    this.cut = new CutMatrix(process);
    this.lowRadPerS = lowRadPerS;
    this.highRadPerS = highRadPerS;
  }

  private void eigenvalues(double w, double[] target) {
    tip.at(w, response, 0);
    response[2] = response[0];
    response[3] = response[1];
    cut.eigenvalues(w * periodS, response, target);
  }

  /**
   * Limit with a tip at a speed.
   *
   * @param both response of the tip in either direction
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @return least depth that chatters, with its frequency
   */
  public ChatterLimit limit(TipResponse both, double spindleRadPerS) {
    return limit(both, spindleRadPerS, Double.POSITIVE_INFINITY);
  }

  /**
   * The same where only depths up to some are of interest, which is found out sooner.
   *
   * @param both response of the tip in either direction
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @param mostM depth beyond which a limit counts as none, m, greater than 0
   * @return least depth that chatters, with its frequency
   */
  public ChatterLimit limit(TipResponse both, double spindleRadPerS, double mostM) {
    tip = both;
    periodS = process.toothPeriodS(spindleRadPerS);
    first = PhasePlaces.notAbove(lowRadPerS * periodS);
    last = PhasePlaces.notAbove(highRadPerS * periodS) + 1;
    now++;
    trace.startAgain(1 / mostM);
    for (double peak : both.peaksRadPerS()) {
      int place = PhasePlaces.notAbove(peak * periodS);
      Block block = block(Math.max(first, Math.min(last, place)) / BLOCK);
      if (block.mayExceed(both)) {
        block.look();
      }
    }
    int end = last / BLOCK + 1;
    for (int from = first / BLOCK; from < end; from += TOGETHER) {
      int to = Math.min(end, from + TOGETHER);
      if (!(both instanceof ModalResponse modal) || mayExceed(from, to, modal)) {
        for (int i = from; i < to; i++) {
          if (block(i).mayExceed(both)) {
            block(i).look();
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
      Block block = block(i);
      most = Math.max(most, block.lookedAt == now ? 0 : block.most);
    }
    return most > 0
        && both.mostMPerN(block(from).lowRadPerS(), block(to - 1).highRadPerS()) * most
            > trace.bestQ();
  }

  private Block block(int index) {
    if (index >= blocks.length) {
      blocks = Arrays.copyOf(blocks, Math.max(index + 1, 2 * blocks.length));
    }
    Block known = blocks[index];
    if (known == null) {
      known = new Block(index);
      blocks[index] = known;
    }
    return known;
  }

  /** Some places in a row. */
  private final class Block {
    /** Two places of the block before belong to it, so that no step and no touch is lost. */
    private final int start;

    private final int count;
    private final double lowRad;
    private final double highRad;

    /** What |κ| does not exceed where it may drive; rough until κ is computed. */
    private double most;

    private double[] phase = new double[0];

    /** None until needed. */
    private Kappa kappa = Kappa.NONE;

    private long lookedAt;

    Block(int index) {
      start = Math.max(0, index * BLOCK - 2);
      count = (index + 1) * BLOCK - start;
      lowRad = PhasePlaces.rad(start);
      highRad = PhasePlaces.rad(start + count - 1);
      most = cut.boundPa(highRad);
    }

    double lowRadPerS() {
      return lowRad / periodS;
    }

    double highRadPerS() {
      return highRad / periodS;
    }

    boolean mayExceed(TipResponse both) {
      if (lookedAt == now) {
        return false;
      }
      double response = both.mostMPerN(lowRadPerS(), highRadPerS());
      if (response * most <= trace.bestQ()) {
        return false;
      }
      prepare();
      return response * most > trace.bestQ();
    }

    /** Follows the eigenvalues through a block that may exceed. */
    void look() {
      lookedAt = now;
      int from = Math.max(0, first - start);
      int looked = Math.min(count, last + 1 - start) - from;
      double perPeriod = 1 / periodS;
      for (int i = 0; i < looked; i++) {
        omega[i] = phase[from + i] * perPeriod;
      }
      tip.at(omega, looked, re, im);
      trace.through(omega, re, im, kappa, from, looked);
    }

    private void prepare() {
      if (phase.length > 0) {
        return;
      }
      phase = new double[count];
      for (int i = 0; i < count; i++) {
        phase[i] = PhasePlaces.rad(start + i);
      }
      double[] sigma = new double[2 * count];
      PhasePlaces.sigma(start, sigma);
      kappa = new Kappa(count);
      cut.eigenvalues(phase, sigma, kappa);
      most = kappa.mostDriving();
    }
  }
}
