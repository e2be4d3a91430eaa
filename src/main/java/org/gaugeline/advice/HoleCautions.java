package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Margin;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.Job;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapForm;

/** What a person must know before tapping, boring, or letting a tool follow its hole. */
final class HoleCautions {
  private HoleCautions() {}

  /** Of a tap in its hole and material. */
  static void ofJob(JobContext context, List<Caution> cautions) {
    Job job = context.job();
    if (job.operation().kind() != OperationKind.TAPPING) {
      return;
    }
    boolean form = job.tool().tapForm() == TapForm.FORM;
    IsoGroup group = job.workpiece().isoGroup();
    if (form && (group == IsoGroup.K || group == IsoGroup.H)) {
      cautions.add(
          new Caution(
              "form-tap-brittle",
              Severity.WARNING,
              Double.NaN,
              Measure.COUNT,
              job.workpiece().name()));
    }
    if (!form && job.operation().hole() == HoleEnd.BLIND) {
      double chamfer = context.practice("tapChamferThreadsBlind") * job.tool().pitchM();
      cautions.add(new Caution("blind-hole-chips", Severity.WARNING, chamfer, Measure.LENGTH, ""));
    }
  }

  /** Of a holder that gives way, and of a bar. */
  static void ofAssembly(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    GripModel model = appraisal.assembly().holder().family().gripModel();
    if (model.givesWay()) {
      cautions.add(new Caution("float-takes-runout", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
    if (model == GripModel.FLOATING_COLLET) {
      cautions.add(new Caution("float-follows-bore", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
    if (context.job().operation().kind() == OperationKind.BORING) {
      bar(context, appraisal, cautions);
    }
  }

  /** What a bar usually bears before it sings, and the edge that nothing balances. */
  private static void bar(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    Job job = context.job();
    double slender = appraisal.assembly().stickOutM() / job.tool().shankDiameterM();
    if (slender > context.practice(barPractice(job.tool().substrate()))) {
      cautions.add(
          new Caution(
              "long-bar",
              Severity.WARNING,
              slender,
              Measure.RATIO,
              job.tool().substrate().id().replace('-', ' ')));
    }
    Margin unbalance = appraisal.margin(Pair.UNBALANCE_FORCE);
    if (job.tool().teeth() == 1 && unbalance != null && unbalance.score() < 100) {
      cautions.add(
          new Caution(
              "single-point-unbalance",
              Severity.NOTE,
              job.operation().spindleSpeedRadPerS(),
              Measure.SPINDLE_SPEED,
              ""));
    }
  }

  private static String barPractice(Substrate substrate) {
    return switch (substrate) {
      case STEEL, HSS -> "boringOverhangSteelRatio";
      case HEAVY_METAL -> "boringOverhangHeavyMetalRatio";
      case CARBIDE, CERMET -> "boringOverhangCarbideRatio";
    };
  }
}
