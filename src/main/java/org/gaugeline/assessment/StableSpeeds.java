package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.chatter.StablePockets;

/**
 * Speeds with the deepest stable cuts, and the speed up to which the asked cut stays quiet, with a
 * tip at its median or as measured.
 */
final class StableSpeeds {
  private static final double LOWEST_SHARE = 0.1;
  private static final int POCKET_SAMPLES = 64;
  private static final int MOST_POCKETS = 5;
  private static final int SPEED_STEPS = 64;

  private StableSpeeds() {}

  /**
   * Speeds that machine and assembly bear, deepest first. Where they lie is decided by the tip and
   * the teeth; the flanks only add depth, the more the slower, and count in what is told.
   */
  static List<StabilityChart.Point> best(JobContext context, Appraisal appraisal) {
    StableDepth stable = StableDepth.of(context, appraisal.body(), appraisal.assembly());
    double fastest = context.fastestRadPerS(appraisal);
    return stable == null ? List.of() : best(stable, LOWEST_SHARE * fastest, fastest);
  }

  static List<StabilityChart.Point> best(StableDepth stable, double fromRadPerS, double toRadPerS) {
    StabilityLobes plain = StabilityLobes.milling(stable.cut.undamped(), stable.tip);
    return StablePockets.best(plain, fromRadPerS, toRadPerS, POCKET_SAMPLES, MOST_POCKETS).stream()
        .map(
            pocket ->
                new StabilityChart.Point(
                    pocket.spindleRadPerS(),
                    stable.medianAt(pocket.spindleRadPerS()).depthM(),
                    Double.NaN))
        .toList();
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
      if (StableDepth.percentile(stable.limitsM(speed), unsure) >= asked) {
        return i == SPEED_STEPS ? limit : new Limit(speed, Pair.STABLE_DEPTH.id());
      }
    }
    return new Limit(0, Pair.STABLE_DEPTH.id());
  }
}
