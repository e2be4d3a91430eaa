package org.gaugeline.assessment;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.chatter.PreparedCut;
import org.jspecify.annotations.Nullable;

/**
 * The cut of a job as prepared for any tip and speed, for each draw of how much its flanks damp:
 * all assemblies of the job share it.
 */
final class PreparedCuts {
  private static final double LOWEST_RAD_PER_S = 2 * Math.PI * 100;
  private static final double HIGHEST_RAD_PER_S = 2 * Math.PI * 10_000;

  private final ChatterCut cut;
  private final Map<Double, PreparedCut> byRubbing = new HashMap<>();
  private final IdentityHashMap<Assembly, StableDepth> depths = new IdentityHashMap<>();

  PreparedCuts(ChatterCut cut) {
    this.cut = cut;
  }

  ChatterCut cut() {
    return cut;
  }

  /** What is known of each assembly so far. */
  IdentityHashMap<Assembly, StableDepth> depths() {
    return depths;
  }

  /** The cut with flanks that damp as drawn. */
  PreparedCut rubbing(double score) {
    return byRubbing.computeIfAbsent(
        score, any -> new PreparedCut(cut.process(score), LOWEST_RAD_PER_S, HIGHEST_RAD_PER_S));
  }

  /** The cuts of a job; null where no limit of regenerative chatter applies. */
  static @Nullable PreparedCuts of(JobContext context) {
    ChatterCut cut = ChatterCut.of(context);
    return cut == null ? null : new PreparedCuts(cut);
  }
}
