package org.gaugeline.assessment;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.chatter.ChatterLimit;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.receptance.TipModel;
import org.jspecify.annotations.Nullable;

/**
 * Depth to which one cut stays quiet with one assembly, by the zeroth-order solution with flanks
 * that damp: at the median, and under the joint spread of joints, damping of tip and flanks, and
 * cutting force. The force only scales the depth.
 */
final class StableDepth {
  static final int DRAWS = 32;

  private static final List<StackDraw> LATIN_HYPERCUBE = StackDraw.latinHypercube(DRAWS);
  private static final double HALF = 0.5;

  /** Draws with soft joints, little damping and much force. */
  private static final List<Integer> SCREENED =
      IntStream.range(0, DRAWS)
          .boxed()
          .sorted(Comparator.comparingDouble((Integer i) -> LATIN_HYPERCUBE.get(i).ease()))
          .limit(6)
          .toList();

  /** Below it a resonance may slip between the frequencies at which a cut is prepared. */
  private static final double LEAST_PREPARED_DAMPING = 0.005;

  final ChatterCut cut;
  final TipDynamics dynamics;
  final TipModel tip;
  final List<StackDraw> draws = LATIN_HYPERCUBE;

  private final CutsAtSpeed cuts;
  private final Map<Integer, TipModel> drawn = new HashMap<>();
  private final Map<Double, StabilityLobes> ofMedianTip = new HashMap<>();

  /** Limits at the median force, in the order of the draws, at the speed last asked for. */
  private final double[] known = new double[DRAWS];

  private double knownAtRadPerS = Double.NaN;

  private StableDepth(CutsAtSpeed cuts, TipDynamics dynamics) {
    this.cuts = cuts;
    this.cut = cuts.cut();
    this.dynamics = dynamics;
    this.tip = dynamics.model(StackDraw.MEDIAN);
  }

  /** The depth of a cut with an assembly; null where no such limit applies. */
  static @Nullable StableDepth of(JobContext context, Body body, Assembly assembly) {
    CutsAtSpeed cuts = context.cutsAtSpeed();
    return cuts == null
        ? null
        : cuts.depths()
            .computeIfAbsent(
                assembly, any -> new StableDepth(cuts, TipDynamics.of(context, body, assembly)));
  }

  /** The same where the job wants it judged of this assembly; else null. */
  private static @Nullable StableDepth judged(JobContext context, Body body, Assembly assembly) {
    return context.job.preferences().stability() ? of(context, body, assembly) : null;
  }

  double forceFactor(StackDraw draw) {
    return cut.ktOverMedian().atStandardScore(draw.force());
  }

  /** Limit with everything at its median, or the tip as measured. */
  ChatterLimit medianAt(double spindleRadPerS) {
    return lobes().limitAt(spindleRadPerS);
  }

  /** Lobes with everything at its median, or the tip as measured. */
  StabilityLobes lobes() {
    return medianTip(0);
  }

  /** Limits of the draws at the median force, in the order of the draws. */
  double[] atMedianForceM(double spindleRadPerS) {
    if (dynamics.isMeasured()) {
      return ofMedianTipM(spindleRadPerS);
    }
    for (int i = 0; i < DRAWS; i++) {
      drawnM(i, spindleRadPerS);
    }
    return known.clone();
  }

  /** Limit of one draw at the median force; tips are drawn once, whatever the number of speeds. */
  private double drawnM(int index, double spindleRadPerS) {
    if (spindleRadPerS != knownAtRadPerS) {
      Arrays.fill(known, Double.NaN);
      knownAtRadPerS = spindleRadPerS;
    }
    if (Double.isNaN(known[index])) {
      StackDraw draw = draws.get(index);
      TipModel tipDrawn = drawn.get(index);
      if (tipDrawn == null) {
        tipDrawn = dynamics.model(draw);
        drawn.put(index, tipDrawn);
      }
      known[index] = limitM(draw, tipDrawn, spindleRadPerS);
    }
    return known[index];
  }

  private double limitM(StackDraw draw, TipModel tipDrawn, double spindleRadPerS) {
    return isPrepared(tipDrawn)
        ? cuts.at(spindleRadPerS, draw.rubbing()).limit(tipDrawn.x()).depthM()
        : StabilityLobes.milling(cut.process(draw.rubbing()), tipDrawn)
            .limitAt(spindleRadPerS)
            .depthM();
  }

  /**
   * What a low percentile of the limits does not exceed: taken of a few draws that are likely to be
   * the least, more of which could only lower it; +∞ where they are too few to say.
   */
  private double atMostM(double spindleRadPerS, double probability) {
    double place = probability * DRAWS - HALF;
    int below = (int) Math.floor(place);
    if (dynamics.isMeasured() || below + 1 >= SCREENED.size()) {
      return Double.POSITIVE_INFINITY;
    }
    double[] limits =
        SCREENED.stream()
            .mapToDouble(i -> drawnM(i, spindleRadPerS) / forceFactor(draws.get(i)))
            .sorted()
            .toArray();
    return below < 0
        ? limits[0]
        : limits[below] + (place - below) * (limits[below + 1] - limits[below]);
  }

  /** Whether a cut prepared at a speed knows what to do with a tip. */
  private static boolean isPrepared(TipModel tip) {
    return tip.x() == tip.y() && tip.x().leastDampingRatio() >= LEAST_PREPARED_DAMPING;
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
    return stable == null ? null : stable.margin(context);
  }

  /**
   * A margin that the true one does not exceed, from a few of the draws; null where none is judged
   * or too little is known for that.
   */
  static @Nullable Margin optimisticMargin(JobContext context, Body body, Assembly assembly) {
    StableDepth stable = judged(context, body, assembly);
    if (stable == null) {
      return null;
    }
    double asked = context.job.operation().axialDepthM();
    double most =
        stable.atMostM(
            context.job.operation().spindleSpeedRadPerS(),
            1 - context.job.preferences().confidence());
    return Double.isInfinite(most)
        ? null
        : new Margin(Pair.STABLE_DEPTH, asked, asked, most, most, () -> 1, List.of(), true);
  }

  private Margin margin(JobContext context) {
    double speed = context.job.operation().spindleSpeedRadPerS();
    double asked = context.job.operation().axialDepthM();
    double[] limits = limitsM(speed);
    boolean measured = dynamics.isMeasured();
    return new Margin(
        Pair.STABLE_DEPTH,
        asked,
        asked,
        percentile(limits, HALF),
        percentile(limits, 1 - context.job.preferences().confidence()),
        () -> probabilityAtLeast(limits, asked),
        measured
            ? List.of("measured", cut.ktSourceKey())
            : List.of("dynamics-memory", "altintas-tip-modes", cut.ktSourceKey()),
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
