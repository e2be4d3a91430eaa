package org.gaugeline.assessment;

import java.util.Arrays;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.job.StabilityUse;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.chatter.StablePockets;
import org.gaugeline.mechanics.receptance.TipModel;
import org.jspecify.annotations.Nullable;

/**
 * Depth to which one cut stays quiet with one assembly, by the zeroth-order solution: at the
 * median, and under the joint spread of joints, damping and cutting force. The force only scales
 * the depth, so that a draw is the lobes of its dynamics and a factor.
 */
final class StableDepth {
  static final int DRAWS = 64;

  private static final List<StackDraw> LATIN_HYPERCUBE = StackDraw.latinHypercube(DRAWS);
  private static final double HALF = 0.5;
  private static final double UNSURE = 0.05;
  private static final double LOWEST_SHARE = 0.1;
  private static final int POCKET_SAMPLES = 200;
  private static final int MOST_POCKETS = 5;
  private static final int SPEED_STEPS = 64;

  final ChatterCut cut;
  final TipDynamics dynamics;
  final TipModel tip;
  final StabilityLobes lobes;
  final List<StackDraw> draws = LATIN_HYPERCUBE;

  /** Lobes of every draw's dynamics, at the median force. */
  final List<StabilityLobes> drawn;

  private StableDepth(ChatterCut cut, TipDynamics dynamics) {
    this.cut = cut;
    this.dynamics = dynamics;
    this.tip = dynamics.model(StackDraw.MEDIAN);
    this.lobes = StabilityLobes.milling(cut.process(), tip);
    this.drawn = draws.stream().map(this::drawn).toList();
  }

  /** The depth of a cut with an assembly; null where no such limit applies. */
  static @Nullable StableDepth of(JobContext context, Body body, Assembly assembly) {
    ChatterCut cut = ChatterCut.of(context);
    return cut == null ? null : new StableDepth(cut, TipDynamics.of(context, body, assembly));
  }

  /**
   * The same where it is judged; else null. Of assemblies that are only candidates it is not, and
   * of predicted damped bodies neither: their draws take a third of a second each time.
   */
  static @Nullable StableDepth judged(JobContext context, Body body, Assembly assembly) {
    boolean judged =
        switch (context.job.preferences().stability()) {
          case NONE -> false;
          case JUDGED_WHERE_MEASURED -> assembly.measured().hasDynamics();
          case JUDGED ->
              assembly.measured().hasDynamics()
                  || (context.isOfGivenAssembly() && body.holder().damper() == null);
        };
    return judged ? of(context, body, assembly) : null;
  }

  private StabilityLobes drawn(StackDraw draw) {
    return dynamics.isMeasured()
        ? lobes
        : StabilityLobes.milling(cut.process(), dynamics.model(draw));
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
      double[] limits = new double[DRAWS];
      Arrays.fill(limits, medianM(spindleRadPerS));
      return limits;
    }
    return drawn.stream().mapToDouble(one -> one.limitAt(spindleRadPerS).depthM()).toArray();
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

  /** The asked axial depth against what stays quiet at the asked speed. */
  static void add(JobContext context, Body body, Assembly assembly, List<Margin> margins) {
    StableDepth stable = judged(context, body, assembly);
    if (stable == null) {
      return;
    }
    double speed = context.job.operation().spindleSpeedRadPerS();
    double asked = context.job.operation().axialDepthM();
    double[] limits = stable.limitsM(speed);
    margins.add(
        new Margin(
            Pair.STABLE_DEPTH,
            asked,
            asked,
            stable.medianM(speed),
            percentile(limits, 1 - context.job.preferences().confidence()),
            () -> probabilityAtLeast(limits, asked),
            List.of(
                stable.dynamics.isMeasured() ? "measured" : "dynamics-memory",
                stable.cut.ktSourceKey())));
  }

  /**
   * That the asked depth may chatter, where its p05 is less; null where it is not or is unknown,
   * and for predicted damped bodies, as they are not judged.
   */
  static @Nullable Caution caution(JobContext context, Body body, Assembly assembly) {
    boolean dear = body.holder().damper() != null && !assembly.measured().hasDynamics();
    StableDepth stable = dear ? null : of(context, body, assembly);
    if (stable == null) {
      return null;
    }
    double sure = percentile(stable.limitsM(context.job.operation().spindleSpeedRadPerS()), UNSURE);
    return sure < context.job.operation().axialDepthM()
        ? new Caution("may-chatter", Severity.NOTE, sure, Measure.LENGTH, "")
        : null;
  }

  /** Speeds with the deepest stable cuts that machine and assembly bear, deepest first. */
  static List<StabilityChart.Point> bestSpeeds(JobContext context, Appraisal appraisal) {
    ChatterCut cut = ChatterCut.of(context);
    if (cut == null || context.job.preferences().stability() == StabilityUse.NONE) {
      return List.of();
    }
    StabilityLobes lobes =
        StabilityLobes.milling(
            cut.process(),
            TipDynamics.of(context, appraisal.body(), appraisal.assembly())
                .model(StackDraw.MEDIAN));
    double most = context.fastestRadPerS(appraisal);
    return StablePockets.best(lobes, LOWEST_SHARE * most, most, POCKET_SAMPLES, MOST_POCKETS)
        .stream()
        .map(
            pocket ->
                new StabilityChart.Point(pocket.spindleRadPerS(), pocket.depthM(), Double.NaN))
        .toList();
  }

  /**
   * The limit on axial depth as the stable depth leaves it; the depth does not change with itself.
   */
  static Limit depth(Limit limit, Appraisal appraisal) {
    Margin margin = appraisal.margin(Pair.STABLE_DEPTH);
    return margin == null || margin.capacity() >= limit.value()
        ? limit
        : new Limit(margin.capacity(), Pair.STABLE_DEPTH.id());
  }

  /**
   * The limit on speed as the stable depth leaves it: the fastest of a grid below it at which the
   * asked depth stays quiet at the asked confidence.
   */
  static Limit speed(Limit limit, JobContext context, Appraisal appraisal) {
    StableDepth stable = judged(context, appraisal.body(), appraisal.assembly());
    if (stable == null || !(limit.value() > 0) || Double.isInfinite(limit.value())) {
      return limit;
    }
    double asked = context.job.operation().axialDepthM();
    double unsure = 1 - context.job.preferences().confidence();
    for (int i = SPEED_STEPS; i > 0; i--) {
      double speed = limit.value() * i / SPEED_STEPS;
      if (percentile(stable.limitsM(speed), unsure) >= asked) {
        return i == SPEED_STEPS ? limit : new Limit(speed, Pair.STABLE_DEPTH.id());
      }
    }
    return new Limit(0, Pair.STABLE_DEPTH.id());
  }
}
