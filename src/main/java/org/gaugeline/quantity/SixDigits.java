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
  private static final double[] POWERS = powers();
  private static final int DIGITS = 6;

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
    int exponent = (int) Math.floor(Math.log10(magnitude));
    int shift = DIGITS - 1 - exponent;
    double mantissa = Math.rint(scale(value, shift));
    double rounded = scale(mantissa, -shift);
    if (mode == RoundingMode.FLOOR && rounded > value) {
      return scale(mantissa - 1, -shift);
    }
    if (mode == RoundingMode.CEILING && rounded < value) {
      return scale(mantissa + 1, -shift);
    }
    return rounded;
  }

  private static double exact(double value, RoundingMode mode) {
    BigDecimal decimal = new BigDecimal(value);
    double nearest = decimal.round(new MathContext(DIGITS, RoundingMode.HALF_EVEN)).doubleValue();
    return nearest == value ? value : decimal.round(new MathContext(DIGITS, mode)).doubleValue();
  }

  private static double scale(double value, int shift) {
    return shift >= 0 ? value * POWERS[shift] : value / POWERS[-shift];
  }

  private static double[] powers() {
    double[] powers = new double[23];
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Double.parseDouble("1e" + i);
    }
    return powers;
  }
}
