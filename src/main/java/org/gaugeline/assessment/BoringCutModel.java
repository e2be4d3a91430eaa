package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.Boring;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.reference.ReferenceData;

/**
 * Boring: the edge's cutting force turns and bends, its radial force pushes it off the wall, its
 * feed force pushes the bar into the holder.
 */
final class BoringCutModel implements CutModel {
  private final Job job;
  private final SpecificForce force;
  private final Values values;
  private final double radialShare;
  private final double feedShare;
  private final Boring.BoringLoads asked;

  BoringCutModel(Job job, SpecificForce force, Values values, ReferenceData data) {
    this.job = job;
    this.force = force;
    this.values = values;
    this.radialShare = data.practice("boringRadialForceShare");
    this.feedShare = data.practice("boringFeedForceShare");
    this.asked = loads(job.operation().feedPerToothM());
  }

  private Boring.BoringLoads loads(double feedPerToothM) {
    Job.Tool tool = job.tool();
    return Boring.loads(
        new Boring.Bore(
            tool.diameterM(),
            job.operation().preDrilledDiameterM(),
            feedPerToothM * tool.teeth(),
            tool.teeth(),
            tool.leadAngleRad()),
        force,
        radialShare,
        feedShare);
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    Boring.BoringLoads loads =
        feedPerToothM == job.operation().feedPerToothM() ? asked : loads(feedPerToothM);
    boolean single = job.tool().teeth() == 1;
    double lateral = single ? Math.hypot(loads.cuttingForceN(), loads.radialForceN()) : 0;
    return new CutForces(
        axialDepthM,
        ForceLaw.spread(job, values, loads.chipThicknessM()),
        loads.torqueNm(),
        loads.torqueNm(),
        loads.cuttingForceN(),
        lateral,
        0,
        loads.feedForceN(),
        2 * loads.torqueNm() / job.tool().shankDiameterM(),
        loads.feedForceN(),
        loads.radialForceN());
  }

  @Override
  public CutForces once() {
    return at(job.operation().axialDepthM(), job.operation().feedPerToothM());
  }

  @Override
  public double meanChipThicknessM() {
    return asked.chipThicknessM();
  }

  @Override
  public double specificForcePa() {
    return asked.specificForcePa();
  }

  @Override
  public double removalRateM3PerS() {
    return asked.cuttingForceN() / asked.specificForcePa() * job.operation().cuttingSpeedMPerS();
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }
}
