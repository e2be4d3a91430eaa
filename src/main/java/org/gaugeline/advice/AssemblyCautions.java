package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Margin;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.Job;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Substrate;

/** What a person must know before acting on one assembly. */
final class AssemblyCautions {
  private static final List<Pair> HOLDING =
      List.of(Pair.SLIP, Pair.PULL_OUT, Pair.STOP_TORQUE, Pair.INSERTION);
  private static final double AT_THE_FACE_M = 1e-6;

  private AssemblyCautions() {}

  static List<Caution> of(JobContext context, Appraisal appraisal) {
    Job job = context.job();
    GripModel model = appraisal.assembly().holder().family().gripModel();
    List<Caution> cautions = new ArrayList<>();
    if (model == GripModel.SHRINK) {
      cautions.add(new Caution("hot-holder", Severity.WARNING, Double.NaN, Measure.COUNT, ""));
      if (job.tool().substrate() == Substrate.HSS) {
        cautions.add(new Caution("hss-in-shrink", Severity.WARNING, Double.NaN, Measure.COUNT, ""));
      }
    }
    if (model == GripModel.PRESSURE || model.usesCollet()) {
      cautions.add(
          new Caution("never-tighten-empty", Severity.WARNING, Double.NaN, Measure.COUNT, ""));
    }
    boolean taps = job.operation().kind() == OperationKind.TAPPING;
    if (appraisal.margin(Pair.PULL_OUT) == null && !taps && context.pullN() > 0) {
      cautions.add(
          new Caution("pull-out-possible", Severity.NOTE, context.pullN(), Measure.FORCE, ""));
    }
    hold(context, appraisal, cautions);
    markedSpeed(context, appraisal, cautions);
    faceContact(context, appraisal, cautions);
    stack(appraisal, cautions);
    idleTooth(context, appraisal, cautions);
    double uneven = context.unevenToothFactor(appraisal);
    if (uneven > context.practice("unevenToothNoteRatio")) {
      cautions.add(new Caution("uneven-tooth-load", Severity.NOTE, uneven, Measure.RATIO, ""));
    }
    double seat = context.seatGradeMPerS(appraisal);
    if (seat > context.practice("balanceGradeFineMPerS")) {
      cautions.add(
          new Caution("grade-not-attainable", Severity.NOTE, seat, Measure.BALANCE_GRADE, ""));
    }
    double sides = context.predicted(appraisal).sideRunoutP95M();
    if (!Double.isNaN(sides)) {
      cautions.add(
          new Caution("disc-runs-out-sideways", Severity.NOTE, sides, Measure.SMALL_LENGTH, ""));
    }
    HoleCautions.ofAssembly(context, appraisal, cautions);
    Margin stable = appraisal.margin(Pair.STABLE_DEPTH);
    if (stable != null && stable.ratio() < 1) {
      cautions.add(
          new Caution("may-chatter", Severity.NOTE, stable.capacity(), Measure.LENGTH, ""));
    }
    double slender = appraisal.assembly().stickOutM() / job.tool().diameterM();
    boolean bores = job.operation().kind() == OperationKind.BORING;
    if (!bores && slender > context.practice("longOverhangRatio")) {
      cautions.add(new Caution("long-overhang", Severity.WARNING, slender, Measure.RATIO, ""));
    }
    return List.copyOf(cautions);
  }

  /** A cutter that is not held for sure, and one that invites clamping where it is not round. */
  private static void hold(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    for (Pair pair : HOLDING) {
      Margin margin = appraisal.margin(pair);
      if (margin != null && margin.ratio() < 1) {
        cautions.add(new Caution("can-be-thrown", Severity.WARNING, Double.NaN, Measure.COUNT, ""));
        break;
      }
    }
    Job.Tool tool = context.job().tool();
    double relieved = Math.max(tool.fluteLengthM(), tool.neckLengthM());
    double plain = tool.overallLengthM() - relieved;
    if (!tool.bored() && appraisal.assembly().stickOutM() - relieved < AT_THE_FACE_M && plain > 0) {
      cautions.add(
          new Caution("never-clamp-on-flutes", Severity.WARNING, plain, Measure.LENGTH, ""));
    }
  }

  /** The asked speed against what is marked on holder, host of an extension and cutter. */
  private static void markedSpeed(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    HolderBody holder = appraisal.assembly().holder();
    double marked = context.job().tool().maxSpindleSpeedRadPerS();
    marked = lower(marked, holder.ratings().maxSpeedRadPerS());
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped) {
        marked = lower(marked, clamped.host().ratings().maxSpeedRadPerS());
      }
    }
    double asked = context.job().operation().spindleSpeedRadPerS();
    if (asked > context.practice("markingNearShare") * marked) {
      cautions.add(
          new Caution("near-marked-speed", Severity.WARNING, marked, Measure.SPINDLE_SPEED, ""));
    }
  }

  private static double lower(double known, double marked) {
    return Double.isNaN(marked) ? known : Math.min(known, marked);
  }

  /** A steep taper holder and a spindle that do not both have the face. */
  private static void faceContact(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    HolderBody holder = appraisal.assembly().holder();
    boolean spindle = context.job().machine().faceContact();
    boolean steep = holder.spindleInterface().kind() == InterfaceKind.STEEP_TAPER;
    if (steep && holder.faceContact() && !spindle) {
      cautions.add(
          new Caution("face-contact-unused", Severity.WARNING, Double.NaN, Measure.COUNT, ""));
    } else if (steep && spindle && !holder.faceContact()) {
      cautions.add(
          new Caution("face-contact-missing", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
  }

  private static void stack(Appraisal appraisal, List<Caution> cautions) {
    HolderBody holder = appraisal.assembly().holder();
    if (!holder.seams().isEmpty()) {
      cautions.add(
          new Caution("joints-add-up", Severity.NOTE, holder.seams().size(), Measure.COUNT, ""));
    }
    if (holder.damper() != null) {
      cautions.add(
          new Caution("damper-needs-tuning", Severity.NOTE, Double.NaN, Measure.COUNT, ""));
    }
  }

  private static void idleTooth(JobContext context, Appraisal appraisal, List<Caution> cautions) {
    Margin runout = appraisal.margin(Pair.RUNOUT);
    if (runout != null && context.leavesToothIdle(runout.demand())) {
      cautions.add(
          new Caution(
              "tooth-does-not-cut", Severity.WARNING, runout.demand(), Measure.SMALL_LENGTH, ""));
    }
  }
}
