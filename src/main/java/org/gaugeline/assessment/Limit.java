package org.gaugeline.assessment;

import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;

/**
 * The furthest a quantity can go before an error appears, rounded to the safe side.
 *
 * @param value in SI; +∞ where nothing bounds it; NaN where not even the least value is safe
 * @param governedBy code of the pair or gate that stops it
 */
public record Limit(double value, String governedBy) {
  /**
   * The limit as it is told: rounded down, for what is said to hold must hold when asked again.
   * None of the limited quantities exists below 0, which says that not even the least value is
   * safe.
   *
   * @return in that unit; +∞ where nothing bounds it, NaN where it is not known
   */
  public double told(UnitSuffix unit) {
    return Double.isFinite(value) ? SixDigits.roundDown(unit.fromSi(Math.max(0, value))) : value;
  }
}
