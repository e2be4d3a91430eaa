package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Isotropic linear-elastic material.
 *
 * @param youngsModulusPa modulus of elasticity, Pa, above 0
 * @param poissonRatio Poisson's ratio, 0 to 0.5
 * @param densityKgPerM3 density, kg/m³, above 0
 * @param thermalExpansionPerK coefficient of linear thermal expansion, 1/K, above 0
 */
public record ElasticMaterial(
    double youngsModulusPa,
    double poissonRatio,
    double densityKgPerM3,
    double thermalExpansionPerK) {
  /** Checks the ranges. */
  public ElasticMaterial {
    Require.positive("youngsModulusPa", youngsModulusPa);
    Require.within("poissonRatio", poissonRatio, 0, 0.5);
    Require.positive("densityKgPerM3", densityKgPerM3);
    Require.positive("thermalExpansionPerK", thermalExpansionPerK);
  }
}
