package org.gaugeline.mechanics.joint;

/** Range checks that name the quantity, its value and the bound it broke. */
final class Ranges {
  private Ranges() {}

  static void positive(String quantity, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          quantity + " is " + value + " but must be finite and greater than 0");
    }
  }

  static void within(String quantity, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          quantity + " is " + value + " but must lie in [" + least + ", " + most + "]");
    }
  }
}
