package org.gaugeline.assessment;

import org.jspecify.annotations.Nullable;

/**
 * The largest feed per tooth that an assembly bears. Forces are nearly powers of the feed, so the
 * search is a secant over logarithms, held to a grid that all assemblies of a request share: what a
 * feed does is computed once, at few feeds, and taken as a power of it between them.
 */
final class FeedLimit {
  /** Steps of the grid over a range of feeds of 1 : 128; each is a part in two hundred. */
  private static final int STEPS = 1024;

  private static final double LOG_STEP = Math.log(128) / STEPS;

  /** Forces are computed a sixth apart in feed, and are nearly a power of it between. */
  private static final int NODE_STEPS = 32;

  /** What that power may promise too much where the force law bends. */
  private static final double INTERPOLATION_SHARE = 0.995;

  private static final double FORCE_EXPONENT = 0.8;

  private final JobContext context;
  private final double mostM;
  private final double depthM;
  private final @Nullable CutForces[] nodes = new CutForces[STEPS / NODE_STEPS + 1];

  FeedLimit(JobContext context) {
    this.context = context;
    this.mostM =
        Math.max(
            2 * context.job.operation().feedPerToothM(),
            context.practice("feedRangePerDiameter") * context.job.tool().diameterM());
    this.depthM = Math.max(context.job.operation().axialDepthM(), 1e-9);
  }

  /** Solves for one assembly; 0 where even the least feed of the range is too much. */
  Limit solve(Held held) {
    double asked = context.job.operation().feedPerToothM();
    ForceRatio now = at(held, context.forces, asked);
    double position = STEPS + Math.log(asked / mostM) / LOG_STEP;
    GridSearch search =
        new GridSearch(
                Math::log,
                -1,
                STEPS + 1,
                "feed-range",
                position,
                now.ratio(),
                -FORCE_EXPONENT * LOG_STEP)
            .run(step -> at(held, forces(step), feedM(step)));
    int met = search.met();
    return new Limit(met < 0 ? 0 : INTERPOLATION_SHARE * feedM(met), search.governedBy());
  }

  private double feedM(int step) {
    return mostM * Math.exp((step - STEPS) * LOG_STEP);
  }

  private CutForces forces(int step) {
    int below = step - step % NODE_STEPS;
    if (below == step) {
      return node(step);
    }
    double share = (double) (step - below) / NODE_STEPS;
    CutForces low = node(below);
    CutForces high = node(below + NODE_STEPS);
    return low.timesPowerOf(high, share, context.forceSpreadAt(feedM(step)));
  }

  private CutForces node(int step) {
    CutForces known = nodes[step / NODE_STEPS];
    if (known == null) {
      known = context.cut.at(depthM, feedM(step));
      nodes[step / NODE_STEPS] = known;
    }
    return known;
  }

  private ForceRatio at(Held held, CutForces forces, double feedPerToothM) {
    ForceRatio least =
        ForceRatio.least(context, held, forces, context.job.operation().spindleSpeedRadPerS());
    double asked = context.job.feature().raM();
    if (Double.isNaN(asked) || !Roughness.leavesCusps(context)) {
      return least;
    }
    double tir = held.runout().quantileTirM(context.job.preferences().confidence());
    double left = Roughness.meanRoughnessM(context, feedPerToothM, tir);
    return least.or(Margin.ratio(asked, left), Pair.ROUGHNESS.id());
  }
}
