package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.jspecify.annotations.Nullable;

/**
 * Depth to which one cut stays quiet with one assembly, by the zeroth-order solution with flanks
 * that damp: at the median, and under the joint spread of joints, damping of tip and flanks, and
 * cutting force. The force only scales the depth.
 */
final class StableDepth {
  static final int DRAWS = 64;

  private static final List<StackDraw> LATIN_HYPERCUBE = StackDraw.latinHypercube(DRAWS);
  private static final double HALF = 0.5;

  /** Below it a resonance may slip between the frequencies at which a cut is prepared. */
  private static final double LEAST_PREPARED_DAMPING = 0.005;

  final ChatterCut cut;
  final TipDynamics dynamics;
  final TipModel tip;
  final StabilityLobes lobes;
  final List<StackDraw> draws = LATIN_HYPERCUBE;

  private final CutsAtSpeed cuts;
  private final List<TipModel> drawn = new ArrayList<>(DRAWS);
  private final Map<Double, StabilityLobes> ofMedianTip = new HashMap<>();

  private StableDepth(CutsAtSpeed cuts, TipDynamics dynamics) {
    this.cuts = cuts;
    this.cut = cuts.cut();
    this.dynamics = dynamics;
    this.tip = dynamics.model(StackDraw.MEDIAN);
    this.lobes = StabilityLobes.milling(cut.process(), tip);
  }

  /** The depth of a cut with an assembly; null where no such limit applies. */
  static @Nullable StableDepth of(JobContext context, Body body, Assembly assembly) {
    CutsAtSpeed cuts = context.cutsAtSpeed();
    return cuts == null ? null : new StableDepth(cuts, TipDynamics.of(context, body, assembly));
  }

  /** The same where the job wants it judged of this assembly; else null. */
  private static @Nullable StableDepth judged(JobContext context, Body body, Assembly assembly) {
    return context.job.preferences().stability() ? of(context, body, assembly) : null;
  }

  double forceFactor(StackDraw draw) {
    return cut.ktOverMedian().atStandardScore(draw.force());
  }

  double medianM(double spindleRadPerS) {
    return lobes.limitAt(spindleRadPerS).depthM();
  }

  /** Limits of the draws at the median force, in the order of the draws. */
  double[] atMedianForceM(double spindleRadPerS) {
    if (dynamics.isMeasured()) {
      return ofMedianTipM(spindleRadPerS);
    }
    double[] limits = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      StackDraw draw = draws.get(i);
      TipModel one = drawn(i);
      limits[i] =
          isPrepared(one.x())
              ? cuts.at(spindleRadPerS, draw.rubbing()).limit(one.x()).depthM()
              : StabilityLobes.milling(cut.process(draw.rubbing()), one)
                  .limitAt(spindleRadPerS)
                  .depthM();
    }
    return limits;
  }

  /** The tips are drawn once, whatever the number of speeds. */
  private TipModel drawn(int index) {
    if (drawn.isEmpty()) {
      draws.forEach(draw -> drawn.add(dynamics.model(draw)));
    }
    return drawn.get(index);
  }

  private static boolean isPrepared(TipResponse response) {
    return !(response instanceof ModalResponse modal)
        || modal.modes().stream().allMatch(mode -> mode.dampingRatio() >= LEAST_PREPARED_DAMPING);
  }

  /** The same as if the tip were known to be at its median. */
  double[] ofMedianTipM(double spindleRadPerS) {
    Map<Double, Double> byRubbing = new HashMap<>();
    double[] limits = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      limits[i] =
          byRubbing.computeIfAbsent(
              draws.get(i).rubbing(), score -> medianTip(score).limitAt(spindleRadPerS).depthM());
    }
    return limits;
  }

  private StabilityLobes medianTip(double rubbing) {
    return ofMedianTip.computeIfAbsent(
        rubbing, score -> StabilityLobes.milling(cut.process(score), tip));
  }

  /** Limits of all draws, sorted. */
  double[] limitsM(double spindleRadPerS) {
    return withForce(atMedianForceM(spindleRadPerS));
  }

  /** Limits at the median force, as many as draws, with the force of each draw; sorted. */
  double[] withForce(double[] atMedianForceM) {
    double[] limits = atMedianForceM.clone();
    for (int i = 0; i < limits.length; i++) {
      limits[i] /= forceFactor(draws.get(i));
    }
    Arrays.sort(limits);
    return limits;
  }

  /** Of sorted values, each in the middle of its stratum, straight between them. */
  static double percentile(double[] sorted, double probability) {
    double place = probability * sorted.length - HALF;
    int below = (int) Math.floor(place);
    if (below < 0) {
      return sorted[0];
    }
    if (below + 1 >= sorted.length) {
      return sorted[sorted.length - 1];
    }
    double share = place - below;
    return share == 0 || sorted[below] == sorted[below + 1]
        ? sorted[below]
        : sorted[below] + share * (sorted[below + 1] - sorted[below]);
  }

  static double probabilityAtLeast(double[] limitsM, double depthM) {
    return (double) Arrays.stream(limitsM).filter(limit -> limit >= depthM).count()
        / limitsM.length;
  }

  /**
   * The asked axial depth against what stays quiet at the asked speed; null where that is not
   * judged. A prediction that no measurement backs is tentative.
   */
  static @Nullable Margin margin(JobContext context, Body body, Assembly assembly) {
    StableDepth stable = judged(context, body, assembly);
    if (stable == null) {
      return null;
    }
    double speed = context.job.operation().spindleSpeedRadPerS();
    double asked = context.job.operation().axialDepthM();
    double[] limits = stable.limitsM(speed);
    boolean measured = stable.dynamics.isMeasured();
    return new Margin(
        Pair.STABLE_DEPTH,
        asked,
        asked,
        percentile(limits, HALF),
        percentile(limits, 1 - context.job.preferences().confidence()),
        () -> probabilityAtLeast(limits, asked),
        List.of(measured ? "measured" : "dynamics-memory", stable.cut.ktSourceKey()),
        !measured);
  }

  /**
   * The limit on axial depth as the stable depth leaves it; the depth does not change with itself.
   * A prediction that falls short of what is asked limits nothing.
   */
  static Limit depth(Limit limit, Appraisal appraisal) {
    Margin margin = appraisal.margin(Pair.STABLE_DEPTH);
    return margin == null
            || margin.capacity() >= limit.value()
            || (margin.isTentative() && margin.ratio() < 1)
        ? limit
        : new Limit(margin.capacity(), Pair.STABLE_DEPTH.id());
  }
}
