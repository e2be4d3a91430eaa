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
 * cutting force.
 */
final class StableDepth {
  private static final int DRAWS = StackDraw.FEW.size();
  private static final double HALF = 0.5;

  /** The draw with the softest joints and the least damping. */
  private static final int SCREENED =
      IntStream.range(0, DRAWS)
          .boxed()
          .min(Comparator.comparingDouble(i -> StackDraw.FEW.get(i).ease()))
          .orElseThrow();

  /** A force that high is never met. */
  private static final double FORCE_SCORE = 4;

  /** Below it a resonance may slip between the frequencies at which a cut is prepared. */
  private static final double LEAST_PREPARED_DAMPING = 0.005;

  final ChatterCut cut;
  final TipDynamics dynamics;

  private final PreparedCuts cuts;
  private @Nullable TipModel tipIfKnown;
  private final @Nullable TipModel[] drawn = new TipModel[DRAWS];
  private final Map<Double, StabilityLobes> ofMedianTip = new HashMap<>();

  /** Limits of the draws at the median force, as last asked for. */
  private final double[] known = new double[DRAWS];

  private double knownAtRadPerS = Double.NaN;
  private double knownUpToM = Double.NaN;

  private StableDepth(PreparedCuts cuts, TipDynamics dynamics) {
    this.cuts = cuts;
    this.cut = cuts.cut();
    this.dynamics = dynamics;
  }

  /** The depth of a cut with an assembly; null where no such limit applies. */
  static @Nullable StableDepth of(JobContext context, Body body, Assembly assembly) {
    PreparedCuts cuts = context.preparedCuts();
    return cuts == null
        ? null
        : cuts.depths()
            .computeIfAbsent(
                assembly, any -> new StableDepth(cuts, TipDynamics.of(context, body, assembly)));
  }

  /** The depth of a cut with an assembly if it was asked for before; else null. */
  static @Nullable StableDepth known(JobContext context, Assembly assembly) {
    PreparedCuts cuts = context.preparedCuts();
    return cuts == null ? null : cuts.depths().get(assembly);
  }

  /** The same where the job wants it judged of this assembly; else null. */
  private static @Nullable StableDepth judged(JobContext context, Body body, Assembly assembly) {
    return context.job.preferences().stability() ? of(context, body, assembly) : null;
  }

  /** The tip at the median, or as measured. */
  TipModel tip() {
    TipModel median = tipIfKnown == null ? dynamics.median() : tipIfKnown;
    tipIfKnown = median;
    return median;
  }

  /** Limit with everything at its median, or the tip as measured. */
  ChatterLimit medianAt(double spindleRadPerS) {
    return medianAt(spindleRadPerS, Double.POSITIVE_INFINITY);
  }

  /** The same where a limit beyond some depth counts as none. */
  ChatterLimit medianAt(double spindleRadPerS, double mostM) {
    return limit(tip(), StackDraw.MEDIAN.rubbing(), spindleRadPerS, mostM);
  }

  /** Lobes with everything at its median, or the tip as measured. */
  StabilityLobes lobes() {
    return lobes(StackDraw.MEDIAN.rubbing());
  }

  private StabilityLobes lobes(double rubbing) {
    return ofMedianTip.computeIfAbsent(
        rubbing, score -> StabilityLobes.milling(cut.process(score), tip()));
  }

  /** Limits of the draws at the median force. */
  double[] atMedianForceM(double spindleRadPerS) {
    return atMedianForceM(spindleRadPerS, Double.POSITIVE_INFINITY);
  }

  private double[] atMedianForceM(double spindleRadPerS, double mostM) {
    if (dynamics.isMeasured()) {
      return ofMedianTipM(spindleRadPerS);
    }
    for (int i = 0; i < DRAWS; i++) {
      drawnM(i, spindleRadPerS, mostM);
    }
    return known.clone();
  }

  /** Limit of one draw at the median force; tips are drawn once, whatever the number of speeds. */
  private double drawnM(int index, double spindleRadPerS, double mostM) {
    if (spindleRadPerS != knownAtRadPerS || mostM != knownUpToM) {
      Arrays.fill(known, Double.NaN);
      knownAtRadPerS = spindleRadPerS;
      knownUpToM = mostM;
    }
    if (Double.isNaN(known[index])) {
      StackDraw draw = StackDraw.FEW.get(index);
      TipModel tipDrawn = drawn[index];
      if (tipDrawn == null) {
        tipDrawn = dynamics.model(draw);
        drawn[index] = tipDrawn;
      }
      known[index] = limit(tipDrawn, draw.rubbing(), spindleRadPerS, mostM).depthM();
    }
    return known[index];
  }

