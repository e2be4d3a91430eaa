package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.ForceCorrections;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.mechanics.cutting.ThinChipRoute;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;

/**
 * Chooses the force law of a job: the caller's constants as they are, or the table's, corrected.
 */
final class ForceLaw {
  private ForceLaw() {}

  static CutModel cutModel(Job job, ReferenceData data) {
    SpecificForce force = specificForce(job, data);
    return switch (job.operation().kind()) {
      case DRILLING, REAMING -> new HoleCutModel(job, force, data);
      case SIDE_MILLING, SLOTTING, FACE_MILLING, HIGH_EFFICIENCY_MILLING, PROFILING ->
          new MillingCutModel(job, force);
      case PLUNGE_MILLING, RAMPING, CHAMFERING, BORING, TAPPING, THREAD_MILLING ->
          throw new IllegalArgumentException("no cutting model for " + job.operation().kind().id());
    };
  }

  /** Whether this version has a cutting model for the operation. */
  static boolean covers(OperationKind kind) {
    return switch (kind) {
      case DRILLING,
          REAMING,
          SIDE_MILLING,
          SLOTTING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING ->
          true;
      case PLUNGE_MILLING, RAMPING, CHAMFERING, BORING, TAPPING, THREAD_MILLING -> false;
    };
  }

  private static SpecificForce specificForce(Job job, ReferenceData data) {
    Job.Workpiece workpiece = job.workpiece();
    double calibratedFrom = data.practice("calibratedFromM");
    if (workpiece.ownConstants()) {
      return new SpecificForce(
          workpiece.kc11Pa().median(),
          workpiece.mc(),
          1,
          calibratedFrom,
          new ThinChipRoute.PowerLaw());
    }
    double exponent = data.practice("thinChipExponent");
    ThinChipRoute route =
        Double.isNaN(workpiece.handbookPowerPa())
            ? new ThinChipRoute.Anchored(exponent)
            : new ThinChipRoute.Handbook(
                workpiece.handbookPowerPa(), exponent, data.practice("millingPowerToolFactor"));
    return new SpecificForce(
        workpiece.kc11Pa().median(),
        workpiece.mc(),
        compression(job.operation().kind(), data)
            * ForceCorrections.speed(job.operation().cuttingSpeedMPerS()),
        calibratedFrom,
        route);
  }

  private static double compression(OperationKind kind, ReferenceData data) {
    return switch (kind) {
      case SLOTTING -> data.practice("compressionFactorSlotting");
      case DRILLING, REAMING, TAPPING -> data.practice("compressionFactorDrilling");
      case BORING -> data.practice("compressionFactorBoring");
      case SIDE_MILLING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING,
          PLUNGE_MILLING,
          RAMPING,
          CHAMFERING,
          THREAD_MILLING ->
          data.practice("compressionFactorMilling");
    };
  }
}
