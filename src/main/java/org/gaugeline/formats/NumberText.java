package org.gaugeline.formats;

import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.TextBytes;

/** Numbers with six significant digits and a full stop, as in every other answer. */
final class NumberText {
  private static final int LONGEST = 32;

  private NumberText() {}

  /** The number in digits; empty where it is not finite. */
  static String of(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    TextBytes out = new TextBytes(LONGEST);
    SixDigits.append(out, value);
    return out.toString();
  }
}
