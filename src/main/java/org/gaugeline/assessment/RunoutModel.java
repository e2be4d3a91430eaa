package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Joint;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.runout.RunoutJoint;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/**
 * Runout at the tip: spindle seat and clamping as independent random vectors, each an offset and a
 * tilt. A family's runout is known at 3×D only; half of its variance is taken as tilt there, which
 * makes it grow with the stick-out. A holder that gives way passes on a share of all that.
 *
 * @param stack the random sum
 * @param worstTirM sum of the bounds
 * @param measuredTirM what was measured at the tip instead; NaN where nothing was
 */
record RunoutModel(RunoutStack stack, double worstTirM, double measuredTirM) {
  /** The 95 % radius of a part stands for its bound; all bounds in line are never a forecast. */
  private static final double BOUND_OVER_SIGMA = new RunoutStack(1).quantileTirM(0.95) / 2;

  static RunoutModel of(JobContext context, Assembly assembly) {
    RunoutModel predicted = of(context, assembly.holder(), assembly.stickOutM());
    double found = assembly.measured().runoutTirM();
    return Double.isNaN(found)
        ? predicted
        : new RunoutModel(predicted.stack, Math.max(found, predicted.worstTirM), found);
  }

  boolean isMeasured() {
    return !Double.isNaN(measuredTirM);
  }

  /** Median of the runout at the tip, TIR, m. */
  double medianTirM() {
    return isMeasured() ? measuredTirM : stack.medianTirM();
  }

  /** Runout at the tip that is not exceeded with a probability, TIR, m. */
  double quantileTirM(double probability) {
    return isMeasured() ? measuredTirM : stack.quantileTirM(probability);
  }

  /** Probability that the runout at the tip is no more than that. */
  double probabilityAtMost(double tirM) {
    return isMeasured() ? (measuredTirM <= tirM ? 1 : 0) : stack.probabilityAtMost(tirM);
  }

  private static RunoutModel of(JobContext context, HolderBody holder, double stickOutM) {
    List<RunoutJoint> joints = joints(context, holder, stickOutM);
    return new RunoutModel(
        RunoutStack.of(joints), RunoutStack.worstCaseTirM(joints) * BOUND_OVER_SIGMA, Double.NaN);
  }

  /** Every joint between spindle and tip, spindle first. */
  static List<RunoutJoint> joints(JobContext context, HolderBody holder, double stickOutM) {
    RunoutJoint seat = seat(context, holder, holder.projectionM() + stickOutM);
    RunoutJoint clamping = clamping(context, holder, stickOutM);
    List<RunoutJoint> joints =
        holder.seams().isEmpty() && !context.job.tool().exchangeableHead()
            ? List.of(seat, clamping)
            : composed(context, holder, stickOutM, seat, clamping);
    double left = left(context, holder.family().gripModel());
    return left == 1 ? joints : shared(joints, left);
  }

  /**
   * Every joint of a stack throws off everything in front of it, that of an exchangeable head too:
   * its runout is known at its own tip.
   */
  private static List<RunoutJoint> composed(
      JobContext context,
      HolderBody holder,
      double stickOutM,
      RunoutJoint seat,
      RunoutJoint clamping) {
    List<RunoutJoint> joints = new ArrayList<>(holder.seams().size() + 3);
    joints.add(seat);
    for (Seam seam : holder.seams()) {
      double arm = holder.projectionM() - seam.atM() + stickOutM;
      joints.add(joint(context, seam, arm));
    }
    joints.add(clamping);
    if (context.job.tool().exchangeableHead()) {
      double head = Math.min(context.job.tool().fluteLengthM(), stickOutM);
      joints.add(split(context, context.models.values().headJointTirP95M, head, head));
    }
    return joints;
  }

