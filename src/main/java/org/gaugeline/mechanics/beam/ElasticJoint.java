package org.gaugeline.mechanics.beam;

/**
 * A joint without length: a lateral spring and a rotational spring in series with the beam.
 *
 * @param translationNPerM lateral stiffness k_t, N/m, greater than 0; infinite = rigid
 * @param rotationNmPerRad rotational stiffness k_θ, N·m/rad, greater than 0; infinite = rigid
 */
public record ElasticJoint(double translationNPerM, double rotationNmPerRad)
    implements ChainElement {
  public ElasticJoint {
    if (!(translationNPerM > 0)) {
      throw new IllegalArgumentException(
          "translationNPerM is " + translationNPerM + " but must be greater than 0");
    }
    if (!(rotationNmPerRad > 0)) {
      throw new IllegalArgumentException(
          "rotationNmPerRad is " + rotationNmPerRad + " but must be greater than 0");
    }
  }
}
