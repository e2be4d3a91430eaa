package org.gaugeline.assessment;

import java.util.HashMap;
import java.util.Map;

/**
 * The largest feed per tooth that an assembly bears. Forces are nearly powers of the feed, so the
 * search is a secant over logarithms, held to a grid that all assemblies of a request share: what a
 * feed does is computed once, at few feeds, and taken linearly between them.
 */
final class FeedLimit {
  /** Steps of the grid over a range of feeds of 1 : 128; each is a part in two hundred. */
  private static final int STEPS = 1024;

  private static final double LOG_STEP = Math.log(128) / STEPS;

  /** Forces are computed at every sixteenth step, 8 % apart in feed, and lie nearly on a line. */
  private static final int NODE_STEPS = 16;

  /** What that line may promise too much where the force law bends. */
  private static final double INTERPOLATION_SHARE = 0.995;

  private static final double FORCE_EXPONENT = 0.8;

  private final JobContext context;
  private final double mostM;
  private final double depthM;
  private final Map<Integer, CutForces> forcesAt = new HashMap<>();

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
    int met = -1;
    int failed = STEPS + 1;
    String governedBy = "feed-range";
    double slope = -FORCE_EXPONENT * LOG_STEP;
    double last = position;
    double lastLog = Math.log(now.ratio());
    while (failed - met > 1) {
      int next = between(met, failed, last - lastLog / slope);
      ForceRatio there = at(held, forces(next), feedM(next));
      if (there.isMet()) {
        met = next;
      } else {
        failed = next;
        governedBy = there.code();
      }
      double log = Math.log(there.ratio());
      double steeper = (log - lastLog) / (next - last);
      slope = Double.isFinite(steeper) && steeper < 0 ? steeper : slope;
      last = next;
      lastLog = log;
    }
    return new Limit(met < 0 ? 0 : INTERPOLATION_SHARE * feedM(met), governedBy);
  }

  /**
   * The grid point nearest to a guess inside the bracket; its middle where the guess is outside.
   */
  private static int between(int met, int failed, double guess) {
    boolean inside = guess > met && guess < failed;
    double wanted = inside ? guess : guess <= met ? met + 1 : failed - 1;
    if (!Double.isFinite(guess)) {
      wanted = (met + failed) / 2.0;
    }
    return (int) Math.max(met + 1, Math.min(failed - 1, Math.rint(wanted)));
  }

  private double feedM(int step) {
    return mostM * Math.exp((step - STEPS) * LOG_STEP);
  }

  private CutForces forces(int step) {
    int below = step - step % NODE_STEPS;
    if (below == step) {
      return node(step);
    }
    double low = feedM(below);
    double share = (feedM(step) - low) / (feedM(below + NODE_STEPS) - low);
    return node(below).towards(node(below + NODE_STEPS), share, context.forceSpreadAt(feedM(step)));
  }

  private CutForces node(int step) {
    return forcesAt.computeIfAbsent(step, s -> context.cut.at(depthM, feedM(s)));
  }

  private ForceRatio at(Held held, CutForces forces, double feedPerToothM) {
    ForceRatio least =
        ForceRatio.least(context, held, forces, context.job.operation().spindleSpeedRadPerS());
    double asked = context.job.feature().raM();
    if (Double.isNaN(asked) || !Roughness.leavesCusps(context)) {
      return least;
    }
    double tir = held.runout().stack().quantileTirM(context.job.preferences().confidence());
    double left = Roughness.meanRoughnessM(context, feedPerToothM, tir);
    return least.or(Margin.ratio(asked, left), Pair.ROUGHNESS.id());
  }
}
