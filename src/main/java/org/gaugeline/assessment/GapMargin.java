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
    double gap = held.gapM();
    double bend = bendM(context, held, context.forces);
    double median = context.job.feature().wallClearanceM() + bend + runout.demandMedian() / 2;
    double spread =
        quadrature(
            scale(context) * geometryM(context, body),
            (runout.demand() - runout.demandMedian()) / 2,
            bendSpread(context, context.forces) * bend);
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
    double own = context.reach.ownGapM(held.assembly().stickOutM());
    if (own < -Reach.TOUCH_M) {
      margins.add(
          new Margin(Pair.TOOL_GAP, 0, 0, own, own, () -> 0, List.of("plane-geometry", "given")));
    }
  }

  /**
   * How many times as much the cut may bend the holder before it loses its gap; +∞ where bending is
   * not what it loses it by. With A left after clearance and runout, G the departures beside
   * bending, and k the spread of bending, b + √(G² + k²·b²) = A is met at b = (A² − G²)/(A + √(A² −
   * (1 − k²)(A² − G²))).
   */
  static double bendRatio(JobContext context, Held held, CutForces forces) {
    RunoutStack runout = held.runout().stack();
    double run = runout.quantileTirM(context.job.preferences().confidence()) - runout.medianTirM();
    double left = held.gapM() - context.job.feature().wallClearanceM() - runout.medianTirM() / 2;
    double others = quadrature(scale(context) * geometryM(context, held.body()), run / 2, 0);
    double bend = bendM(context, held, forces);
    if (left <= others || bend <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double k = bendSpread(context, forces);
    double room = left * left - others * others;
    return room / (left + Math.sqrt(left * left - (1 - k * k) * room)) / bend;
  }

  /**
   * What choosing a stick-out must leave: the demand of an assembly whose runout is allowed, with a
   * fixed reserve for bending, so that the choice does not depend on the forces of the cut.
   */
  static double wantedM(JobContext context, Body body) {
    return context.job.feature().wallClearanceM()
        + context.models.values().holderBendingReserveM
        + context.allowedRunoutM / 2
        + scale(context) * geometryM(context, body);
  }

  /** The asked confidence in units of the 95 % point. */
  private static double scale(JobContext context) {
    return context.standardScore / StandardNormal.Z95;
  }

  private static double bendM(JobContext context, Held held, CutForces forces) {
    return forces.peakRadialForceN()
        * Stack.faceComplianceMPerN(context, held.body(), held.assembly().stickOutM());
  }

  /** Departure of bending at the confidence, over its median. */
  private static double bendSpread(JobContext context, CutForces forces) {
    return scale(context) * (forces.spread().p95() - 1);
  }

  /** Departure of outline and stick-out at the 95 % point. */
  private static double geometryM(JobContext context, Body body) {
    Values values = context.models.values();
    double profile =
        body.profileIsGeneric() ? values.genericProfileHalfWidthM : values.givenProfileHalfWidthM;
    double setting =
        context.job.shop().presetter() ? values.presetHalfWidthM : values.ruleHalfWidthM;
    return quadrature(profile, setting, 0);
  }

  private static double quadrature(double a, double b, double c) {
    return Math.sqrt(a * a + b * b + c * c);
  }

  /** Probability that what is left above the median demand is enough. */
  private static double probability(JobContext context, Held held, double bendM, double leftM) {
    RunoutStack stack = held.runout().stack();
    double confident = Math.max(context.standardScore, StandardNormal.Z95);
    double run =
        (stack.quantileTirM(StandardNormal.probabilityAtMost(confident)) - stack.medianTirM()) / 2;
    double geometry = geometryM(context, held.body()) / StandardNormal.Z95;
    double bend = bendM * (context.forces.spread().p95() - 1) / StandardNormal.Z95;
    return StandardNormal.probabilityAtMost(leftM / quadrature(geometry, bend, run / confident));
  }
}
