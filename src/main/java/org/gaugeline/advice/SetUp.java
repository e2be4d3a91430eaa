package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Margin;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Job;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Stage;

/** How to put the assembly together, in the order of doing. */
final class SetUp {
  private static final double NONE = Double.NaN;

  private SetUp() {}

  static List<SetUpStep> steps(JobContext context, Appraisal appraisal) {
    HolderBody holder = appraisal.assembly().holder();
    List<SetUpStep> steps = new ArrayList<>();
    steps.add(new SetUpStep("clean-taper-and-bore", NONE, Measure.COUNT));
    stack(context, appraisal, steps);
    clamp(context, appraisal, holder, steps);
    if (!context.job().tool().bored()) {
      steps.add(new SetUpStep("set-stick-out", appraisal.assembly().stickOutM(), Measure.LENGTH));
      steps.add(
          new SetUpStep("check-insertion", appraisal.assembly().insertionM(), Measure.LENGTH));
    }
    Margin runout = appraisal.margin(Pair.RUNOUT);
    if (holder.family().gripModel().givesWay()) {
      steps.add(new SetUpStep("check-float", NONE, Measure.COUNT));
    } else if (runout != null) {
      steps.add(new SetUpStep("measure-runout-at-tip", runout.capacity(), Measure.SMALL_LENGTH));
    }
    if (isSetByTrial(context.job())) {
      steps.add(new SetUpStep("set-edge-by-trial-bore", NONE, Measure.COUNT));
    }
    if (!context.job().shop().presetter()) {
      steps.add(new SetUpStep("measure-length-on-machine", NONE, Measure.COUNT));
    } else {
      steps.add(
          new SetUpStep(
              "preset-gauge-length", appraisal.assembly().gaugeLengthM(), Measure.LENGTH));
    }
    return List.copyOf(steps);
  }

  /** What is put together before the tool goes in, spindle first. */
  private static void stack(JobContext context, Appraisal appraisal, List<SetUpStep> steps) {
    for (Part part : Components.of(context, appraisal)) {
      switch (part.role()) {
        case RETENTION_KNOB ->
            steps.add(new SetUpStep("check-retention-knob", NONE, Measure.COUNT));
        case COOLANT_TUBE -> steps.add(new SetUpStep("check-coolant-tube", NONE, Measure.COUNT));
        case ADAPTER, DAMPED_BODY ->
            steps.add(new SetUpStep("couple-head-to-adapter", NONE, Measure.COUNT));
        case EXTENSION ->
            steps.add(
                new SetUpStep("clamp-extension", extensionInsertionM(appraisal), Measure.LENGTH));
        case SLEEVE -> steps.add(new SetUpStep("fit-sleeve", part.boreM(), Measure.LENGTH));
        case COOLANT_COLLET -> steps.add(new SetUpStep("fit-sealed-collet", NONE, Measure.COUNT));
        case FORM_LOCK -> steps.add(new SetUpStep("fit-form-lock", NONE, Measure.COUNT));
        case BACK_STOP_SCREW ->
            steps.add(new SetUpStep("set-back-stop-screw", NONE, Measure.COUNT));
        case HOLDER, ARBOR, COLLET -> {
          // put together by the steps that follow
        }
      }
    }
  }

  private static double extensionInsertionM(Appraisal appraisal) {
    for (Seam seam : appraisal.assembly().holder().seams()) {
      if (seam instanceof Seam.Clamped clamped) {
        return clamped.insertionM();
      }
    }
    return NONE;
  }

  private static boolean isSetByTrial(Job job) {
    return job.operation().kind() == OperationKind.BORING
        && job.operation().stage() == Stage.FINISHING
        && job.tool().teeth() == 1;
  }

  private static void clamp(
      JobContext context, Appraisal appraisal, HolderBody holder, List<SetUpStep> steps) {
    switch (holder.family().gripModel()) {
      case SHRINK -> {
        steps.add(
            new SetUpStep("heat-nose", context.heatingK(appraisal), Measure.TEMPERATURE_RISE));
        steps.add(new SetUpStep("let-cool-guarded", NONE, Measure.COUNT));
      }
      case COLLET, FLOATING_COLLET, SQUARE_DRIVE -> {
        if (holder.family().gripModel() == GripModel.SQUARE_DRIVE) {
          steps.add(new SetUpStep("seat-square", NONE, Measure.COUNT));
        }
        ColletSize collet = holder.colletSize();
        double torque =
            !Double.isNaN(holder.ratings().nutTorqueNm())
                ? holder.ratings().nutTorqueNm()
                : collet == null ? NONE : collet.nutTorqueNm().median();
        steps.add(new SetUpStep("snap-collet-into-nut", NONE, Measure.COUNT));
        steps.add(new SetUpStep("tighten-nut", torque, Measure.TORQUE));
      }
      case SIDE_LOCK -> steps.add(new SetUpStep("tighten-screw-on-flat", NONE, Measure.COUNT));
      case PRESSURE, JAWS -> steps.add(new SetUpStep("clamp-as-marked", NONE, Measure.COUNT));
      case INCLINED_SIDE_LOCK -> steps.add(new SetUpStep("draw-against-stop", NONE, Measure.COUNT));
      case ARBOR, DISC_ARBOR -> {
        steps.add(new SetUpStep("seat-on-arbor", NONE, Measure.COUNT));
        steps.add(
            new SetUpStep(
                "tighten-arbor-screw", context.arborScrewTorqueNm(appraisal), Measure.TORQUE));
      }
    }
  }
}
