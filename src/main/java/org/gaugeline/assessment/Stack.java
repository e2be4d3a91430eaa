package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.FirstFrequencyBound;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** Stiffness and natural frequencies of spindle joint, holder, tool joint and tool in series. */
final class Stack {
  /** One solver a thread: it keeps its work arrays between calls. */
  private static final ThreadLocal<BendingModes> MODES = ThreadLocal.withInitial(BendingModes::new);

  private Stack() {}

  /**
   * Compliance under a lateral force at a height above the tip, m/N, at chosen stiffness of the
   * joints.
   *
   * <p>C = 1/k_s + A_g²/k_θs + h + 2·l·A + p·A² + 1/k_t + A²/k_θt + C_tool, with A the arm from the
   * holder's front face and A_g that from the gauge plane to the force, and h, l, p the flexibility
   * of the holder at its front face.
   */
  private static double complianceMPerN(
      JobContext context,
      Body body,
      double armM,
      double toolMPerN,
      double spindleFactor,
      double toolFactor) {
    HolderBody holder = body.holder();
    double gaugeArm = holder.projectionM() + armM;
    double spindleJoint =
        1 / (translation(holder) * (isMeasured(holder) ? 1 : spindleFactor))
            + gaugeArm * gaugeArm / (rotation(context, holder).median() * spindleFactor);
    double front =
        body.frontFlexibilityMPerN()
            + 2 * body.frontCouplingRadPerN() * armM
            + body.frontRotationRadPerNm() * armM * armM;
    double toolJoint =
        1 / (jointTranslation(context, holder) * toolFactor)
            + armM * armM / (jointRotation(context, holder) * toolFactor);
    return spindleJoint + front + toolJoint + toolMPerN;
  }

  /**
   * Movement of the holder's front face under a lateral force an arm in front of it, m/N, at the
   * median stiffness of the joints: 1/k_s + l_h·A_g/k_θs + h + A·p.
   */
  static double faceComplianceMPerN(JobContext context, Body body, double armM) {
    HolderBody holder = body.holder();
    double projection = holder.projectionM();
    return 1 / translation(holder)
        + projection * (projection + armM) / rotation(context, holder).median()
        + body.frontFlexibilityMPerN()
        + body.frontCouplingRadPerN() * armM;
  }

  /** Tip compliance at the median stiffness of the joints, m/N. */
  static double tipComplianceMPerN(JobContext context, Body body, double stickOutM) {
    return complianceMPerN(
        context, body, stickOutM, context.tool(stickOutM).tipComplianceMPerN(), 1, 1);
  }

  /** Compliance in the middle of the cut, with the spread that the joints give it. */
  static Quantiles compliance(JobContext context, Body body, double stickOutM, double axialDepthM) {
    ToolFlexibility tool = context.tool(stickOutM);
    double height = tool.cutHeightM(axialDepthM);
    double arm = stickOutM - height;
    double own = tool.complianceMPerN(height);
    double median = complianceMPerN(context, body, arm, own, 1, 1);
    Spread rotation = rotation(context, body.holder());
    Quantiles kappa = context.models.values().jointRotationKappa;
    double soft = rotation.p05() / rotation.median();
    double stiff = rotation.p95() / rotation.median();
    boolean measured = !Double.isNaN(body.holder().known().front().rotationalNmPerRad());
    double softTool = measured ? 1 : kappa.p05() / kappa.median();
    double stiffTool = measured ? 1 : kappa.p95() / kappa.median();
    return new Quantiles(
        Math.max(
            median * 0.05,
            median
                - Math.hypot(
                    median - complianceMPerN(context, body, arm, own, stiff, 1),
                    median - complianceMPerN(context, body, arm, own, 1, stiffTool))),
        median,
        median
            + Math.hypot(
                complianceMPerN(context, body, arm, own, soft, 1) - median,
                complianceMPerN(context, body, arm, own, 1, softTool) - median));
  }

  /** Lateral stiffness of the spindle joint: the measured one where there is one. */
  static double translation(HolderBody holder) {
    return holder.known().rear().radialOr(holder.spindleInterface().translationNPerM().median());
  }

  /** A lateral stiffness that was measured does not scatter with the bending stiffness. */
  private static boolean isMeasured(HolderBody holder) {
    return !Double.isNaN(holder.known().rear().radialNPerM());
  }

  static Spread rotation(JobContext context, HolderBody holder) {
    double measured = holder.known().rear().rotationalNmPerRad();
    if (!Double.isNaN(measured)) {
      return Spread.exact(measured);
    }
    SpindleInterface spindle = holder.spindleInterface();
    boolean face = context.gainsFace(holder);
    return face ? spindle.faceRotationNmPerRad() : spindle.nativeRotationNmPerRad();
  }

  static double jointTranslation(JobContext context, HolderBody holder) {
    return holder
        .known()
        .front()
        .radialOr(
            context.models.jointTranslationNPerM(
                jointDiameterM(context), holder.family().jointFactor()));
  }

  static double jointRotation(JobContext context, HolderBody holder) {
    return holder
        .known()
        .front()
        .rotationalOr(
            context.models.jointRotationNmPerRad(
                jointDiameterM(context), holder.family().jointFactor()));
  }

  /** A cutter on an arbor bears on its face, a shank on its bore. */
  private static double jointDiameterM(JobContext context) {
    ArborSize arbor = context.arbor;
    return arbor == null ? context.job.tool().shankDiameterM() : arbor.faceDiameterM();
  }

  private static BeamChain chain(JobContext context, Body body, double stickOutM) {
    HolderBody holder = body.holder();
    BeamChain.Builder builder = BeamChain.fromBase();
    builder.add(new ElasticJoint(translation(holder), rotation(context, holder).median()));
    builder.add(body.chain());
    builder.add(
        new ElasticJoint(jointTranslation(context, holder), jointRotation(context, holder)));
    builder.add(context.tool(stickOutM).free());
    return builder.toTip();
  }

  /** Never above the first bending frequency, from what is at hand anyway. */
  private static double firstFrequencyBoundRadPerS(
      JobContext context, Body body, double stickOutM) {
    HolderBody holder = body.holder();
    double projection = holder.projectionM();
    double spindle = 1 / rotation(context, holder).median();
    double front =
        1 / translation(holder) + projection * projection * spindle + body.frontFlexibilityMPerN();
    double frontRotation = spindle + body.frontRotationRadPerNm();
    ToolFlexibility tool = context.tool(stickOutM);
    double thickest = Math.max(context.job.tool().shankDiameterM(), context.job.tool().diameterM());
    return FirstFrequencyBound.ofPartsRadPerS(
        body.frontMassKg(),
        body.rotaryKgM2(),
        front,
        frontRotation,
        tool.freeMassKg(),
        tool.freeMassKg() * thickest * thickest / 8,
        tipComplianceMPerN(context, body, stickOutM),
        frontRotation + 1 / jointRotation(context, holder) + tool.tipRotationRadPerNm());
  }

  /**
   * The first bending frequency, or a lower bound of it where that bound reaches {@code enough}.
   * The closer the bound the dearer it is, so that the loosest that clears is taken.
   */
  static double firstFrequencyUpToRadPerS(
      JobContext context, Body body, double stickOutM, double enough) {
    double ofParts = firstFrequencyBoundRadPerS(context, body, stickOutM);
    if (ofParts >= enough) {
      return ofParts;
    }
    BeamChain chain = chain(context, body, stickOutM);
    double trace = FirstFrequencyBound.angularFrequencyRadPerS(chain);
    return trace >= enough ? trace : 2 * Math.PI * MODES.get().firstFrequencyHz(chain);
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
