package org.gaugeline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes numbers for people: no exponent, no trailing zeros, a full stop as decimal sign. */
public final class TextNumber {
  private static final int MOST_DECIMALS = 15;
  private static final double LARGEST = 1e15;

  private TextNumber() {}

  /**
   * Appends a finite number with at most that many significant digits, ties away from zero; digits
   * before the decimal sign are never dropped.
   */
  public static void append(TextBytes out, double value, int digits) {
    double magnitude = Math.abs(value);
    int decimals = decimals(magnitude, digits);
    if (decimals > MOST_DECIMALS || magnitude >= LARGEST) {
      out.append(exact(value, digits));
      return;
    }
    long scaled = Math.round(magnitude * DecimalPowers.whole(decimals));
    if (value < 0 && scaled > 0) {
      out.append('-');
    }
    out.appendDecimal(scaled, decimals);
  }

  /** Decimal places that leave so many significant digits. */
  private static int decimals(double magnitude, int digits) {
    if (magnitude == 0) {
      return 0;
    }
    if (magnitude >= 1) {
      int whole = 1;
      while (whole < digits && magnitude >= DecimalPowers.whole(whole)) {
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
}
