package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Margin;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Stage;

/** How to put the assembly together, in the order of doing, from the bench to the first part. */
final class SetUp {
  private static final double NONE = Double.NaN;

  /** A label names a speed in hundreds, rounded down. */
  private static final double LABEL_STEP_RPM = 100;

  private static final double ROUNDING_RPM = 1e-6;

  private final JobContext context;
  private final Appraisal appraisal;
  private final List<Part> parts;
  private final List<SetUpStep> steps = new ArrayList<>();

  private SetUp(JobContext context, Appraisal appraisal, List<Part> parts) {
    this.context = context;
    this.appraisal = appraisal;
    this.parts = parts;
  }

  /**
   * The steps for an assembly.
   *
   * @param parts its components, as {@link Components} tells them
   */
  static List<SetUpStep> steps(
      JobContext context, Appraisal appraisal, List<Part> parts, Limits limits) {
    SetUp setUp = new SetUp(context, appraisal, parts);
    setUp.add("lay-out-parts", setUp.parts.size(), Measure.COUNT);
    setUp.add("clean-taper-and-bore");
    setUp.stack();
    Clamping.add(context, appraisal, setUp.parts, setUp.steps);
    setUp.balance();
    setUp.runout();
    if (isSetByTrial(context.job())) {
      setUp.add("set-edge-by-trial-bore");
    }
    setUp.length();
    setUp.coolant();
    setUp.label(limits);
    setUp.add(
        context.job().tool().bored() ? "check-arbor-after-first-part" : "check-after-first-part");
    return List.copyOf(setUp.steps);
  }

  private void add(String code) {
    add(code, NONE, Measure.COUNT);
  }

  private void add(String code, double value, Measure measure) {
    steps.add(new SetUpStep(code, value, measure));
  }

  /** What is put together before the tool goes in, spindle first. */
  private void stack() {
    for (Part part : parts) {
      switch (part.role()) {
        case RETENTION_KNOB -> add("check-retention-knob");
        case COOLANT_TUBE -> add("check-coolant-tube");
        case ADAPTER, DAMPED_BODY -> add("couple-head-to-adapter");
        case EXTENSION -> add("clamp-extension", extensionInsertionM(), Measure.LENGTH);
        case SLEEVE -> add("fit-sleeve", part.boreM(), Measure.LENGTH);
        case COOLANT_COLLET -> add("fit-sealed-collet");
        case HOLDER, ARBOR, COLLET, FORM_LOCK, BACK_STOP_SCREW -> {
          // put together with the tool
        }
      }
    }
  }

  private double extensionInsertionM() {
    HolderBody holder = appraisal.assembly().holder();
    for (Seam seam : holder.seams()) {
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

  private void balance() {
    double grade = context.balanceGradeToAskMPerS(appraisal);
    if (!Double.isNaN(grade)) {
      add("balance-assembly", grade, Measure.BALANCE_GRADE);
    }
  }

  private void runout() {
    Margin runout = appraisal.margin(Pair.RUNOUT);
    if (appraisal.assembly().holder().family().gripModel().givesWay()) {
      add("check-float");
    } else if (runout != null) {
      add("measure-runout-at-tip", runout.capacity(), Measure.SMALL_LENGTH);
      add("compare-runout", runout.demand(), Measure.SMALL_LENGTH);
    }
  }

  private void length() {
    if (context.job().shop().presetter()) {
      add("preset-gauge-length", appraisal.assembly().gaugeLengthM(), Measure.LENGTH);
    } else {
      add("measure-length-on-machine");
    }
  }

  private void coolant() {
    switch (context.job().operation().coolant()) {
      case THROUGH_TOOL ->
          add("check-coolant-flow", context.job().machine().coolantPressurePa(), Measure.PRESSURE);
      case FLOOD, MIST, MINIMUM_QUANTITY, AIR -> add("aim-coolant");
      case DRY -> add("keep-chips-clear");
    }
  }

  private void label(Limits limits) {
    double rpm = UnitSuffix.RPM.fromSi(limits.spindleSpeedRadPerS().value());
    double floored = Math.floor(rpm / LABEL_STEP_RPM + ROUNDING_RPM) * LABEL_STEP_RPM;
    boolean says = Double.isFinite(floored) && floored > 0;
    add("write-tool-label", says ? UnitSuffix.RPM.toSi(floored) : NONE, Measure.SPINDLE_SPEED);
  }
}
