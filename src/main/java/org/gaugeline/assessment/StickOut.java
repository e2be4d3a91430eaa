package org.gaugeline.assessment;

import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.reference.ColletSize;

/**
 * Chooses how far the tool stands out: the shortest length that clears everything with room to
 * spare, as long as enough shank is gripped. Flutes and neck are never clamped. A cutter on an
 * arbor sits on its face, so that its own length is all that stands out; what sits in it is the
 * pilot.
 */
final class StickOut {
  private static final double LEAST_INSIDE_M = 1e-4;

  /** Answers tell a length to six digits. */
  private static final double AS_TOLD_M = 1e-7;

  private StickOut() {}

  static Assembly choose(JobContext context, Body body) {
    HolderBody holder = body.holder();
    double overall = context.job.tool().overallLengthM();
    if (context.job.tool().bored()) {
      return at(context, holder, overall);
    }
    double shortest = Math.max(context.leastStickOutM, overall - holder.maxInsertionM());
    double longest = overall - holder.minInsertionM();
    double wanted = GapMargin.wantedM(context, body);
    double ample = Pair.GAP.fullRatio() * wanted;
    double needed =
        context.reach.clearingStickOutM(
            body, shortest, longest, wanted, context.models.values().stickOutStepM);
    double roomy =
        context.reach.clearingStickOutM(
            body, shortest, longest, ample, context.models.values().stickOutStepM);
    double wellGripped = overall - Pair.INSERTION.fullRatio() * holder.minInsertionM();
    double stickOut = Math.max(needed, Math.min(stepUp(context, roomy), wellGripped));
    double chosen = Math.max(shortest, Math.min(stickOut, longest));
    double nearer = Math.max(shortest, Math.min(needed, longest));
    boolean costlier = context.reach.isCostlier(body, chosen, nearer);
    return at(context, holder, costlier ? nearer : chosen);
  }

  /**
   * The assembly at the stick-out that somebody gave: the chosen one where it is that, as far as
   * answers tell it. What was chosen to the last digit would not be met by its rounded self.
   */
  static Assembly given(JobContext context, Body body, double stickOutM) {
    Assembly chosen = choose(context, body);
    return Math.abs(chosen.stickOutM() - stickOutM) < AS_TOLD_M
        ? chosen
        : at(context, body.holder(), stickOutM);
  }

  /**
   * The assembly at a given stick-out; the gripped length follows from the tool's length. In a bore
   * the whole pilot sits, however far the cutter stands out.
   */
  static Assembly at(JobContext context, HolderBody holder, double stickOutM) {
    if (context.job.tool().bored()) {
      return new Assembly(holder, stickOutM, holder.minInsertionM());
    }
    double overall = context.job.tool().overallLengthM();
    double held = Math.max(LEAST_INSIDE_M, overall - stickOutM);
    ColletSize collet = holder.colletSize();
    double grips = collet == null ? holder.maxInsertionM() : collet.colletLengthM();
    return new Assembly(holder, stickOutM, Math.min(held, grips));
  }

  private static double stepUp(JobContext context, double stickOutM) {
    double step = context.models.values().stickOutStepM;
    return Math.ceil(stickOutM / step - 1e-6) * step;
  }
}