  /** Whether a prepared cut knows what to do with a tip. */
  private static boolean isPrepared(TipModel tip) {
    return tip.x() == tip.y() && tip.x().leastDampingRatio() >= LEAST_PREPARED_DAMPING;
  }

  @SuppressWarnings("ReferenceEquality") // an equal tip would only be prepared once more
  private ChatterLimit limit(TipModel of, double rubbing, double spindleRadPerS, double mostM) {
    if (isPrepared(of)) {
      return cuts.rubbing(rubbing).limit(of.x(), spindleRadPerS, mostM);
    }
    StabilityLobes lobes =
        of == tip() ? lobes(rubbing) : StabilityLobes.milling(cut.process(rubbing), of);
    return lobes.limitAt(spindleRadPerS);
  }

  /** Limits of the draws at the median force as if the tip were known to be at its median. */
  double[] ofMedianTipM(double spindleRadPerS) {
    Map<Double, Double> byRubbing = new HashMap<>();
    double[] limits = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      limits[i] =
          byRubbing.computeIfAbsent(
              StackDraw.FEW.get(i).rubbing(),
              score -> limit(tip(), score, spindleRadPerS, Double.POSITIVE_INFINITY).depthM());
    }
    return limits;
  }

  /** Spread of the limit at a speed. */
  DepthSpread spread(double spindleRadPerS) {
    return DepthSpread.of(atMedianForceM(spindleRadPerS), cut.ktOverMedian());
  }

  /**
   * The same up to a depth: what lies so far beyond that no force brings it back counts as none.
   */
  private DepthSpread spread(double spindleRadPerS, double mostM) {
    return DepthSpread.of(atMedianForceM(spindleRadPerS, beyond(mostM)), cut.ktOverMedian());
  }

  /** What the spread is at best, from the one draw that is likely to be the least. */
  private DepthSpread spreadAtBest(double spindleRadPerS, double mostM) {
    double[] limit = {drawnM(SCREENED, spindleRadPerS, beyond(mostM))};
    return DepthSpread.atBest(limit, DRAWS, cut.ktOverMedian());
  }

  private double beyond(double mostM) {
    return mostM * cut.ktOverMedian().atStandardScore(FORCE_SCORE);
  }

  /**
   * The asked axial depth against what stays quiet at the asked speed; null where that is not
   * judged. A prediction that no measurement backs is tentative.
   */
  static @Nullable Margin margin(JobContext context, Body body, Assembly assembly) {
    return margin(context, body, assembly, Double.POSITIVE_INFINITY);
  }

  /**
   * The same where depths up to some are of interest.
   *
   * @param mostM depth, m, greater than 0
   */
  static @Nullable Margin margin(JobContext context, Body body, Assembly assembly, double mostM) {
    StableDepth stable = judged(context, body, assembly);
    return stable == null ? null : stable.margin(context, Math.min(mostM, deepestM(context)));
  }

  /**
   * A margin that the true one does not exceed, from one of the draws; null where none is judged or
   * too little is known for that.
   */
  static @Nullable Margin optimisticMargin(JobContext context, Body body, Assembly assembly) {
    StableDepth stable = judged(context, body, assembly);
    if (stable == null || stable.dynamics.isMeasured()) {
      return null;
    }
    double asked = context.job.operation().axialDepthM();
    double deepest = deepestM(context);
    double most =
        upTo(
            deepest,
            stable
                .spreadAtBest(context.job.operation().spindleSpeedRadPerS(), deepest)
                .quantileM(1 - context.job.preferences().confidence()));
    return Double.isInfinite(most)
        ? null
        : new Margin(Pair.STABLE_DEPTH, asked, asked, most, most, () -> 1, List.of(), true);
  }

  /** A cut is no deeper than the flutes, or than is asked. */
  private static double deepestM(JobContext context) {
    return Math.max(context.job.tool().fluteLengthM(), context.job.operation().axialDepthM());
  }

  /** Beyond what is of interest nothing limits. */
  private static double upTo(double mostM, double depthM) {
    return depthM > mostM ? Double.POSITIVE_INFINITY : depthM;
  }

  private Margin margin(JobContext context, double mostM) {
    double speed = context.job.operation().spindleSpeedRadPerS();
    double asked = context.job.operation().axialDepthM();
    DepthSpread spread = spread(speed, mostM);
    boolean measured = dynamics.isMeasured();
    return new Margin(
        Pair.STABLE_DEPTH,
        asked,
        asked,
        upTo(mostM, spread.quantileM(HALF)),
        upTo(mostM, spread.quantileM(1 - context.job.preferences().confidence())),
        () -> spread.probabilityAtLeast(asked),
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
