package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.mechanics.balance.MouthExpansion;
import org.gaugeline.mechanics.balance.TaperSeat;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.SpindleInterface;

/** Limits of the machine and of the interface that an assembly passes or does not. */
final class Gates {
  private static final String ARBOR_BASIS = "arbor-memory";

  private final JobContext context;
  private final List<Gate> gates = new ArrayList<>(4);

  private Gates(JobContext context) {
    this.context = context;
  }

  static List<Gate> of(JobContext context, Body body, Geometry geometry) {
    Gates gates = new Gates(context);
    gates.changer(body, geometry);
    gates.spindle();
    gates.bending(body, geometry);
    gates.arborFace(body, geometry);
    gates.mouth(body.holder());
    gates.coolant(body.holder());
    gates.sideLoad(body.holder());
    gates.giving(body.holder());
    return gates.gates;
  }

  private void changer(Body body, Geometry geometry) {
    Job.ToolChanger changer = context.job.machine().changer();
    String basis = "changer-practice";
    atMost("changer-mass", geometry.massKg(), changer.maxMassKg(), Measure.MASS, basis);
    atMost("changer-length", geometry.gaugeLengthM(), changer.maxLengthM(), Measure.LENGTH, basis);
    atMost(
        "changer-moment",
        Math.abs(geometry.momentNm()),
        changer.maxMomentNm(),
        Measure.MOMENT,
        basis);
    double diameter = Math.max(body.largestDiameterM(), context.job.tool().diameterM());
    atMost(
        "changer-diameter", diameter, changer.maxDiameterNeighboursEmptyM(), Measure.LENGTH, basis);
    if (diameter > changer.maxDiameterM() && diameter <= changer.maxDiameterNeighboursEmptyM()) {
      add(
          "neighbour-pockets-empty",
          Severity.NOTE,
          diameter,
          changer.maxDiameterM(),
          Measure.LENGTH,
          basis);
    }
  }

  private void atMost(String code, double demand, double capacity, Measure measure, String basis) {
    if (demand > capacity) {
      add(code, Severity.ERROR, demand, capacity, measure, basis);
    }
  }

  private void spindle() {
    double omega = context.job.operation().spindleSpeedRadPerS();
    double torque = context.forces.torqueNm();
    double available = availableTorqueNm(context.job.machine(), omega);
    severityAtMost(
        "spindle-torque", torque, context.forces.spread().p95(), available, Measure.TORQUE);
    severityAtMost(
        "spindle-power",
        torque * omega,
        context.forces.spread().p95(),
        context.job.machine().powerW(),
        Measure.POWER);
  }

  private void severityAtMost(
      String code, double demand, double upper, double capacity, Measure measure) {
    if (demand > capacity) {
      add(code, Severity.ERROR, demand, capacity, measure, "given");
    } else if (demand * upper > capacity) {
      add(code, Severity.WARNING, demand, capacity, measure, "given");
    }
  }

  /** Continuous torque at a speed: the curve where given, else rating and power hyperbola. */
  static double availableTorqueNm(Job.Machine machine, double omegaRadPerS) {
    double byPower = machine.powerW() / Math.max(omegaRadPerS, 1e-9);
    List<Intent.CurvePoint> curve = machine.torqueCurve();
    if (curve.isEmpty()) {
      return Math.min(machine.torqueNm(), byPower);
    }
    Intent.CurvePoint last = curve.get(0);
    if (omegaRadPerS <= last.spindleSpeedRadPerS()) {
      return Math.min(last.torqueNm(), byPower);
    }
    for (Intent.CurvePoint point : curve) {
      if (omegaRadPerS <= point.spindleSpeedRadPerS()) {
        double share =
            (omegaRadPerS - last.spindleSpeedRadPerS())
                / (point.spindleSpeedRadPerS() - last.spindleSpeedRadPerS());
        return Math.min(byPower, last.torqueNm() + share * (point.torqueNm() - last.torqueNm()));
      }
      last = point;
    }
    return Math.min(last.torqueNm(), byPower);
  }

