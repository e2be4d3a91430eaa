package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.ForceCorrections;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.mechanics.cutting.ThinChipRoute;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Spread;

/**
 * Chooses the force law of a job: the caller's constants as they are, or the table's, corrected.
 */
final class ForceLaw {
  private ForceLaw() {}

  static CutModel cutModel(Job job, Models models) {
    return cutModel(job, models, 1);
  }

  /** The cut with the correction of the table's specific force another number of times as large. */
  static CutModel cutModel(Job job, Models models, double factor) {
    ReferenceData data = models.data();
    SpecificForce force = specificForce(job, data, factor);
    return switch (job.operation().kind()) {
      case DRILLING, REAMING -> new HoleCutModel(job, force, models.values(), data);
      case SIDE_MILLING, SLOTTING, FACE_MILLING, HIGH_EFFICIENCY_MILLING, PROFILING ->
          new MillingCutModel(job, force, models.values());
      case TAPPING -> new TappingCutModel(job, data);
      case BORING -> new BoringCutModel(job, force, models.values(), data);
      case PLUNGE_MILLING -> new PlungeCutModel(job, force, models.values());
      case RAMPING -> new RampCutModel(job, force, models.values());
      case CHAMFERING, THREAD_MILLING -> new FormCutModel(job, force, models.values());
    };
  }

  /**
   * Percentiles of the cutting force over its median: the material's scatter, widened for chips
   * thinner than those it was measured with, fully from half that thickness down.
   */
  static Spread spread(Job job, Values values, double chipThicknessM) {
    Spread kc = job.workpiece().kc11Pa();
    double thin = 1;
    if (!job.workpiece().ownConstants() && chipThicknessM < values.calibratedFromM) {
      double octaves = Math.log(values.calibratedFromM / chipThicknessM) / Math.log(2);
      thin = Math.pow(values.thinChipSpreadFactor, Math.min(1, octaves));
    }
    return new Spread(
        Math.min(kc.p05() / kc.median(), 1 / thin), 1, Math.max(kc.p95() / kc.median(), thin));
  }

  static SpecificForce specificForce(Job job, ReferenceData data, double factor) {
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
        factor
            * compression(job.operation().kind(), data)
            * ForceCorrections.speed(job.operation().cuttingSpeedMPerS()),
        calibratedFrom,
        route);
  }

  private static double compression(OperationKind kind, ReferenceData data) {
    return switch (kind) {
      case DRILLING, REAMING, TAPPING -> data.practice("compressionFactorDrilling");
      case BORING -> data.practice("compressionFactorBoring");
      case SIDE_MILLING,
          SLOTTING,
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
