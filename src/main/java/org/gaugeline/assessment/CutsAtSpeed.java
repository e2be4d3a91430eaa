package org.gaugeline.assessment;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.chatter.CutAtSpeed;
import org.jspecify.annotations.Nullable;

/**
 * The cut of a job as prepared for tips at one speed, for each draw of how much its flanks damp:
 * all assemblies of the job share it. Only the speed last asked for is kept.
 */
final class CutsAtSpeed {
  private static final double LOWEST_RAD_PER_S = 2 * Math.PI * 100;
  private static final double HIGHEST_RAD_PER_S = 2 * Math.PI * 10_000;

  private final ChatterCut cut;
  private final Map<Double, CutAtSpeed> byRubbing = new HashMap<>();
  private final IdentityHashMap<Assembly, StableDepth> depths = new IdentityHashMap<>();
  private double speedRadPerS = Double.NaN;

  CutsAtSpeed(ChatterCut cut) {
    this.cut = cut;
  }

  ChatterCut cut() {
    return cut;
  }

  /** What is known of each assembly so far. */
  IdentityHashMap<Assembly, StableDepth> depths() {
    return depths;
  }

  CutAtSpeed at(double spindleRadPerS, double rubbing) {
    if (spindleRadPerS != speedRadPerS) {
      byRubbing.clear();
      speedRadPerS = spindleRadPerS;
    }
    return byRubbing.computeIfAbsent(
        rubbing,
        score ->
            new CutAtSpeed(
                cut.process(score), spindleRadPerS, LOWEST_RAD_PER_S, HIGHEST_RAD_PER_S));
  }

  /** The cuts of a job; null where no limit of regenerative chatter applies. */
  static @Nullable CutsAtSpeed of(JobContext context) {
    ChatterCut cut = ChatterCut.of(context);
    return cut == null ? null : new CutsAtSpeed(cut);
  }
}
