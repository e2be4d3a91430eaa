package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * A milling cutter with equally spaced teeth and a helix of constant lead.
 *
 * @param diameterM largest cutting diameter, m, &gt; 0
 * @param teeth number of teeth, &ge; 1
 * @param helixRad helix angle β at the largest diameter, rad, 0 to 1.2; 0 means straight flutes
 * @param edge profile of the edge
 * @param axialSense whether the helix pulls the tool out or pushes it in
 */
public record MillingCutter(
    double diameterM, int teeth, double helixRad, EdgeShape edge, AxialSense axialSense) {
  public MillingCutter {
    Require.positive("diameterM", diameterM);
    Require.atLeastOne("teeth", teeth);
    Require.within("helixRad", helixRad, 0, 1.2);
    if (edge instanceof EdgeShape.CornerRadius corner) {
      Require.within("radiusM", corner.radiusM(), 0, diameterM / 2 * (1 + 1e-9));
    }
  }

  double radiusM() {
    return diameterM / 2;
  }

  double pitchRad() {
    return 2 * Math.PI / teeth;
  }

  /** Angle by which an edge trails its tip per axial length, rad/m. */
  double lagRadPerM() {
    return Math.tan(helixRad) / radiusM();
  }

  /** Radius of the rounded part of the edge, m; 0 where there is none. */
  double roundingM() {
    if (edge instanceof EdgeShape.Ball) {
      return radiusM();
    }
    return edge instanceof EdgeShape.CornerRadius corner
        ? Math.min(corner.radiusM(), radiusM())
        : 0;
  }

  /** Lead angle κ of the straight part of the edge, rad. */
  double leadRad() {
    return edge instanceof EdgeShape.Lead lead ? lead.leadAngleRad() : Math.PI / 2;
  }

  /** Length of edge within an axial depth, m: ∫dz/sin κ. */
  double edgeLengthM(double axialDepthM) {
    double r = roundingM();
    double curved = Math.min(axialDepthM, r);
    double arc = r > 0 ? r * Math.acos(1 - curved / r) : 0;
    return arc + (axialDepthM - curved) / Math.sin(leadRad());
  }
}
