package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.Job;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ProcessCapability;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** What a person must know before acting on a job. */
final class Cautions {
  private Cautions() {}

  /**
   * Of a job and everything that was weighed for it.
   *
   * @param nearest id of the losing assembly for which a change would do; empty where none would
   */
  static List<Caution> ofJob(
      JobContext context, Ranking ranking, @Nullable BreakEven heatUnit, String nearest) {
    Job job = context.job();
    List<Caution> cautions = new ArrayList<>();
    if (UnitSuspicion.of(context)) {
      cautions.add(
          new Caution(
              "unit-suspicion", Severity.WARNING, job.tool().diameterM(), Measure.LENGTH, ""));
    }
    shankRubs(context, cautions);
    if (!job.workpiece().ownConstants()
        && job.operation().kind() != OperationKind.TAPPING
        && context.meanChipThicknessM() < context.practice("calibratedFromM")) {
      cautions.add(
          new Caution(
              "thin-chip-extrapolation",
              Severity.NOTE,
              context.meanChipThicknessM(),
              Measure.LENGTH,
              ""));
    }
    ofOperation(context, cautions);
    if (job.tool().kind() == ToolKind.BALL_END_MILL && job.feature().tiltRad() != 0) {
      double cuts = context.tiltedBallDiameterM();
      cautions.add(new Caution("tilted-ball-cuts-at", Severity.NOTE, cuts, Measure.LENGTH, ""));
    }
    capability(context, cautions);
    HoleCautions.ofJob(context, cautions);
    if (ranking.shown().isEmpty()) {
      cautions.add(
          new Caution(
              Recommendation.NOTHING_SUITABLE,
              Severity.WARNING,
              Double.NaN,
              Measure.COUNT,
              nearest));
    }
    if (heatUnit != null) {
      cautions.add(
          new Caution(
              "heat-unit-pays-back",
              Severity.NOTE,
              heatUnit.months(),
              Measure.COUNT,
              heatUnit.against()));
    }
    cautions.add(
        new Caution("markings-and-manuals-first", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    return List.copyOf(cautions);
  }

  /** What the trade watches in this operation whatever holds the cutter. */
  private static void ofOperation(JobContext context, List<Caution> cautions) {
    Job job = context.job();
    double ramp = job.operation().rampAngleRad();
    if (ramp > context.practice("steepRampAngleRad")) {
      cautions.add(new Caution("steep-ramp", Severity.WARNING, ramp, Measure.ANGLE, ""));
    }
    if (job.operation().kind() == OperationKind.THREAD_MILLING) {
      cautions.add(new Caution("thread-gauge", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
      cautions.add(
          new Caution("internal-thread-assumed", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
    if (job.tool().kind() == ToolKind.DISC_CUTTER) {
      cautions.add(new Caution("disc-on-spacers", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
  }

  /** A shank as thick as the cutter touches a straight wall; a thicker one is told by its gap. */
  private static void shankRubs(JobContext context, List<Caution> cautions) {
    Job job = context.job();
    double relieved = Math.max(job.tool().fluteLengthM(), job.tool().neckLengthM());
    boolean wall = job.feature().wallDraftRad() < context.practice("straightWallDraftRad");
    double thicker = job.tool().shankDiameterM() - job.tool().diameterM();
    boolean touches = Math.abs(thicker) <= context.touchM() && job.feature().tiltRad() == 0;
    if (wall && touches && job.feature().depthM() > relieved) {
      cautions.add(new Caution("shank-rubs-wall", Severity.WARNING, relieved, Measure.LENGTH, ""));
    }
  }

  private static void capability(JobContext context, List<Caution> cautions) {
    Job job = context.job();
    ProcessCapability capability = context.capability();
    if (capability == null) {
      return;
    }
    double band = job.feature().toleranceBandM();
    double best = context.bestBandM();
    if (band < best) {
      cautions.add(
          new Caution(
              "tolerance-finer-than-process",
              Severity.WARNING,
              best,
              Measure.SMALL_LENGTH,
              job.operation().kind().id()));
    }
    if (job.feature().raM() < capability.minRaM()) {
      cautions.add(
          new Caution(
              "roughness-finer-than-process",
              Severity.WARNING,
              capability.minRaM(),
              Measure.ROUGHNESS,
              job.operation().kind().id()));
    }
  }
}
