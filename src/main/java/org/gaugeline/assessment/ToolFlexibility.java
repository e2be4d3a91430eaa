package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.TipCompliance;

/**
 * The tool in front of the holder at one stick-out: its own compliance and mass.
 *
 * @param tipComplianceMPerN compliance of the tip when clamped at the holder's front face
 * @param massKg mass of the whole tool
 * @param centroidFromTipM centre of that mass above the tip
 */
record ToolFlexibility(double tipComplianceMPerN, double massKg, double centroidFromTipM) {

  static ToolFlexibility of(Job.Tool tool, BeamMaterial material, double stickOutM, Models models) {
    BeamChain free = addTo(BeamChain.fromBase(), tool, material, stickOutM, models).toTip();
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
        mass,
        (free.massKg() * freeCentroid + insideMass * (stickOutM + inside / 2)) / mass);
  }

  /** Adds the protruding tool, holder's front face first: shank, neck, flutes. */
  static BeamChain.Builder addTo(
      BeamChain.Builder builder,
      Job.Tool tool,
      BeamMaterial material,
      double stickOutM,
      Models models) {
    double flute = Math.min(tool.fluteLengthM(), stickOutM);
    double neck = Math.max(0, Math.min(tool.neckLengthM(), stickOutM) - flute);
    double shank = stickOutM - flute - neck;
    if (shank > 1e-9) {
      builder.add(BeamSegment.cylinder(shank, tool.shankDiameterM(), material));
    }
    if (neck > 1e-9) {
      builder.add(BeamSegment.cylinder(neck, tool.neckDiameterM(), material));
    }
    double ratio = models.data().practice("flutedDiameterRatio");
    return builder.add(
        BeamSegment.fluted(
            flute, tool.diameterM(), ratio, models.data().practice("flutedAreaRatio"), material));
  }
}
