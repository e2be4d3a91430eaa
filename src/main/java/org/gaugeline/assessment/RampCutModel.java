package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.CuttingSpeeds;
import org.gaugeline.mechanics.cutting.EndCut;
import org.gaugeline.mechanics.cutting.SpecificForce;

/**
 * Ramping, straight or in a helix: at the deepest point of a pass the rim cuts as in side milling
 * with the feed's share across the axis, fz·cos α, and the end edges cut the whole floor under the
 * cutter with its share along it, fz·sin α. Peaks of both are added, as if they met.
 */
final class RampCutModel implements CutModel {
  private final Job job;
  private final SpecificForce force;
  private final MillingCutModel rim;
  private final EndCut floor;
  private final double sine;

  RampCutModel(Job job, SpecificForce force, Values values) {
    this.job = job;
    this.force = force;
    double angle = job.operation().rampAngleRad();
    this.sine = Math.sin(angle);
    this.rim = new MillingCutModel(job, force, values, Math.cos(angle));
    Job.Tool tool = job.tool();
    this.floor =
        new EndCut(
            tool.diameterM(),
            tool.teeth(),
            Math.min(job.operation().radialDepthM(), tool.diameterM()));
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    return both(rim.at(axialDepthM, feedPerToothM), axialDepthM, feedPerToothM);
  }

  @Override
  public CutForces once() {
    double depth = Math.max(job.operation().axialDepthM(), 1e-9);
    return both(rim.once(), depth, job.operation().feedPerToothM());
  }

  private CutForces both(CutForces side, double axialDepthM, double feedPerToothM) {
    double perWidth = force.forcePerWidthNPerM(sine * feedPerToothM);
    double ratio = job.workpiece().radialRatio().median();
    double peakTorque = side.peakTorqueNm() + floor.peakTorqueNm(perWidth);
    double pull = Math.max(0, side.pullN() - ratio * floor.leastWidthM() * perWidth);
    return new CutForces(
        axialDepthM,
        side.spread(),
        side.torqueNm() + floor.meanTorqueNm(perWidth),
        peakTorque,
        2 * peakTorque / job.tool().diameterM(),
        side.peakRadialForceN() + floor.peakLateralForceN(perWidth),
        pull,
        side.pushN() + ratio * floor.mostWidthM() * perWidth,
        Math.hypot(2 * peakTorque / job.tool().shankDiameterM(), pull),
        side.feedForceN(),
        side.wallNormalForceN() + floor.peakWallForceN(perWidth));
  }

  @Override
  public double meanChipThicknessM() {
    return rim.meanChipThicknessM();
  }

  @Override
  public double specificForcePa() {
    return rim.specificForcePa();
  }

  @Override
  public double removalRateM3PerS() {
    Job.Operation operation = job.operation();
    return rim.removalRateM3PerS()
        + floor.removalRateM3PerS(
            sine
                * CuttingSpeeds.feedRateMPerS(
                    operation.feedPerToothM(),
                    job.tool().teeth(),
                    operation.spindleSpeedRadPerS()));
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }
}
