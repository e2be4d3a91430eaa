package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.Tapping;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TappingMode;

/**
 * Tapping: the torque of the thread, more at the reversal or with a jammed chip, and the axial
 * force that the difference between feed and pitch leaves in either direction. The pitch fixes the
 * feed.
 */
final class TappingCutModel implements CutModel {
  private final Job job;
  private final Tapping.TappedThread thread;
  private final Spread spread;
  private final double specificForcePa;
  private final double chipThicknessM;
  private final CutForces forces;

  TappingCutModel(Job job, ReferenceData data) {
    this.job = job;
    Job.Tool tool = job.tool();
    boolean form = tool.tapForm() == TapForm.FORM;
    this.thread = new Tapping.TappedThread(tool.diameterM(), tool.pitchM());
    Spread over = data.practiceRow("tappingForceFactor").value();
    this.specificForcePa = job.workpiece().kc11Pa().median() * over.median();
    Spread forming = form ? data.practiceRow("formTapTorqueFactor").value() : Spread.exact(1);
    Quantiles torque =
        Models.quantiles(job.workpiece().kc11Pa())
            .times(Models.quantiles(over))
            .times(Models.quantiles(forming));
    this.spread = new Spread(torque.p05() / torque.median(), 1, torque.p95() / torque.median());
    this.chipThicknessM =
        Tapping.chipThicknessM(
            thread,
            data.practice(
                job.operation().hole() == HoleEnd.BLIND
                    ? "tapChamferThreadsBlind"
                    : "tapChamferThreadsThrough"),
            tool.teeth());
    this.forces =
        forces(
            forming.median() * Tapping.torqueNm(thread, specificForcePa),
            data.practice("tapJamFactor"),
            axialN(data));
  }

  private double axialN(ReferenceData data) {
    return switch (job.operation().tapping()) {
      case SYNCHRONOUS ->
          data.practice("synchronousErrorM") * data.practice("tapAxialStiffnessNPerM");
      case FLOATING ->
          data.practice("compensationTravelTurns")
              * thread.pitchM()
              * data.practice("compensationSpringNPerM");
    };
  }

  private CutForces forces(double torqueNm, double jamFactor, double axialN) {
    double peak = jamFactor * torqueNm;
    return new CutForces(
        0,
        spread,
        torqueNm,
        peak,
        2 * peak / job.tool().diameterM(),
        0,
        axialN,
        axialN,
        Math.hypot(2 * peak / job.tool().shankDiameterM(), axialN),
        axialN,
        0);
  }

  /** Whether spindle and feed leave a difference that only a sprung holder takes up. */
  static boolean needsCompensation(Job job) {
    return job.operation().tapping() == TappingMode.FLOATING;
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    return forces;
  }

  @Override
  public CutForces once() {
    return forces;
  }

  @Override
  public double meanChipThicknessM() {
    return chipThicknessM;
  }

  @Override
  public double specificForcePa() {
    return specificForcePa;
  }

  /** A form tap takes nothing off. */
  @Override
  public double removalRateM3PerS() {
    return job.tool().tapForm() == TapForm.FORM
        ? 0
        : Tapping.chipAreaM2(thread) * job.operation().cuttingSpeedMPerS();
  }

  @Override
  public double kienzleExponent() {
    return 0;
  }
}
