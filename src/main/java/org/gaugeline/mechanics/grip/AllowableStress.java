package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Stresses that the weaker part of a positive stop may bear.
 *
 * @param shearPa allowable shear stress, Pa, above 0
 * @param bearingPa allowable bearing pressure, Pa, above 0
 */
public record AllowableStress(double shearPa, double bearingPa) {
  /** Checks the ranges. */
  public AllowableStress {
    Require.positive("shearPa", shearPa);
    Require.positive("bearingPa", bearingPa);
  }
}
