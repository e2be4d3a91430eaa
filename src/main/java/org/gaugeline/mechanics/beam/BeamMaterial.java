package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * Linear elastic, isotropic material of a beam segment.
 *
 * @param youngPa modulus of elasticity E, Pa, greater than 0
 * @param poisson Poisson's ratio ν, 0 to 0.5
 * @param densityKgPerM3 density ρ, kg/m³, 0 or more (0 = stiffness without mass)
 */
public record BeamMaterial(double youngPa, double poisson, double densityKgPerM3) {
  public BeamMaterial {
    Require.positive("youngPa", youngPa);
    Require.within("poisson", poisson, 0, 0.5);
    Require.within("densityKgPerM3", densityKgPerM3, 0, 1e6);
  }

  /**
   * Shear modulus of an isotropic body, G = E / (2(1 + ν)).
   *
   * @return G, Pa
   */
  public double shearModulusPa() {
    return youngPa / (2 * (1 + poisson));
  }
}
