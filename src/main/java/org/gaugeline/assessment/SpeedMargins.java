package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.balance.BalanceGrade;
import org.gaugeline.mechanics.balance.SeatEccentricity;
import org.gaugeline.mechanics.balance.Unbalance;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.mechanics.spread.StandardNormal;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** The margins of speed: the lowest rated speed, and the force of the residual unbalance. */
final class SpeedMargins {
  private SpeedMargins() {}

  static void add(
      JobContext context, Body body, Geometry geometry, SpeedLimits limits, List<Margin> margins) {
    ratedSpeed(context, limits, margins);
    unbalance(context, body, geometry, margins);
  }

  private static void ratedSpeed(JobContext context, SpeedLimits limits, List<Margin> margins) {
    double asked = context.job.operation().spindleSpeedRadPerS();
    Quantiles spread =
        new Quantiles(lowerTail(context, limits), limits.medianRadPerS(), limits.medianRadPerS());
    margins.add(
        new Margin(
            Pair.SPINDLE_SPEED,
            asked,
            asked,
            limits.medianRadPerS(),
            limits.safeRadPerS(),
            () ->
                asked <= spread.p05() && spread.p05() == spread.median()
                    ? 1
                    : spread.probabilityAtLeast(asked),
            List.of(limits.basis())));
  }

  /** The 5 % point that a log-normal through median and confident value would have. */
  private static double lowerTail(JobContext context, SpeedLimits limits) {
    double z = context.standardScore;
    double ratio = limits.safeRadPerS() / limits.medianRadPerS();
    return z <= 0
        ? limits.medianRadPerS()
        : limits.medianRadPerS() * Math.pow(ratio, StandardNormal.Z95 / z);
  }

  private static void unbalance(
      JobContext context, Body body, Geometry geometry, List<Margin> margins) {
    double omega = context.job.operation().spindleSpeedRadPerS();
    double cap = context.models.values().balanceGradeCapMPerS;
    double capacity =
        Unbalance.centrifugalForceN(
            new BalanceGrade(cap).permissibleUnbalanceKgM(geometry.massKg(), omega), omega);
    Quantiles force =
        unbalanceKgM(context, body, geometry.massKg()).scale(Unbalance.centrifugalForceN(1, omega));
    margins.add(
        new Margin(
            Pair.UNBALANCE_FORCE,
            force.median(),
            force.atStandardScore(context.standardScore),
            capacity,
            capacity,
            () -> force.probabilityAtMost(capacity),
            context.models.values().balanceBasis));
  }

  static double unbalanceKgM(double residualKgM, double massKg, double seatTirM) {
    double seat = SeatEccentricity.ofTir(seatTirM).unbalanceKgM(massKg);
    return new Unbalance(residualKgM, seat).typicalKgM();
  }

  static Spread seatTirM(JobContext context, HolderBody holder) {
    SpindleInterface spindle = holder.spindleInterface();
    boolean face = context.gainsFace(holder);
    return face ? spindle.faceSeatTirM() : spindle.nativeSeatTirM();
  }

  /**
   * Residual unbalance of the assembly: measured, marked, balanced by the shop, or as delivered.
   */
  static double residualKgM(JobContext context, Body body, double massKg) {
    Ratings ratings = body.holder().ratings();
    if (!Double.isNaN(ratings.residualUnbalanceKgM())) {
      return ratings.residualUnbalanceKgM();
    }
    if (!Double.isNaN(ratings.balanceGradeMPerS())
        && !Double.isNaN(ratings.balanceSpeedRadPerS())) {
      return new BalanceGrade(ratings.balanceGradeMPerS())
          .permissibleUnbalanceKgM(massKg, ratings.balanceSpeedRadPerS());
    }
    double delivered =
        massKg * body.holder().family().residualUnbalanceM()
            + seamUnbalanceKgM(body.holder(), massKg)
            + body.holder().spindleInterface().seatUnbalanceKgM()
                * context.models.values().seatUnbalanceLeftShare
            + singlePointKgM(context, body, massKg);
    if (context.job.shop().balancer()) {
      double fine =
          new BalanceGrade(context.models.values().balanceGradeFineMPerS)
              .permissibleUnbalanceKgM(massKg, context.models.values().balanceSpeedFineRadPerS);
      return Math.min(fine, delivered);
    }
    return delivered;
  }

  /**
   * Unbalance that a stack's joints add: the mass in front of a joint, taken as its share of the
   * length, off centre by half of the joint's runout. Balancing the assembly takes it out.
   */
  private static double seamUnbalanceKgM(HolderBody holder, double massKg) {
    double sum = 0;
    for (Seam seam : holder.seams()) {
      double tir =
          seam instanceof Seam.Clamped clamped
              ? clamped.host().family().tipTirM().median()
              : seam instanceof Seam.Coupled coupled
                  ? coupled.coupling().nativeSeatTirM().median()
                  : 0;
      double ahead = massKg * (1 - seam.atM() / holder.projectionM());
      sum += ahead * tir / 2;
    }
    return sum;
  }

  /** One edge alone is not balanced by another. */
  private static double singlePointKgM(JobContext context, Body body, double massKg) {
    boolean single =
        context.job.operation().kind() == OperationKind.BORING && context.job.tool().teeth() == 1;
    double tool = Math.max(0, massKg - body.massKg());
    return single ? tool * context.models.values().singlePointUnbalanceM : 0;
  }

  /**
   * Coarsest grade of balancing at the asked speed that leaves the unbalance force ample margin
   * beside the seat's share; the finest where even that is not enough. NaN where the margin is
   * ample already, or the assembly is as well balanced as that.
   */
  static double gradeToAskMPerS(JobContext context, Appraisal appraisal) {
    Margin force = appraisal.margin(Pair.UNBALANCE_FORCE);
    if (force == null || force.ratio() >= Pair.UNBALANCE_FORCE.fullRatio()) {
      return Double.NaN;
    }
    double omega = context.job.operation().spindleSpeedRadPerS();
    double mass = appraisal.geometry().massKg();
    double seat =
        SeatEccentricity.ofTir(seatTirM(context, appraisal.assembly().holder()).p95())
            .velocityMPerS(omega);
    double total = context.models.values().balanceGradeCapMPerS / Pair.UNBALANCE_FORCE.fullRatio();
    double left = Math.sqrt(Math.max(0, total * total - seat * seat));
    double asked = context.practice("balanceGradeFineMPerS");
    for (String coarser : List.of("balanceGradeOrdinaryMPerS", "balanceGradeCoarseMPerS")) {
      double grade = context.practice(coarser);
      asked = grade <= left ? grade : asked;
    }
    double has =
        BalanceGrade.reachedMPerS(residualKgM(context, appraisal.body(), mass), mass, omega);
    return has <= asked ? Double.NaN : asked;
  }

  /** Speed at which the unbalance force reaches its cap: ω = G·m/U. */
  static double unbalanceLimitRadPerS(JobContext context, Appraisal appraisal) {
    double mass = appraisal.geometry().massKg();
    Quantiles unbalance = unbalanceKgM(context, appraisal.body(), mass);
    return new BalanceGrade(context.models.values().balanceGradeCapMPerS)
        .angularVelocityRadPerS(unbalance.atStandardScore(context.standardScore), mass);
  }

  private static Quantiles unbalanceKgM(JobContext context, Body body, double massKg) {
    double residual = residualKgM(context, body, massKg);
    Spread seat = seatTirM(context, body.holder());
    double median = unbalanceKgM(residual, massKg, seat.median());
    double upper = unbalanceKgM(residual, massKg, seat.p95());
    return new Quantiles(median * median / upper, median, upper);
  }
}
