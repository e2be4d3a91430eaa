package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.DrillPoint;
import org.gaugeline.mechanics.cutting.DrilledHole;
import org.gaugeline.mechanics.cutting.Drilling;
import org.gaugeline.mechanics.cutting.HoleLoads;
import org.gaugeline.mechanics.cutting.Reaming;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;

/**
 * Drilling and reaming: torque and thrust. The lips balance each other, so a side force comes only
 * from their inequality, taken as a share of the tangential force.
 */
final class HoleCutModel implements CutModel {
  /** Lips and margins centre the tool in its own hole: no wall pushes it off. */
  private static final double GUIDED_BY_THE_HOLE = 0;

  private final Job job;
  private final Values values;
  private final SpecificForce force;
  private final ReferenceData data;
  private final HoleLoads asked;

  HoleCutModel(Job job, SpecificForce force, Values values, ReferenceData data) {
    this.values = values;
    this.job = job;
    this.force = force;
    this.data = data;
    this.asked = loads(job.operation().feedPerToothM());
  }

  private HoleLoads loads(double feedPerToothM) {
    Job.Tool tool = job.tool();
    double feedPerRev = feedPerToothM * tool.teeth();
    double bored = job.operation().preDrilledDiameterM();
    if (job.operation().kind() == OperationKind.REAMING) {
      return Reaming.loads(
          new Reaming.ReamedHole(
              tool.diameterM(), bored, feedPerRev, tool.teeth(), values.reamerLeadAngleRad),
          force,
          values.reamerMarginFrictionFactor - 1);
    }
    DrilledHole hole =
        new DrilledHole(tool.diameterM(), bored, feedPerRev, tool.pointAngleRad(), tool.teeth());
    Material material = job.workpiece().material();
    if (material == null
        || Double.isNaN(material.drillConstant())
        || job.workpiece().ownConstants()) {
      return Drilling.kienzle(hole, force);
    }
    return Drilling.kienzleWithChisel(
        hole,
        force,
        new DrillPoint(
            material.drillConstant(),
            data.practice("drillPointTorqueFactor"),
            data.practice("drillPointThrustFactor"),
            data.practice("drillPointChiselFactor"),
            data.practice("drillPointChiselRatio"),
            data.practice("drillPointWearFactor")));
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    HoleLoads loads =
        feedPerToothM == job.operation().feedPerToothM() ? asked : loads(feedPerToothM);
    double tangential = 2 * loads.torqueNm() / job.tool().diameterM();
    double side = tangential * values.holeSideForceShare;
    return new CutForces(
        0,
        ForceLaw.spread(job, values, loads.chipThicknessM()),
        loads.torqueNm(),
        loads.torqueNm(),
        tangential,
        side,
        0,
        loads.thrustN(),
        2 * loads.torqueNm() / job.tool().shankDiameterM(),
        loads.thrustN(),
        GUIDED_BY_THE_HOLE);
  }

  @Override
  public CutForces once() {
    return at(0, job.operation().feedPerToothM());
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
    Job.Operation operation = job.operation();
    double d = job.tool().diameterM();
    double bored = operation.preDrilledDiameterM();
    double feedRate =
        operation.feedPerToothM()
            * job.tool().teeth()
            * operation.spindleSpeedRadPerS()
            / (2 * Math.PI);
    return Math.PI / 4 * (d * d - bored * bored) * feedRate;
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }
}
