package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;

/**
 * One mode of a bar, seen at its tip and at the place of a tuned mass.
 *
 * @param angularFrequencyRadPerS ω_n, rad/s, greater than 0
 * @param dampingRatio ζ, above 0 to below 1
 * @param tipShape φ_tip of the mass-normalised shape, 1/√kg
 * @param placeShape φ_place, 1/√kg, in the same sense
 */
public record HostMode(
    double angularFrequencyRadPerS, double dampingRatio, double tipShape, double placeShape) {
  public HostMode {
    Require.positive("angularFrequencyRadPerS", angularFrequencyRadPerS);
    Require.between("dampingRatio", dampingRatio, 0, 1);
    if (!Double.isFinite(tipShape) || !Double.isFinite(placeShape)) {
      throw new IllegalArgumentException(
          "tipShape is " + tipShape + " and placeShape " + placeShape + " but both must be finite");
    }
  }
}
