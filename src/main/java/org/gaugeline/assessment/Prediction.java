package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.balance.BalanceGrade;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.gaugeline.mechanics.spread.Quantiles;

/** Puts together what is reported of an assembly beside its margins. */
final class Prediction {
  private Prediction() {}

  static Predicted of(JobContext context, Appraisal appraisal) {
    Held held = appraisal.held();
    double d = context.job.tool().shankDiameterM();
    Quantiles stopTorque = held.grip().stopTorqueNm();
    Quantiles stopAxial = held.grip().stopAxialN();
    Quantiles torque = stopTorque == null ? held.grip().frictionForceN().scale(d / 2) : stopTorque;
    Quantiles axial = stopAxial == null ? held.grip().frictionForceN() : stopAxial;
    double moment = InterfaceBending.momentNm(context.forces, appraisal.assembly().gaugeLengthM());
    StackDynamics dynamics = StackDynamics.of(context, appraisal.body(), appraisal.assembly());
    RunoutStack sides = SideRunout.of(context, appraisal.assembly());
    return new Predicted(
        held.runout().medianTirM(),
        held.runout().quantileTirM(0.95),
        Math.max(held.runout().worstTirM(), held.runout().quantileTirM(0.95)),
        torque.median(),
        torque.p05(),
        axial.median(),
        axial.p05(),
        Stack.tipComplianceMPerN(context, appraisal.body(), appraisal.assembly().stickOutM()),
        context.forces.wallNormalForceN() == 0
            ? 0
            : ForceMargins.deflection(context, held, context.forces).median(),
        frequenciesHz(context, appraisal, dynamics),
        dynamics.lowestDampingRatio(),
        moment / InterfaceBending.of(context, appraisal.assembly().holder()).onsetNm(),
        balanceGradeMPerS(context, appraisal),
        sides == null ? Double.NaN : sides.medianTirM(),
        sides == null ? Double.NaN : sides.quantileTirM(0.95),
        lifeFactor(context, held.runout().medianTirM()));
  }

  /** The lowest modes; with a tuned mass those of the stack that carries it as dead weight. */
  private static List<Double> frequenciesHz(
      JobContext context, Appraisal appraisal, StackDynamics dynamics) {
    return dynamics.isTuned()
        ? Stack.firstThreeFrequenciesHz(context, appraisal.body(), appraisal.assembly().stickOutM())
        : dynamics.median().modes().stream()
            .map(mode -> mode.angularFrequencyRadPerS() / (2 * Math.PI))
            .toList();
  }

  private static double balanceGradeMPerS(JobContext context, Appraisal appraisal) {
    double mass = appraisal.geometry().massKg();
    double unbalance =
        SpeedMargins.unbalanceKgM(
            SpeedMargins.residualKgM(context, appraisal.body(), mass),
            mass,
            SpeedMargins.seatTirM(context, appraisal.assembly().holder()).median());
    return BalanceGrade.reachedMPerS(
        unbalance, mass, context.job.operation().spindleSpeedRadPerS());
  }

  static double lifeFactor(JobContext context, double tirM) {
    return context.models.values().toolLifeLoss.lifeFactor(tirM, context.job.tool().diameterM());
  }
}
