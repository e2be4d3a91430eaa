package org.gaugeline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Rounds to six significant decimal digits, the precision in which numbers leave the service.
 *
 * <p>The result is the double nearest to the decimal m·10^k with |m| ≤ 999 999, so that it prints
 * with at most six digits. No allocation for magnitudes from 1e-16 to 1e22.
 */
public final class SixDigits {
  private static final int DIGITS = 6;
  private static final double WHOLE_BELOW = 1e6;

  private SixDigits() {}

  /** Nearest, ties to even. */
  public static double round(double value) {
    return round(value, RoundingMode.HALF_EVEN);
  }

  /** Not above the value: for capacities and upper limits. */
  public static double roundDown(double value) {
    return round(value, RoundingMode.FLOOR);
  }

  /** Not below the value: for demands and lower limits. */
  public static double roundUp(double value) {
    return round(value, RoundingMode.CEILING);
  }

  private static double round(double value, RoundingMode mode) {
    double magnitude = Math.abs(value);
    if (magnitude == 0 || !Double.isFinite(value)) {
      return value == 0 ? 0.0 : value;
    }
    if (magnitude < 1e-16 || magnitude >= 1e22) {
      return exact(value, mode);
    }
    int exponent = DecimalPowers.exponent(magnitude);
    int shift = DIGITS - 1 - exponent;
    double mantissa = Math.rint(DecimalPowers.scale(value, shift));
    double rounded = DecimalPowers.scale(mantissa, -shift);
    if (mode == RoundingMode.FLOOR && rounded > value) {
      return DecimalPowers.scale(mantissa - 1, -shift);
    }
    if (mode == RoundingMode.CEILING && rounded < value) {
      return DecimalPowers.scale(mantissa + 1, -shift);
    }
    return rounded;
  }

  /**
   * Appends a number rounded to six significant digits, without exponent where it is between 1e-6
   * and 1e9, the same decimal that {@link #round} gives.
   *
   * @param value finite
   */
  public static void append(TextBytes out, double value) {
    double magnitude = Math.abs(value);
    if (magnitude != 0 && (magnitude < 1e-6 || magnitude >= 1e9)) {
      out.append(Double.toString(round(value)));
      return;
    }
    if (value < 0) {
      out.append('-');
    }
    if (magnitude < WHOLE_BELOW && magnitude == (int) magnitude) {
      out.appendDecimal((int) magnitude, 0);
      return;
    }
    int places = DIGITS - 1 - DecimalPowers.exponent(magnitude);
    long digits = (long) Math.rint(DecimalPowers.scale(magnitude, places));
    if (places >= 0) {
      out.appendDecimal(digits, places);
    } else {
      out.appendDecimal(digits * DecimalPowers.whole(-places), 0);
    }
  }

  private static double exact(double value, RoundingMode mode) {
    BigDecimal decimal = new BigDecimal(value);
    double nearest = decimal.round(new MathContext(DIGITS, RoundingMode.HALF_EVEN)).doubleValue();
    return nearest == value ? value : decimal.round(new MathContext(DIGITS, mode)).doubleValue();
  }
}
