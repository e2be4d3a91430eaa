package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * Constants of the handbook drilling formulas (Machinery's Handbook 31st ed., p. 1152, metric).
 *
 * @param workMaterialFactor Kd of the work material, metric table, &gt; 0
 * @param torqueFactor A of the chisel edge, &gt; 0
 * @param thrustFactor B of the chisel edge, &gt; 0
 * @param chiselFactor J of the chisel edge, &ge; 0
 * @param chiselRatio length of chisel edge over diameter, c/d, 0 to 1
 * @param wearFactor W, &gt; 0
 */
public record DrillPoint(
    double workMaterialFactor,
    double torqueFactor,
    double thrustFactor,
    double chiselFactor,
    double chiselRatio,
    double wearFactor) {
  public DrillPoint {
    Require.positive("workMaterialFactor", workMaterialFactor);
    Require.positive("torqueFactor", torqueFactor);
    Require.positive("thrustFactor", thrustFactor);
    Require.notNegative("chiselFactor", chiselFactor);
    Require.within("chiselRatio", chiselRatio, 0, 1);
    Require.positive("wearFactor", wearFactor);
  }
}
