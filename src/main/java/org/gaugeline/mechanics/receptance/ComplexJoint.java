package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.beam.ElasticJoint;

/**
 * A damped joint between two components: K = k(1 + iη) + iωc for translation and rotation
 * (receptance coupling; Schmitz and Smith, Machining Dynamics (2009), ch. 9, use k + iωc).
 *
 * @param spring stiffnesses k_t and k_θ; infinite = rigid
 * @param lossFactor hysteretic loss factor η of both, 0 to 1
 * @param translationNsPerM viscous damping c_t, N·s/m, 0 or more
 * @param rotationNmsPerRad viscous damping c_θ, N·m·s/rad, 0 or more
 */
public record ComplexJoint(
    ElasticJoint spring, double lossFactor, double translationNsPerM, double rotationNmsPerRad) {
  public ComplexJoint {
    Require.within("lossFactor", lossFactor, 0, 1);
    Require.notNegative("translationNsPerM", translationNsPerM);
    Require.notNegative("rotationNmsPerRad", rotationNmsPerRad);
  }

  /**
   * A joint without gap, spring or damping.
   *
   * @return the rigid joint
   */
  public static ComplexJoint rigid() {
    return hysteretic(new ElasticJoint(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY), 0);
  }

  /**
   * A joint damped by hysteresis only.
   *
   * @param spring stiffnesses
   * @param lossFactor η, 0 to 1
   * @return the joint
   */
  public static ComplexJoint hysteretic(ElasticJoint spring, double lossFactor) {
    return new ComplexJoint(spring, lossFactor, 0, 0);
  }
}
