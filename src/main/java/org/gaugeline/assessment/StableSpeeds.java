package org.gaugeline.assessment;

import java.util.Comparator;
import java.util.List;
import org.gaugeline.mechanics.GoldenSection;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.chatter.StablePockets;

/**
 * Speeds with the deepest stable cuts, and the speed up to which the asked cut stays quiet, with a
 * tip at its median or as measured.
 */
final class StableSpeeds {
  private static final double LOWEST_SHARE = 0.1;
  private static final int POCKET_SAMPLES = 40;
  private static final int CHART_SAMPLES = 200;
  private static final int POCKET_STEPS = 5;
  private static final int MOST_POCKETS = 5;

  /** As many as one looks at beside all else that is said of an assembly. */
  private static final int TOLD = 3;

  private static final int SPEED_STEPS = 64;
  private static final double NEAR = 0.04;
  private static final int TOP_STEPS = 6;

  private StableSpeeds() {}

  /**
   * Speeds that machine and assembly bear, deepest first. They are the pockets of the tip and the
   * teeth; rubbing flanks add depth everywhere, the more the slower, so that they would otherwise
   * hide the pockets. No depth beyond the flutes is told; of equal depths the faster comes first.
   */
  static List<StabilityChart.Point> best(JobContext context, Appraisal appraisal) {
    StableDepth stable = StableDepth.of(context, appraisal.body(), appraisal.assembly());
    double fastest = context.fastestRadPerS(appraisal);
    if (stable == null) {
      return List.of();
    }
    double flute = context.job.tool().fluteLengthM();
    return best(stable, LOWEST_SHARE * fastest, fastest, flute, POCKET_SAMPLES, TOLD).stream()
        .map(
            point ->
                new StabilityChart.Point(
                    point.spindleRadPerS(), Math.min(flute, point.depthM()), Double.NaN))
        .sorted(
            Comparator.comparingDouble(StabilityChart.Point::depthM)
                .thenComparingDouble(StabilityChart.Point::spindleRadPerS)
                .reversed())
        .toList();
  }

  private static List<StabilityChart.Point> best(
      StableDepth stable,
      double fromRadPerS,
      double toRadPerS,
      double mostM,
      int samples,
      int count) {
    StabilityLobes plain = StabilityLobes.coarseMilling(stable.cut.undamped(), stable.tip());
    return StablePockets.best(plain, fromRadPerS, toRadPerS, samples, POCKET_STEPS, count).stream()
        .map(pocket -> deeper(stable, pocket.spindleRadPerS(), fromRadPerS, mostM))
        .sorted(Comparator.comparingDouble(StabilityChart.Point::depthM).reversed())
        .toList();
  }

  /** Rubbing flanks move a pocket down a little: the deeper of two places. */
  private static StabilityChart.Point deeper(
      StableDepth stable, double speedRadPerS, double leastRadPerS, double mostM) {
    double lower = Math.max(leastRadPerS, (1 - NEAR / 2) * speedRadPerS);
    double asIs = stable.medianAt(speedRadPerS, mostM).depthM();
    double below = stable.medianAt(lower, mostM).depthM();
    return below > asIs
        ? new StabilityChart.Point(lower, below, Double.NaN)
        : new StabilityChart.Point(speedRadPerS, asIs, Double.NaN);
  }

  /** The pockets of a range, each taken to its top. */
  static List<StabilityChart.Point> refined(
      StableDepth stable, double fromRadPerS, double toRadPerS) {
    return best(
            stable, fromRadPerS, toRadPerS, Double.POSITIVE_INFINITY, CHART_SAMPLES, MOST_POCKETS)
        .stream()
        .map(point -> onTop(stable, point.spindleRadPerS(), toRadPerS))
        .sorted(Comparator.comparingDouble(StabilityChart.Point::depthM).reversed())
        .toList();
  }

  /** The top of a pocket near a speed. */
  private static StabilityChart.Point onTop(
      StableDepth stable, double speedRadPerS, double mostRadPerS) {
    double top =
        GoldenSection.peak(
            (1 - NEAR) * speedRadPerS,
            Math.min(mostRadPerS, (1 + NEAR) * speedRadPerS),
            TOP_STEPS,
            speed -> stable.medianAt(speed).depthM());
    return new StabilityChart.Point(top, stable.medianAt(top).depthM(), Double.NaN);
  }

  /**
   * The limit on speed as a measured tip leaves it: the fastest of a grid below it at which the
   * asked depth stays quiet at the asked confidence. Where the lobes of a predicted tip lie is not
   * known well enough to forbid a speed.
   */
  static Limit limit(Limit limit, JobContext context, Appraisal appraisal) {
    Margin margin = appraisal.margin(Pair.STABLE_DEPTH);
    boolean finite = limit.value() > 0 && !Double.isInfinite(limit.value());
    StableDepth stable =
        margin == null || margin.isTentative() || !finite
            ? null
            : StableDepth.of(context, appraisal.body(), appraisal.assembly());
    if (stable == null) {
      return limit;
    }
    double asked = context.job.operation().axialDepthM();
    double unsure = 1 - context.job.preferences().confidence();
    for (int i = SPEED_STEPS; i > 0; i--) {
      double speed = limit.value() * i / SPEED_STEPS;
      if (stable.spread(speed).quantileM(unsure) >= asked) {
        return i == SPEED_STEPS ? limit : new Limit(speed, Pair.STABLE_DEPTH.id());
      }
    }
    return new Limit(0, Pair.STABLE_DEPTH.id());
  }
}
