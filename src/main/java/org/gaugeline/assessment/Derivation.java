package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.job.Job;
import org.gaugeline.mechanics.runout.RunoutJoint;

/**
 * The numbers of an assessment as lines that can be checked by hand, each from those before it. All
 * in SI; what was integrated or solved stands as a value.
 */
final class Derivation {
  private final JobContext context;
  private final Appraisal appraisal;
  private final Held held;
  private final List<DerivationStep> steps = new ArrayList<>();

  private Derivation(JobContext context, Appraisal appraisal) {
    this.context = context;
    this.appraisal = appraisal;
    this.held = Held.of(context, appraisal.body(), appraisal.assembly());
  }

  static List<DerivationStep> of(JobContext context, Appraisal appraisal) {
    Derivation derivation = new Derivation(context, appraisal);
    derivation.cut();
    derivation.grip();
    derivation.runout();
    derivation.bending();
    derivation.unbalance();
    derivation.margins();
    return List.copyOf(derivation.steps);
  }

  private void cut() {
    Job.Operation cut = context.job.operation();
    given("D", context.job.tool().diameterM(), "m", "given");
    given("z", context.job.tool().teeth(), "", "given");
    given("omega", cut.spindleSpeedRadPerS(), "rad/s", "given");
    given("f_z", cut.feedPerToothM(), "m", "given");
    given("a_p", cut.axialDepthM(), "m", "given");
    given("pi", Math.PI, "", "");
    step(
        "v_c",
        "D / 2 * omega",
        cut.spindleSpeedRadPerS() * context.job.tool().diameterM() / 2,
        "m/s");
    step("v_f", "f_z * z * omega / (2 * pi)", context.loads().feedRateMPerS(), "m/s");
    given("h_m", context.cut.meanChipThicknessM(), "m", "chip-geometry");
    given("k_c", context.cut.specificForcePa(), "Pa", context.job.workpiece().sourceKey());
    CutForces forces = context.forces;
    String integrated = context.loads().basis().get(1);
    given("M", forces.torqueNm(), "N·m", integrated);
    step("P", "M * omega", forces.torqueNm() * cut.spindleSpeedRadPerS(), "W");
    given("M_peak", forces.peakTorqueNm(), "N·m", integrated);
    given("F_radial", forces.peakRadialForceN(), "N", integrated);
    given("F_pull", forces.pullN(), "N", integrated);
    given("F_push", forces.pushN(), "N", integrated);
    given("F_slip", forces.slipForceN(), "N", integrated);
    given("F_wall", forces.wallNormalForceN(), "N", integrated);
  }

  private void grip() {
    given("d", context.gripped.diameterM(), "m", "given");
    given("S", context.safety, "", "grip-practice");
    GripCapacity grip = held.grip();
    given("F_grip", grip.frictionForceN().median(), "N", grip.basis());
    given(
        "F_grip_safe",
        grip.frictionForceN().atStandardScore(-context.standardScore),
        "N",
        grip.basis());
    step(
        "M_grip",
        "F_grip * d / 2",
        grip.frictionForceN().median() * context.gripped.diameterM() / 2,
        "N·m");
    step("F_asked", "S * F_slip", context.safety * context.forces.slipForceN(), "N");
  }

  private void runout() {
    Assembly assembly = appraisal.assembly();
    StringBuilder sum = new StringBuilder();
    int i = 0;
    for (RunoutJoint joint : RunoutModel.joints(context, assembly.holder(), assembly.stickOutM())) {
      i++;
      given("e_" + i, joint.offsetM(), "m", "");
      given("t_" + i, joint.tiltRad(), "rad", "");
      given("L_" + i, joint.armM(), "m", "");
      sum.append(i == 1 ? "" : " + ")
          .append("e_")
          .append(i)
          .append(" ^ 2 + (L_")
          .append(i)
          .append(" * t_")
          .append(i)
          .append(") ^ 2");
    }
    double sigma = held.runout().stack().sigmaM();
    step("sigma", "sqrt(" + sum + ")", sigma, "m");
    step("TIR_median", "2 * sigma * sqrt(2 * ln(2))", held.runout().stack().medianTirM(), "m");
    step("TIR_95", "2 * sigma * sqrt(2 * ln(20))", held.runout().stack().quantileTirM(0.95), "m");
    if (held.runout().isMeasured()) {
      given("TIR_measured", held.runout().measuredTirM(), "m", "measured");
    }
  }

  private void bending() {
    Assembly assembly = appraisal.assembly();
    double compliance = held.complianceMPerN().median() + context.job.workpiece().complianceMPerN();
    given("C", compliance, "m/N", "timoshenko-beam");
    step("y", "C * F_wall", compliance * context.forces.wallNormalForceN(), "m");
    given("L_gauge", assembly.gaugeLengthM(), "m", "given");
    double depth = context.forces.axialDepthM();
    given("a_force", depth, "m", "given");
    double moment = InterfaceBending.momentNm(context.forces, assembly.gaugeLengthM());
    step("M_bend", "F_radial * (L_gauge - a_force / 2)", moment, "N·m");
    double onset = InterfaceBending.of(context, assembly.holder()).onsetNm();
    given("M_open", onset, "N·m", assembly.holder().spindleInterface().limitsSourceKey());
    step("use", "M_bend / M_open", moment / onset, "");
  }

  private void unbalance() {
    double mass = appraisal.geometry().massKg();
    double grade = context.predicted(appraisal).balanceGradeReachedMPerS();
    double omega = context.job.operation().spindleSpeedRadPerS();
    given("m", mass, "kg", "");
    double unbalance = grade * mass / omega;
    given("U", unbalance, "kg·m", "iso-16084-scope");
    step("G", "U * omega / m", grade, "m/s");
    step("F_unbalance", "U * omega ^ 2", unbalance * omega * omega, "N");
  }

  /** Every pair: demand, capacity, and the ratio that score, verdict and limits come from. */
  private void margins() {
    for (Margin margin : appraisal.margins()) {
      String name = margin.pair().id().replace('-', '_');
      String basis = margin.basis().get(0);
      if (!Double.isFinite(margin.capacity()) || !(margin.demand() > 0)) {
        continue;
      }
      String unit = "SI";
      given("demand_" + name, margin.demand(), unit, basis);
      given("capacity_" + name, margin.capacity(), unit, basis);
      step(
          "ratio_" + name,
          "capacity_" + name + " / demand_" + name,
          margin.capacity() / margin.demand(),
          "");
    }
  }

  private void given(String symbol, double value, String unit, String source) {
    steps.add(new DerivationStep(symbol, "", value, unit, source));
  }

  private void step(String symbol, String formula, double value, String unit) {
    steps.add(new DerivationStep(symbol, formula, value, unit, ""));
  }
}
