package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.gaugeline.reference.ToolKind;

/**
 * The tool in front of the holder at one stick-out: its own compliance and mass.
 *
 * @param tipComplianceMPerN compliance of the tip when clamped at the holder's front face
 * @param cutComplianceMPerN the same for force and deflection in the middle of the cut
 * @param cutHeightM height of the middle of the cut above the tip
 * @param tipRotationRadPerNm rotation of the tip by a moment there
 * @param freeMassKg mass of the protruding part
 * @param massKg mass of the whole tool
 * @param centroidFromTipM centre of that mass above the tip
 */
record ToolFlexibility(
    double tipComplianceMPerN,
    double cutComplianceMPerN,
    double cutHeightM,
    double tipRotationRadPerNm,
    double freeMassKg,
    double massKg,
    double centroidFromTipM) {

  static ToolFlexibility of(
      Job.Tool tool, BeamMaterial material, double stickOutM, double cutHeightM, Models models) {
    BeamChain free = addTo(BeamChain.fromBase(), tool, material, stickOutM, 0, models).toTip();
    double height = Math.min(cutHeightM, 0.9 * Math.min(tool.fluteLengthM(), stickOutM));
    double cutCompliance =
        height <= 0
            ? TipCompliance.of(free)
            : TipCompliance.of(
                addTo(BeamChain.fromBase(), tool, material, stickOutM, height, models).toTip());
    double inside = Math.max(0, tool.overallLengthM() - stickOutM);
    double insideMass =
        inside
            * Math.PI
            / 4
            * tool.shankDiameterM()
            * tool.shankDiameterM()
            * material.densityKgPerM3();
    double mass = free.massKg() + insideMass;
    double freeCentroid = stickOutM - free.centroidM();
    return new ToolFlexibility(
        TipCompliance.of(free),
        cutCompliance,
        height,
        TipCompliance.rotationRadPerNm(free),
        free.massKg(),
        mass,
        (free.massKg() * freeCentroid + insideMass * (stickOutM + inside / 2)) / mass);
  }

  /**
   * Adds the protruding tool, holder's front face first: shank, neck, the joint of an exchangeable
   * head, flutes, the last without {@code cutOffM} at the tip.
   */
  static BeamChain.Builder addTo(
      BeamChain.Builder builder,
      Job.Tool tool,
      BeamMaterial material,
      double stickOutM,
      double cutOffM,
      Models models) {
    if (tool.bored()) {
      return builder.add(bodyOf(tool, material, stickOutM - cutOffM, models));
    }
    double flute = Math.min(tool.fluteLengthM(), stickOutM);
    double neck = Math.max(0, Math.min(tool.neckLengthM(), stickOutM) - flute);
    double shank = stickOutM - flute - neck;
    if (shank > 1e-9) {
      builder.add(BeamSegment.cylinder(shank, tool.shankDiameterM(), material));
    }
    if (neck > 1e-9) {
      builder.add(BeamSegment.cylinder(neck, tool.neckDiameterM(), material));
    }
    if (tool.exchangeableHead() && stickOutM - flute > 1e-9) {
      double d = Math.min(tool.neckDiameterM(), tool.shankDiameterM());
      double factor = models.values().headJointFactor;
      builder.add(
          new ElasticJoint(
              models.jointTranslationNPerM(d, factor), models.jointRotationNmPerRad(d, factor)));
    }
    if (tool.kind() == ToolKind.BORING_TOOL) {
      // the head of a bar is solid; its edge adds next to nothing
      return builder.add(BeamSegment.cylinder(flute - cutOffM, tool.neckDiameterM(), material));
    }
    double ratio = models.values().flutedDiameterRatio;
    return builder.add(
        BeamSegment.fluted(
            flute - cutOffM, tool.diameterM(), ratio, models.values().flutedAreaRatio, material));
  }

  /**
   * The body of a cutter on an arbor: as stiff as the fluted part of a solid one, of its own mass.
   */
  private static BeamSegment bodyOf(
      Job.Tool tool, BeamMaterial material, double lengthM, Models models) {
    double d = models.values().flutedDiameterRatio * tool.diameterM();
    double volume = Math.PI / 4 * d * d * tool.overallLengthM();
    BeamMaterial ofItsMass =
        new BeamMaterial(material.youngPa(), material.poisson(), tool.massKg() / volume);
    return BeamSegment.cylinder(lengthM, d, ofItsMass);
  }
}
