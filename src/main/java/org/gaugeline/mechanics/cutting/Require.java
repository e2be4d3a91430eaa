package org.gaugeline.mechanics.cutting;

/** Range checks whose message names the quantity, its value and the bound it breaks. */
final class Require {
  private Require() {}

  static double positive(String quantity, double value) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(quantity + " (" + value + ") must be finite and > 0");
    }
    return value;
  }

  static double notNegative(String quantity, double value) {
    if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(quantity + " (" + value + ") must be finite and >= 0");
    }
    return value;
  }

  static double between(String quantity, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          quantity + " (" + value + ") must lie between " + low + " and " + high);
    }
    return value;
  }

  static int atLeastOne(String quantity, int value) {
    if (value < 1) {
      throw new IllegalArgumentException(quantity + " (" + value + ") must be >= 1");
    }
    return value;
  }
}
