package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.gaugeline.mechanics.spread.StandardNormal;

/**
 * The gap that a holder must keep: the asked clearance, and what may move the holder or make it
 * thicker than drawn.
 *
 * <p>At the median c + δ + T/2, with δ the deflection of the holder's front face under the peak
 * lateral force and T the runout at the tip; at a confidence the departures of both, of the drawn
 * profile and of the stick-out as set add in quadrature. Profile and stick-out are taken as normal
 * to the obstacle, which errs on the safe side.
 */
final class GapMargin {
  private GapMargin() {}

  /** Adds the margin of the holder, and that of the tool's own parts where they overlap. */
  static void add(JobContext context, Held held, Margin runout, List<Margin> margins) {
    Body body = held.body();
    double stickOut = held.assembly().stickOutM();
    double gap = context.reach.holderGapM(body, stickOut);
    double bend = deflectionM(context, body, stickOut);
    double median =
        context.job.feature().wallClearanceM() + bend + Math.max(0, runout.demandMedian()) / 2;
    double run = (runout.demand() - runout.demandMedian()) / 2;
    double spread = spreadM(context, body, bend, run);
    margins.add(
        new Margin(
            Pair.GAP,
            median,
            median + spread,
            gap,
            gap,
            () -> probability(context, held, bend, gap - median),
            body.profileIsGeneric()
                ? context.models.values().genericProfileBasis
                : context.models.values().givenProfileBasis));
    double own = context.reach.ownGapM(stickOut);
    if (own < -Reach.TOUCH_M) {
      margins.add(
          new Margin(Pair.TOOL_GAP, 0, 0, own, own, () -> 0, List.of("plane-geometry", "given")));
    }
  }

  /**
   * Never below the demand of an assembly up to a stick-out whose runout is allowed: what choosing
   * a stick-out must leave.
   */
  static double boundM(JobContext context, Body body, double longestM) {
    double bend = deflectionM(context, body, longestM);
    return context.job.feature().wallClearanceM()
        + bend
        + context.allowedRunoutM / 2
        + scale(context) * (geometryM(context, body) + bendSpreadM(context, bend));
  }

  /** The asked confidence in units of the 95 % point. */
  private static double scale(JobContext context) {
    return context.standardScore / StandardNormal.Z95;
  }

  private static double deflectionM(JobContext context, Body body, double stickOutM) {
    return context.forces.peakRadialForceN() * Stack.faceComplianceMPerN(context, body, stickOutM);
  }

  private static double bendSpreadM(JobContext context, double bendM) {
    return bendM * (context.forces.spread().p95() - 1);
  }

  private static double geometryM(JobContext context, Body body) {
    Values values = context.models.values();
    double profile =
        body.profileIsGeneric() ? values.genericProfileHalfWidthM : values.givenProfileHalfWidthM;
    double setting =
        context.job.shop().presetter() ? values.presetHalfWidthM : values.ruleHalfWidthM;
    return Math.sqrt(profile * profile + setting * setting);
  }

  private static double spreadM(JobContext context, Body body, double bendM, double runM) {
    double scale = scale(context);
    double geometry = scale * geometryM(context, body);
    double bend = scale * bendSpreadM(context, bendM);
    return Math.sqrt(geometry * geometry + bend * bend + runM * runM);
  }

  /** Probability that what is left above the median demand is enough. */
  private static double probability(JobContext context, Held held, double bendM, double leftM) {
    RunoutStack stack = held.runout().stack();
    double confident = Math.max(context.standardScore, StandardNormal.Z95);
    double run =
        (stack.quantileTirM(StandardNormal.probabilityAtMost(confident)) - stack.medianTirM()) / 2;
    double geometry = geometryM(context, held.body()) / StandardNormal.Z95;
    double bend = bendSpreadM(context, bendM) / StandardNormal.Z95;
    double deviation =
        Math.sqrt(geometry * geometry + bend * bend + run * run / (confident * confident));
    return StandardNormal.probabilityAtMost(leftM / deviation);
  }
}
