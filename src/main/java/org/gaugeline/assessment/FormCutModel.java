package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.CuttingSpeeds;
import org.gaugeline.mechanics.cutting.FormEdge;
import org.gaugeline.mechanics.cutting.FormMilling;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.reference.MillingDirection;
import org.gaugeline.reference.OperationKind;

/** Cutters that leave their own shape: chamfering with a cone, milling an internal thread. */
final class FormCutModel implements CutModel {
  private final Job job;
  private final Values values;
  private final SpecificForce force;
  private final FormMilling asked;

  FormCutModel(Job job, SpecificForce force, Values values) {
    this.job = job;
    this.values = values;
    this.force = force;
    this.asked = loads(job.operation().axialDepthM(), job.operation().feedPerToothM());
  }

  private FormMilling loads(double depthM, double feedPerToothM) {
    return FormMilling.of(
        edge(depthM),
        job.tool().teeth(),
        feedPerToothM,
        force,
        job.workpiece().radialRatio().median(),
        job.operation().direction() == MillingDirection.DOWN);
  }

  private FormEdge edge(double depthM) {
    double diameter = job.tool().diameterM();
    if (job.operation().kind() == OperationKind.THREAD_MILLING) {
      return FormEdge.internalThread(
          diameter, job.feature().nominalSizeM(), job.tool().pitchM(), depthM);
    }
    double height = Math.min(depthM, deepestM());
    double width = height * widthPerHeight();
    double middle =
        Math.max(width, Math.min(values.chamferContactShare * diameter, diameter - width));
    return FormEdge.chamfer(middle, height, width);
  }

  private double widthPerHeight() {
    return job.operation().radialDepthM() / job.operation().axialDepthM();
  }

  /** A chamfer ends where the cone ends in its tip; a thread with the flutes. */
  @Override
  public double deepestM() {
    return job.operation().kind() == OperationKind.CHAMFERING
        ? job.tool().diameterM() / 2 / widthPerHeight()
        : Double.POSITIVE_INFINITY;
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    boolean same =
        axialDepthM == job.operation().axialDepthM()
            && feedPerToothM == job.operation().feedPerToothM();
    FormMilling loads = same ? asked : loads(axialDepthM, feedPerToothM);
    Job.Tool tool = job.tool();
    double tangential = 2 * loads.peakTorqueNm() / tool.diameterM();
    double helix = Math.tan(tool.helixRad()) * tangential;
    double out = (tool.hand() == tool.helixHand() ? helix : -helix) - loads.peakPushN();
    double pull = Math.max(0, out);
    return new CutForces(
        axialDepthM,
        ForceLaw.spread(job, values, loads.meanChipThicknessM()),
        loads.meanTorqueNm(),
        loads.peakTorqueNm(),
        tangential,
        loads.peakLateralForceN(),
        pull,
        Math.max(0, -out),
        Math.hypot(2 * loads.peakTorqueNm() / tool.shankDiameterM(), pull),
        loads.meanFeedForceN(),
        loads.peakWallForceN());
  }

  @Override
  public CutForces once() {
    return at(job.operation().axialDepthM(), job.operation().feedPerToothM());
  }

  @Override
  public double meanChipThicknessM() {
    return asked.meanChipThicknessM();
  }

  @Override
  public double specificForcePa() {
    return force.specificForcePa(meanChipThicknessM());
  }

  @Override
  public double removalRateM3PerS() {
    Job.Operation operation = job.operation();
    return edge(operation.axialDepthM()).sectionM2()
        * CuttingSpeeds.feedRateMPerS(
            operation.feedPerToothM(), job.tool().teeth(), operation.spindleSpeedRadPerS());
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }
}