  private void bending(Body body, Geometry geometry) {
    HolderBody holder = body.holder();
    double gaugeLength = geometry.gaugeLengthM();
    bending(
        "interface-bending",
        InterfaceBending.of(context, holder),
        InterfaceBending.momentNm(context.forces, gaugeLength),
        holder.spindleInterface());
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Coupled coupled) {
        bending(
            "coupling-bending",
            InterfaceBending.of(context, coupled.coupling()),
            InterfaceBending.momentNm(context.forces, gaugeLength - coupled.atM()),
            coupled.coupling());
      }
    }
  }

  private void arborFace(Body body, Geometry geometry) {
    InterfaceBending bending = ArborFace.bending(context, body, context.forces);
    if (bending == null) {
      return;
    }
    double moment = ArborFace.momentNm(context.forces, geometry.stickOutM());
    Severity severity = bending.severity(moment);
    if (severity != null) {
      add(ArborFace.CODE, severity, moment, bending.onsetNm(), Measure.MOMENT, ARBOR_BASIS);
    }
  }

  private void bending(
      String code, InterfaceBending bending, double momentNm, SpindleInterface joint) {
    Severity severity = bending.severity(momentNm);
    if (severity != null) {
      add(code, severity, momentNm, bending.onsetNm(), Measure.MOMENT, joint.limitsSourceKey());
    }
  }

  /** A steep taper alone is drawn in as the spindle mouth widens; a face stops that. */
  private void mouth(HolderBody holder) {
    boolean taperOnly =
        holder.spindleInterface().kind() == InterfaceKind.STEEP_TAPER
            && context.job.machine().contact(holder.faceContact()) == ContactMode.TAPER_ONLY;
    if (!taperOnly) {
      return;
    }
    double radius = holder.spindleInterface().gaugeDiameterM() / 2;
    double pullIn =
        new MouthExpansion(
                radius,
                radius * context.models.values().spindleNoseRadiusRatio,
                context.models.elasticSteel())
            .pullInM(context.job.operation().spindleSpeedRadPerS(), TaperSeat.STEEP_HALF_ANGLE_RAD);
    double worthKnowing = context.models.values().mouthPullInNoteM;
    if (pullIn > worthKnowing) {
      add(
          "mouth-expansion",
          Severity.NOTE,
          pullIn,
          worthKnowing,
          Measure.SMALL_LENGTH,
          "rotating-disc-theory");
    }
  }

  private void coolant(HolderBody holder) {
    if (context.job.operation().coolant() != Coolant.THROUGH_TOOL) {
      return;
    }
    if (!context.job.machine().throughCoolant()) {
      add("coolant-machine", Severity.ERROR, Double.NaN, Double.NaN, Measure.COUNT, "given");
    } else if (!holder.throughCoolant()) {
      add(
          "coolant-holder",
          Severity.ERROR,
          Double.NaN,
          Double.NaN,
          Measure.COUNT,
          holder.sourceKey());
    }
  }

  private void sideLoad(HolderBody holder) {
    OperationKind kind = context.job.operation().kind();
    boolean side = !OperationCompletion.isHole(kind) || kind == OperationKind.BORING;
    if (side && !holder.family().sideLoad()) {
      add(
          "not-for-side-load",
          Severity.ERROR,
          context.forces.peakRadialForceN(),
          0,
          Measure.FORCE,
          holder.family().sourceKey());
    }
  }

  /**
   * A holder that gives way across or along the axis is for the one cut that asks for it, and
   * tapping without a coupled feed asks for it.
   */
  private void giving(HolderBody holder) {
    OperationKind kind = context.job.operation().kind();
    GripModel model = holder.family().gripModel();
    boolean forNothing =
        (model == GripModel.FLOATING_COLLET && kind != OperationKind.REAMING)
            || (model == GripModel.SQUARE_DRIVE && kind != OperationKind.TAPPING);
    if (forNothing) {
      add(
          "gives-way",
          Severity.ERROR,
          Double.NaN,
          Double.NaN,
          Measure.COUNT,
          holder.family().sourceKey());
    }
    if (kind == OperationKind.TAPPING
        && TappingCutModel.needsCompensation(context.job)
        && model != GripModel.SQUARE_DRIVE) {
      add(
          "no-length-compensation",
          Severity.ERROR,
          Double.NaN,
          Double.NaN,
          Measure.COUNT,
          "tapping-practice");
    }
  }

  private void add(
      String code,
      Severity severity,
      double demand,
      double capacity,
      Measure measure,
      String basis) {
    gates.add(new Gate(code, severity, demand, capacity, measure, basis));
  }
}
