package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.CuttingSpeeds;
import org.gaugeline.mechanics.cutting.EndCut;
import org.gaugeline.mechanics.cutting.SpecificForce;

/**
 * Plunge milling: the cutter feeds along its axis into a step, as deep as it likes. Its end edges
 * push it into the holder; the helix lies behind them and does not cut.
 */
final class PlungeCutModel implements CutModel {
  private final Job job;
  private final Values values;
  private final SpecificForce force;
  private final EndCut end;

  PlungeCutModel(Job job, SpecificForce force, Values values) {
    this.job = job;
    this.values = values;
    this.force = force;
    Job.Tool tool = job.tool();
    this.end =
        new EndCut(
            tool.diameterM(),
            tool.teeth(),
            Math.min(job.operation().radialDepthM(), tool.diameterM()));
  }

  /** The force acts at the tip, however deep the plunge: no axial depth goes with it. */
  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    double perWidth = force.forcePerWidthNPerM(feedPerToothM);
    double ratio = job.workpiece().radialRatio().median();
    double peakTorque = end.peakTorqueNm(perWidth);
    return new CutForces(
        0,
        ForceLaw.spread(job, values, feedPerToothM),
        end.meanTorqueNm(perWidth),
        peakTorque,
        2 * peakTorque / job.tool().diameterM(),
        end.peakLateralForceN(perWidth),
        0,
        ratio * end.mostWidthM() * perWidth,
        2 * peakTorque / job.tool().shankDiameterM(),
        ratio * end.meanWidthM() * perWidth,
        end.peakWallForceN(perWidth));
  }

  @Override
  public CutForces once() {
    return at(0, job.operation().feedPerToothM());
  }

  @Override
  public double meanChipThicknessM() {
    return job.operation().feedPerToothM();
  }

  @Override
  public double specificForcePa() {
    return force.specificForcePa(meanChipThicknessM());
  }

  @Override
  public double removalRateM3PerS() {
    Job.Operation operation = job.operation();
    return end.removalRateM3PerS(
        CuttingSpeeds.feedRateMPerS(
            operation.feedPerToothM(), job.tool().teeth(), operation.spindleSpeedRadPerS()));
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }
}
