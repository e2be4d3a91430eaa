package org.gaugeline.assessment;

import org.gaugeline.mechanics.cutting.ForceCorrections;
import org.jspecify.annotations.Nullable;

/**
 * Forces of the cut as asked, at other speeds. Speed corrects the specific force by one factor,
 * which acts on thick chips wholly and on thin ones by its root at most; so every force is a sum of
 * powers of the factor, its logarithm a convex function of the factor's. Taken as a line between
 * the asked speed and one other factor, forces err upwards, by less than 0.05 %.
 */
final class SpeedForces {
  /** Logarithm of the factor at which forces are computed beside the asked one. */
  private static final double REACH = 0.25;

  private final JobContext context;
  private @Nullable CutForces slower;
  private @Nullable CutForces faster;

  SpeedForces(JobContext context) {
    this.context = context;
  }

  CutForces at(double omegaRadPerS) {
    if (context.job.workpiece().ownConstants()) {
      return context.forces;
    }
    double asked = ForceCorrections.speed(context.job.operation().cuttingSpeedMPerS());
    double there = ForceCorrections.speed(omegaRadPerS * context.job.tool().diameterM() / 2);
    double way = Math.log(there / asked) / REACH;
    return way < 0
        ? context.forces.timesPowerOf(faster(), -way, context.forces.spread())
        : context.forces.timesPowerOf(slower(), way, context.forces.spread());
  }

  private CutForces slower() {
    CutForces known = slower == null ? forces(Math.exp(REACH)) : slower;
    slower = known;
    return known;
  }

  private CutForces faster() {
    CutForces known = faster == null ? forces(Math.exp(-REACH)) : faster;
    faster = known;
    return known;
  }

  private CutForces forces(double factor) {
    return ForceLaw.cutModel(context.job, context.models, factor).once();
  }
}
