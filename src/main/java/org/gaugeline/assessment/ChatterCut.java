package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.ProcessDamping;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * A milling cut as stability sees it.
 *
 * <p>What matters is how much more force a thicker chip takes, so that K_t is the slope d(kc·h)/dh
 * of the force law at the mean chip thickness (Kienzle: (1 − mc)·kc), without the part that rubs
 * whatever the chip. Below the thickness from which the constants were measured the slope there is
 * taken: what a fitted power adds beyond is rubbing at the edge, and a law with edge forces is
 * straight (Altintas, Manufacturing Automation, 2nd ed. (2012); memory). K_r is the material's
 * ratio of radial to tangential force, of which only the share across the axis counts: times the
 * mean sine of the edge's lead angle. What the caller measured replaces both.
 *
 * <p>Flanks rub on the waves they leave and damp: as strongly as the chip drives at a wave of the
 * customary length, ℓ = wave/2π.
 *
 * @param undamped teeth, coefficients and arc of contact
 * @param immersion radial depth over diameter
 * @param ktOverMedian spread of K_t over its median
 * @param ktSourceKey source of K_t
 * @param rubbingLengthM spread of ℓ
 * @param radiusM cutting radius
 */
record ChatterCut(
    MillingProcess undamped,
    double immersion,
    Quantiles ktOverMedian,
    String ktSourceKey,
    Quantiles rubbingLengthM,
    double radiusM) {
  private static final double SLOPE_STEP = 1e-3;

  /** Whether the regenerative depth limit of milling applies to a kind of operation. */
  static boolean applies(OperationKind kind) {
    return switch (kind) {
      case SIDE_MILLING, SLOTTING, FACE_MILLING, HIGH_EFFICIENCY_MILLING, PROFILING, RAMPING ->
          true;
      case DRILLING, REAMING, BORING, TAPPING, PLUNGE_MILLING, CHAMFERING, THREAD_MILLING -> false;
    };
  }

  /** The cut of a job; null where no such limit applies. */
  static @Nullable ChatterCut of(JobContext context) {
    Job job = context.job;
    if (!applies(job.operation().kind())) {
      return null;
    }
    MillingEngagement engagement = MillingCutModel.engagement(job);
    double given = job.workpiece().ktPa();
    boolean measured = !Double.isNaN(given);
    double kt = measured ? given : slopePa(context);
    double kr =
        Double.isNaN(job.workpiece().krRatio())
            ? job.workpiece().radialRatio().median()
            : job.workpiece().krRatio();
    Spread spread = ForceLaw.spread(job, context.models.values(), context.cut.meanChipThicknessM());
    return new ChatterCut(
        new MillingProcess(job.tool().teeth(), kt, kr * acrossAxis(job.tool()), engagement),
        Math.min(1, job.operation().radialDepthM() / job.tool().diameterM()),
        measured ? Quantiles.exact(1) : Models.quantiles(spread),
        measured ? "given" : job.workpiece().sourceKey(),
        Models.quantiles(context.models.data().practiceRow("processDampingWaveM").value())
            .scale(1 / (2 * Math.PI)),
        job.tool().diameterM() / 2);
  }

  /** The cut with flanks that damp at the median. */
  MillingProcess process() {
    return process(0);
  }

  /**
   * The cut with flanks that damp as drawn.
   *
   * @param rubbing standard normal score of how much
   */
  MillingProcess process(double rubbing) {
    return undamped.with(new ProcessDamping(rubbingLengthM.atStandardScore(rubbing), radiusM));
  }

  private static double slopePa(JobContext context) {
    SpecificForce force = ForceLaw.specificForce(context.job, context.models.data(), 1);
    double h = Math.max(context.cut.meanChipThicknessM(), context.models.values().calibratedFromM);
    double step = SLOPE_STEP * h;
    return (force.forcePerWidthNPerM(h + step) - force.forcePerWidthNPerM(h - step)) / (2 * step);
  }

  /**
   * Mean sine of the edge's lead angle: sin κ of a straight edge, π/4 over a quarter of a ball, 1
   * where only a corner is rounded. Taken the same for every depth, so that a limit on depth does
   * not move with it.
   */
  private static double acrossAxis(Job.Tool tool) {
    return tool.kind() == ToolKind.BALL_END_MILL ? Math.PI / 4 : Math.sin(tool.leadAngleRad());
  }

  /** Immersion below which the zeroth-order solution is not trusted. */
  boolean isLow(JobContext context) {
    return immersion < context.practice("zerothOrderLeastImmersion");
  }
}
