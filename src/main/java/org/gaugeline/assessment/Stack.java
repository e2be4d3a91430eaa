package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.FirstFrequencyBound;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** Stiffness and natural frequencies of spindle joint, holder, tool joint and tool in series. */
final class Stack {
  /** One solver a thread: it keeps its work arrays between calls. */
  private static final ThreadLocal<BendingModes> MODES = ThreadLocal.withInitial(BendingModes::new);

  private Stack() {}

  /**
   * Tip compliance, m/N, at chosen quantiles of the joints' stiffness.
   *
   * <p>C = 1/k_s + L_g²/k_θs + h + 2·l·s + p·s² + 1/k_t + s²/k_θt + C_tool(s), with s the
   * stick-out, L_g the gauge length and h, l, p the flexibility of the holder at its front face.
   */
  static double tipComplianceMPerN(
      JobContext context, Body body, double stickOutM, double spindleFactor, double toolFactor) {
    HolderBody holder = body.holder();
    SpindleInterface spindle = holder.spindleInterface();
    double gaugeLength = holder.projectionM() + stickOutM;
    double spindleJoint =
        1 / (spindle.translationNPerM().median() * spindleFactor)
            + gaugeLength * gaugeLength / (rotation(context, holder).median() * spindleFactor);
    double body0 =
        body.frontFlexibilityMPerN()
            + 2 * body.frontCouplingRadPerN() * stickOutM
            + body.frontRotationRadPerNm() * stickOutM * stickOutM;
    double toolJoint =
        1 / (jointTranslation(context, holder) * toolFactor)
            + stickOutM * stickOutM / (jointRotation(context, holder) * toolFactor);
    return spindleJoint + body0 + toolJoint + context.tool(stickOutM).tipComplianceMPerN();
  }

  /** Tip compliance at the median and the spread that the joints give it. */
  static Quantiles compliance(JobContext context, Body body, double stickOutM) {
    double median = tipComplianceMPerN(context, body, stickOutM, 1, 1);
    Spread rotation = rotation(context, body.holder());
    Quantiles kappa = context.models.practice("jointRotationKappa");
    double softSpindle =
        tipComplianceMPerN(context, body, stickOutM, rotation.p05() / rotation.median(), 1)
            - median;
    double softTool =
        tipComplianceMPerN(context, body, stickOutM, 1, kappa.p05() / kappa.median()) - median;
    double stiffSpindle =
        median
            - tipComplianceMPerN(context, body, stickOutM, rotation.p95() / rotation.median(), 1);
    double stiffTool =
        median - tipComplianceMPerN(context, body, stickOutM, 1, kappa.p95() / kappa.median());
    return new Quantiles(
        Math.max(median * 0.05, median - Math.hypot(stiffSpindle, stiffTool)),
        median,
        median + Math.hypot(softSpindle, softTool));
  }

  static Spread rotation(JobContext context, HolderBody holder) {
    SpindleInterface spindle = holder.spindleInterface();
    boolean face = context.gainsFace(holder);
    return face ? spindle.faceRotationNmPerRad() : spindle.nativeRotationNmPerRad();
  }

  private static double jointTranslation(JobContext context, HolderBody holder) {
    return context.models.data().practice("jointTranslationLambda")
        * context.models.steel().youngPa()
        * context.job.tool().shankDiameterM()
        * holder.family().jointFactor();
  }

  private static double jointRotation(JobContext context, HolderBody holder) {
    double d = context.job.tool().shankDiameterM();
    return context.models.data().practice("jointRotationKappa")
        * context.models.steel().youngPa()
        * d
        * d
        * d
        * holder.family().jointFactor();
  }

  private static BeamChain chain(JobContext context, Body body, double stickOutM) {
    HolderBody holder = body.holder();
    BeamChain.Builder builder = BeamChain.fromBase();
    builder.add(
        new ElasticJoint(
            holder.spindleInterface().translationNPerM().median(),
            rotation(context, holder).median()));
    Body.addTo(builder, holder, context.models.steel());
    builder.add(
        new ElasticJoint(jointTranslation(context, holder), jointRotation(context, holder)));
    ToolFlexibility.addTo(
        builder, context.job.tool(), context.toolMaterial, stickOutM, context.models);
    return builder.toTip();
  }

  static double firstFrequencyBoundRadPerS(JobContext context, Body body, double stickOutM) {
    return FirstFrequencyBound.angularFrequencyRadPerS(chain(context, body, stickOutM));
  }

  static double firstFrequencyRadPerS(JobContext context, Body body, double stickOutM) {
    return 2 * Math.PI * MODES.get().firstFrequencyHz(chain(context, body, stickOutM));
  }

  static List<Double> firstThreeFrequenciesHz(JobContext context, Body body, double stickOutM) {
    BendingModes modes = MODES.get();
    modes.solve(chain(context, body, stickOutM), 3);
    List<Double> frequencies = new ArrayList<>(3);
    for (int mode = 0; mode < modes.count(); mode++) {
      frequencies.add(modes.frequencyHz(mode));
    }
    return frequencies;
  }
}
