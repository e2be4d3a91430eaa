package org.gaugeline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes numbers for people: no exponent, no trailing zeros, a full stop as decimal sign. */
public final class TextNumber {
  private static final long[] POWERS = powers();
  private static final double LARGEST = 1e15;

  private TextNumber() {}

  /**
   * Appends a finite number with at most that many significant digits, ties away from zero; digits
   * before the decimal sign are never dropped.
   */
  public static void append(StringBuilder out, double value, int digits) {
    double magnitude = Math.abs(value);
    int decimals = decimals(magnitude, digits);
    if (decimals >= POWERS.length || magnitude >= LARGEST) {
      out.append(exact(value, digits));
      return;
    }
    long scaled = Math.round(magnitude * POWERS[decimals]);
    while (decimals > 0 && scaled % 10 == 0) {
      scaled /= 10;
      decimals--;
    }
    if (value < 0 && scaled > 0) {
      out.append('-');
    }
    out.append(scaled / POWERS[decimals]);
    if (decimals > 0) {
      fraction(out, scaled % POWERS[decimals], decimals);
    }
  }

  private static void fraction(StringBuilder out, long fraction, int decimals) {
    out.append('.');
    for (int i = decimals - 1; i > 0 && fraction < POWERS[i]; i--) {
      out.append('0');
    }
    out.append(fraction);
  }

  /** Decimal places that leave so many significant digits. */
  private static int decimals(double magnitude, int digits) {
    if (magnitude == 0) {
      return 0;
    }
    if (magnitude >= 1) {
      int whole = 1;
      while (whole < digits && magnitude >= POWERS[whole]) {
        whole++;
      }
      return digits - whole;
    }
    int decimals = digits;
    for (double shifted = magnitude * 10; shifted < 1; shifted *= 10) {
      decimals++;
    }
    return decimals;
  }

  private static String exact(double value, int digits) {
    BigDecimal exact = new BigDecimal(value);
    int whole = exact.precision() - exact.scale();
    return exact
        .round(new MathContext(Math.max(digits, whole)))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static long[] powers() {
    long[] powers = new long[16];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = 10 * powers[i - 1];
    }
    return powers;
  }
}
