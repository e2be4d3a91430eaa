package org.gaugeline.quantity;

/** Powers of ten, exact where they can be. */
final class DecimalPowers {
  private static final int LEAST = -18;
  private static final int GREATEST = 23;
  private static final double[] POWERS = powers();
  private static final long[] WHOLE_POWERS = wholePowers();

  // log10(2) in 1/4096: good to one for every exponent between the powers above
  private static final int LOG_OF_TWO = 1233;
  private static final int LOG_SHIFT = 12;

  private DecimalPowers() {}

  /** 10^exponent, for exponents 0 to 18. */
  static long whole(int exponent) {
    return WHOLE_POWERS[exponent];
  }

  /** value·10^shift, rounded once, for shifts −22 to 22. */
  static double scale(double value, int shift) {
    return shift >= 0 ? value * POWERS[shift - LEAST] : value / POWERS[-shift - LEAST];
  }

  /** Greatest k with 10^k ≤ magnitude, for magnitudes from 1e-17 to 1e22. */
  static int exponent(double magnitude) {
    int below = (Math.getExponent(magnitude) * LOG_OF_TWO) >> LOG_SHIFT;
    return magnitude >= POWERS[below + 1 - LEAST] ? below + 1 : below;
  }

  private static double[] powers() {
    double[] powers = new double[GREATEST - LEAST + 1];
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Double.parseDouble("1e" + (i + LEAST));
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
