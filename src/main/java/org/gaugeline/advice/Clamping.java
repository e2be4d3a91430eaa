package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;

/** The steps that get the tool into its holder: how deep, against what, how tight. */
final class Clamping {
  private static final double NONE = Double.NaN;

  private final JobContext context;
  private final Appraisal appraisal;
  private final List<Part> parts;
  private final List<SetUpStep> steps;

  private Clamping(
      JobContext context, Appraisal appraisal, List<Part> parts, List<SetUpStep> steps) {
    this.context = context;
    this.appraisal = appraisal;
    this.parts = parts;
    this.steps = steps;
  }

  static void add(
      JobContext context, Appraisal appraisal, List<Part> parts, List<SetUpStep> steps) {
    new Clamping(context, appraisal, parts, steps).clamp();
  }

  private void clamp() {
    HolderBody holder = appraisal.assembly().holder();
    switch (holder.family().gripModel()) {
      case SHRINK -> {
        markShank();
        add("set-stop-for-stick-out", appraisal.assembly().stickOutM(), Measure.LENGTH);
        add("heat-nose", context.heatingK(appraisal), Measure.TEMPERATURE_RISE);
        add("keep-to-heating-limit");
        locks();
        add("let-cool-guarded");
        checkInsertion();
      }
      case COLLET, FLOATING_COLLET, SQUARE_DRIVE -> {
        markShank();
        if (holder.family().gripModel() == GripModel.SQUARE_DRIVE) {
          add("seat-square");
        }
        add("snap-collet-into-nut");
        stickOut();
        add("tighten-nut", nutTorqueNm(holder), Measure.TORQUE);
        checkInsertion();
      }
      case SIDE_LOCK -> {
        markShank();
        stickOut();
        add("tighten-screw-on-flat");
        checkInsertion();
      }
      case PRESSURE, JAWS -> {
        markShank();
        stickOut();
        add("clamp-as-marked");
        checkInsertion();
      }
      case INCLINED_SIDE_LOCK -> {
        markShank();
        stickOut();
        add("draw-against-stop");
        checkInsertion();
      }
      case ARBOR, DISC_ARBOR -> {
        add("seat-on-arbor");
        add("tighten-arbor-screw", context.arborScrewTorqueNm(appraisal), Measure.TORQUE);
      }
    }
  }

  private void add(String code) {
    add(code, NONE, Measure.COUNT);
  }

  private void add(String code, double value, Measure measure) {
    steps.add(new SetUpStep(code, value, measure));
  }

  private void markShank() {
    double inside = context.job().tool().overallLengthM() - appraisal.assembly().stickOutM();
    if (inside > 0) {
      add("mark-shank", inside, Measure.LENGTH);
    }
  }

  private void stickOut() {
    add("set-stick-out", appraisal.assembly().stickOutM(), Measure.LENGTH);
    locks();
  }

  private void checkInsertion() {
    add("check-insertion", appraisal.assembly().insertionM(), Measure.LENGTH);
  }

  /** What catches the shank besides friction. */
  private void locks() {
    for (Part part : parts) {
      if (part.role() == Role.FORM_LOCK) {
        add("fit-form-lock");
      } else if (part.role() == Role.BACK_STOP_SCREW) {
        add("set-back-stop-screw");
      }
    }
  }

  private static double nutTorqueNm(HolderBody holder) {
    double marked = holder.ratings().nutTorqueNm();
    ColletSize collet = holder.colletSize();
    return Double.isNaN(marked) && collet != null ? collet.nutTorqueNm().median() : marked;
  }
}
