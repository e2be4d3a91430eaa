package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Thin sleeve pressed onto the shank by oil.
 *
 * @param oilPressurePa pressure of the oil behind the sleeve, Pa, at least 0
 * @param sleeveStiffnessPaPerM oil pressure that narrows the sleeve's bore by a metre of diameter,
 *     Pa/m, at least 0
 */
public record HydraulicGrip(double oilPressurePa, double sleeveStiffnessPaPerM) {
  /** Checks the ranges. */
  public HydraulicGrip {
    Require.notNegative("oilPressurePa", oilPressurePa);
    Require.notNegative("sleeveStiffnessPaPerM", sleeveStiffnessPaPerM);
  }

  /**
   * Contact pressure on the shank: w·(p − k·c), not below 0. Closing the clearance uses up part of
   * the oil pressure, so the shank at its lower limit is held least.
   *
   * @param clearanceM diametral clearance c between open bore and shank, m, at least 0
   * @param warmFactor share w of the contact pressure that is kept at working temperature, 0 to 1
   * @return contact pressure, Pa
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double pressurePa(double clearanceM, double warmFactor) {
    Require.notNegative("clearanceM", clearanceM);
    Require.within("warmFactor", warmFactor, 0, 1);
    return warmFactor * Math.max(0, oilPressurePa - sleeveStiffnessPaPerM * clearanceM);
  }
}
