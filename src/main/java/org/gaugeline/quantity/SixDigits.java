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
  private static final long[] WHOLE_POWERS = wholePowers();

  /** Room that {@link #print} needs. */
  public static final int PRINTED = 26;

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

  /**
   * Prints a number rounded to six significant digits, without exponent where it is between 1e-6
   * and 1e9, the same decimal that {@link #round} gives. Allocates nothing in that range.
   *
   * @param value finite
   * @param out at least {@link #PRINTED} characters
   * @return characters written from the start of {@code out}
   */
  public static int print(double value, char[] out) {
    double magnitude = Math.abs(value);
    if (magnitude == 0) {
      out[0] = '0';
      return 1;
    }
    if (magnitude < 1e-6 || magnitude >= 1e9) {
      String text = Double.toString(round(value));
      text.getChars(0, text.length(), out, 0);
      return text.length();
    }
    int exponent = (int) Math.floor(Math.log10(magnitude));
    long digits = (long) Math.rint(scale(magnitude, DIGITS - 1 - exponent));
    int scale = DIGITS - 1 - exponent;
    while (digits % 10 == 0) {
      digits /= 10;
      scale--;
    }
    int length = 0;
    if (value < 0) {
      out[length++] = '-';
    }
    return printPlain(digits, scale, out, length);
  }

  /** Prints digits·10^−scale from a position on. */
  private static int printPlain(long digits, int scale, char[] out, int from) {
    int places = Math.max(scale, 0);
    long whole = scale >= 0 ? digits / WHOLE_POWERS[Math.min(scale, 18)] : digits;
    int length = printWhole(whole, out, from);
    for (int zero = scale; zero < 0; zero++) {
      out[length++] = '0';
    }
    if (places > 0) {
      out[length++] = '.';
      long rest = digits % WHOLE_POWERS[Math.min(scale, 18)];
      for (int place = places - 1; place >= 0; place--) {
        out[length++] = (char) ('0' + rest / WHOLE_POWERS[place] % 10);
      }
    }
    return length;
  }

  private static int printWhole(long whole, char[] out, int from) {
    int digits = 1;
    while (digits < WHOLE_POWERS.length && whole >= WHOLE_POWERS[digits]) {
      digits++;
    }
    long rest = whole;
    for (int at = from + digits - 1; at >= from; at--) {
      out[at] = (char) ('0' + rest % 10);
      rest /= 10;
    }
    return from + digits;
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

  private static long[] wholePowers() {
    long[] powers = new long[19];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * 10;
    }
    return powers;
  }
}
