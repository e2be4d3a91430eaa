package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.cutting.AxialSense;
import org.gaugeline.mechanics.cutting.CutLoads;
import org.gaugeline.mechanics.cutting.CuttingSpeeds;
import org.gaugeline.mechanics.cutting.EdgeShape;
import org.gaugeline.mechanics.cutting.MillingCut;
import org.gaugeline.mechanics.cutting.MillingCutter;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.cutting.MillingForces;
import org.gaugeline.mechanics.cutting.MillingFormulas;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.reference.MillingDirection;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Milling: forces integrated along the helical edges over a revolution. */
final class MillingCutModel implements CutModel {
  private final Job job;
  private final Values values;
  private final MillingCutter cutter;
  private final MillingEngagement engagement;
  private final SpecificForce force;
  private final double askedDepthM;
  private @Nullable MillingForces fromAskedDepth;
  private @Nullable MillingForces upToAskedDepth;
  private final double feedShare;

  MillingCutModel(Job job, SpecificForce force, Values values) {
    this(job, force, values, 1);
  }

  /**
   * Cuts with a share of the feed across the axis.
   *
   * @param feedShare that share, above 0 to 1
   */
  MillingCutModel(Job job, SpecificForce force, Values values, double feedShare) {
    this.feedShare = feedShare;
    this.values = values;
    Job.Tool tool = job.tool();
    this.job = job;
    this.force = force;
    this.cutter =
        new MillingCutter(
            tool.diameterM(),
            tool.teeth(),
            tool.helixRad(),
            edge(tool),
            tool.hand() == tool.helixHand() ? AxialSense.PULLS_OUT : AxialSense.PUSHES_IN);
    this.engagement = engagement(job);
    this.askedDepthM = job.operation().axialDepthM();
  }

  private MillingCut cut(double feedPerToothM) {
    return new MillingCut(
        cutter,
        engagement,
        feedShare * feedPerToothM,
        force,
        job.workpiece().radialRatio().median(),
        job.tool().shankDiameterM());
  }

  @Override
  public CutForces at(double axialDepthM, double feedPerToothM) {
    boolean asAsked = feedPerToothM == job.operation().feedPerToothM();
    CutLoads loads =
        asAsked
            ? tabulated(axialDepthM).at(axialDepthM)
            : MillingForces.once(cut(feedPerToothM), axialDepthM);
    return forces(axialDepthM, loads);
  }

  @Override
  public CutForces once() {
    double depth = Math.max(askedDepthM, 1e-9);
    return forces(depth, MillingForces.once(cut(job.operation().feedPerToothM()), depth));
  }

  /** The cut at the feed as asked; depths below the asked one are tabulated when they are asked. */
  private MillingForces tabulated(double axialDepthM) {
    boolean shallower = axialDepthM < askedDepthM;
    MillingForces known = shallower ? upToAskedDepth : fromAskedDepth;
    if (known == null) {
      MillingCut cut = cut(job.operation().feedPerToothM());
      known =
          shallower
              ? MillingForces.prepareBetween(cut, 0, askedDepthM)
              : MillingForces.prepareFrom(cut, askedDepthM);
    }
    if (shallower) {
      upToAskedDepth = known;
    } else {
      fromAskedDepth = known;
    }
    return known;
  }

  private CutForces forces(double axialDepthM, CutLoads loads) {
    return new CutForces(
        axialDepthM,
        ForceLaw.spread(job, values, loads.meanChipThicknessM()),
        loads.meanTorqueNm(),
        loads.peakTorqueNm(),
        loads.peakTangentialForceN(),
        loads.peakRadialForceN(),
        loads.peakAxialPullN(),
        loads.peakAxialPushN(),
        loads.peakSlipForcePulledN(),
        loads.meanFeedForceN(),
        wallForceN(loads));
  }

  /** A face mill leaves a floor, not a wall: nothing pushes it off its surface sideways. */
  private double wallForceN(CutLoads loads) {
    return job.operation().kind() == OperationKind.FACE_MILLING ? 0 : loads.peakWallNormalForceN();
  }

  @Override
  public double meanChipThicknessM() {
    return MillingFormulas.meanChipThicknessM(
        feedShare * job.operation().feedPerToothM(), job.tool().leadAngleRad(), engagement);
  }

  @Override
  public double specificForcePa() {
    return force.specificForcePa(meanChipThicknessM());
  }

  @Override
  public double removalRateM3PerS() {
    Job.Operation operation = job.operation();
    return MillingFormulas.removalRateM3PerS(
        operation.axialDepthM(),
        operation.radialDepthM(),
        CuttingSpeeds.feedRateMPerS(
            feedShare * operation.feedPerToothM(),
            job.tool().teeth(),
            operation.spindleSpeedRadPerS()));
  }

  @Override
  public double kienzleExponent() {
    return force.mc();
  }

  private static EdgeShape edge(Job.Tool tool) {
    if (tool.kind() == ToolKind.BALL_END_MILL) {
      return new EdgeShape.Ball();
    }
    if (tool.leadAngleRad() < Math.PI / 2 - 1e-6) {
      return new EdgeShape.Lead(tool.leadAngleRad());
    }
    return tool.cornerRadiusM() > 0
        ? new EdgeShape.CornerRadius(tool.cornerRadiusM())
        : new EdgeShape.Cylindrical();
  }

  static MillingEngagement engagement(Job job) {
    Job.Operation operation = job.operation();
    double diameter = job.tool().diameterM();
    double radial = operation.radialDepthM();
    // a disc cuts its slot with its rim: as deep as the radial depth, as wide as itself
    boolean fullSlot =
        operation.kind() == OperationKind.SLOTTING && job.tool().kind() != ToolKind.DISC_CUTTER;
    if (fullSlot || radial >= diameter * (1 - 1e-9)) {
      return MillingEngagement.slot();
    }
    if (operation.kind() == OperationKind.FACE_MILLING) {
      return MillingEngagement.centred(radial, diameter);
    }
    return operation.direction() == MillingDirection.UP
        ? MillingEngagement.up(radial, diameter)
        : MillingEngagement.down(radial, diameter);
  }
}