  private static RunoutJoint joint(JobContext context, Seam seam, double armM) {
    if (seam instanceof Seam.Clamped clamped) {
      ClampingFamily family = clamped.host().family();
      double marked = clamped.host().ratings().runoutTirM();
      double p95 = Double.isNaN(marked) ? family.tipTirM().p95() * dirt(context, family) : marked;
      return split(context, p95, knownAtM(context, clamped.shankDiameterM()), armM);
    }
    if (seam instanceof Seam.Coupled coupled) {
      SpindleInterface coupling = coupled.coupling();
      double measured = coupled.joint().runoutTirM();
      double sigma =
          RunoutStack.sigmaFromP95TirM(
              Double.isNaN(measured) ? coupling.nativeSeatTirM().p95() : measured);
      double tilt = context.models.values().seatTiltShare * sigma / coupling.gaugeDiameterM();
      return new RunoutJoint(sigma, faceTilt(coupled.joint(), tilt), armM);
    }
    Seam.Sleeved sleeved = (Seam.Sleeved) seam;
    return split(
        context,
        sleeved.tirM().p95(),
        knownAtM(context, context.job.tool().shankDiameterM()),
        armM);
  }

  /** Where the runout of a family is known: so many diameters from its front face. */
  private static double knownAtM(JobContext context, double shankDiameterM) {
    return context.models.values().runoutKnownAtPerDiameter * shankDiameterM;
  }

  /** A runout known at a distance, a share of its variance as tilt there. */
  private static RunoutJoint split(
      JobContext context, double p95TirM, double knownAtM, double armM) {
    double sigma = RunoutStack.sigmaFromP95TirM(p95TirM);
    double tilt = context.models.values().clampingTiltVarianceShare;
    return new RunoutJoint(sigma * Math.sqrt(1 - tilt), sigma * Math.sqrt(tilt) / knownAtM, armM);
  }

  private static RunoutJoint seat(JobContext context, HolderBody holder, double gaugeLengthM) {
    SpindleInterface spindle = holder.spindleInterface();
    boolean face = context.gainsFace(holder);
    Spread tir = face ? spindle.faceSeatTirM() : spindle.nativeSeatTirM();
    double sigma = RunoutStack.sigmaFromP95TirM(tir.p95());
    double tilt = context.models.values().seatTiltShare * sigma / spindle.gaugeDiameterM();
    return new RunoutJoint(sigma, faceTilt(holder.known().rear(), tilt), gaugeLengthM);
  }

  /**
   * A face that runs out by f over a diameter d tilts what sits on it by f/d: as an indicator shows
   * it, twice that angle times the arm, read as a 95 % point.
   */
  private static double faceTilt(Joint joint, double predictedRad) {
    double tilt = joint.faceTiltRad();
    return Double.isNaN(tilt) ? predictedRad : RunoutStack.sigmaFromP95TirM(2 * tilt);
  }

  private static RunoutJoint clamping(JobContext context, HolderBody holder, double stickOutM) {
    ClampingFamily family = holder.family();
    double given = holder.ratings().runoutTirM();
    double p95 = Double.isNaN(given) ? family.tipTirM().p95() * dirt(context, family) : given;
    RunoutJoint joint =
        split(context, p95, knownAtM(context, context.job.tool().shankDiameterM()), stickOutM);
    Joint face = holder.known().front();
    return Double.isNaN(face.faceTiltRad())
        ? joint
        : new RunoutJoint(joint.offsetM(), faceTilt(face, joint.tiltRad()), stickOutM);
  }

  private static double dirt(JobContext context, ClampingFamily family) {
    boolean dirty =
        family.gripModel().usesCollet()
            ? context.job.shop().colletCondition() == ColletCondition.USED
            : context.job.shop().shankCondition() == ShankCondition.OILY;
    return dirty ? family.dirtyTirFactor() : 1;
  }

  private static List<RunoutJoint> shared(List<RunoutJoint> joints, double left) {
    return joints.stream()
        .map(j -> new RunoutJoint(left * j.offsetM(), left * j.tiltRad(), j.armM()))
        .toList();
  }

  /** A tool in a holder that gives way is centred by its hole: only a share of runout is left. */
  private static double left(JobContext context, GripModel model) {
    return switch (model) {
      case FLOATING_COLLET -> context.models.values().floatingRunoutLeftShare;
      case SQUARE_DRIVE -> context.models.values().compensationRunoutLeftShare;
      case SHRINK, PRESSURE, COLLET, SIDE_LOCK, INCLINED_SIDE_LOCK, ARBOR, DISC_ARBOR, JAWS -> 1;
    };
  }
}
