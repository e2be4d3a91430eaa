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
 * @param free what protrudes, clamped at the holder's front face
 * @param tipComplianceMPerN compliance of its tip
 * @param tipRotationRadPerNm rotation of the tip by a moment there
 * @param massKg mass of the whole tool
 * @param centroidFromTipM centre of that mass above the tip
 * @param highestCutM height above the tip up to which the middle of a cut is taken
 */
record ToolFlexibility(
    BeamChain free,
    double tipComplianceMPerN,
    double tipRotationRadPerNm,
    double massKg,
    double centroidFromTipM,
    double highestCutM) {
  /** The middle of a cut is no higher than this share of the edge: the rest must still bend. */
  private static final double CUT_SHARE = 0.9;

  static ToolFlexibility of(Job.Tool tool, BeamMaterial material, double stickOutM, Models models) {
    BeamChain free = chain(tool, material, stickOutM, models);
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
        free,
        TipCompliance.of(free),
        TipCompliance.rotationRadPerNm(free),
        mass,
        (free.massKg() * freeCentroid + insideMass * (stickOutM + inside / 2)) / mass,
        CUT_SHARE * Math.min(tool.fluteLengthM(), stickOutM));
  }

  /** Mass of the protruding part, kg. */
  double freeMassKg() {
    return free.massKg();
  }

  /** Height of the middle of a cut above the tip, m. */
  double cutHeightM(double axialDepthM) {
    return Math.min(axialDepthM / 2, highestCutM);
  }

  /** Compliance for force and deflection at a height above the tip, m/N. */
  double complianceMPerN(double heightM) {
    return heightM <= 0 ? tipComplianceMPerN : TipCompliance.atHeight(free, heightM);
  }

  /**
   * The protruding tool, holder's front face first: shank, neck, the joint of an exchangeable head,
   * flutes.
   */
  private static BeamChain chain(
      Job.Tool tool, BeamMaterial material, double stickOutM, Models models) {
    BeamChain.Builder builder = BeamChain.fromBase();
    if (tool.bored()) {
      return builder.add(bodyOf(tool, material, stickOutM, models)).toTip();
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
      return builder.add(BeamSegment.cylinder(flute, tool.neckDiameterM(), material)).toTip();
    }
    double ratio = models.values().flutedDiameterRatio;
    return builder
        .add(
            BeamSegment.fluted(
                flute, tool.diameterM(), ratio, models.values().flutedAreaRatio, material))
        .toTip();
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
