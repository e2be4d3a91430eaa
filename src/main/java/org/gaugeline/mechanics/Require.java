package org.gaugeline.mechanics;

/** Range checks that name the quantity, its value and the bound it breaks. */
public final class Require {
  private Require() {}

  /**
   * Demands a finite number above zero.
   *
   * @param quantity name of the quantity with its unit
   * @param value number to check
   * @return the value
   * @throws IllegalArgumentException if the value is not finite or not above zero
   */
  public static double positive(String quantity, double value) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw outside(quantity, value, "be finite and above 0");
    }
    return value;
  }

  /**
   * Demands a finite number of zero or more.
   *
   * @param quantity name of the quantity with its unit
   * @param value number to check
   * @return the value
   * @throws IllegalArgumentException if the value is not finite or is below zero
   */
  public static double notNegative(String quantity, double value) {
    if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
      throw outside(quantity, value, "be finite and at least 0");
    }
    return value;
  }

  /**
   * Demands a number between two bounds, both allowed.
   *
   * @param quantity name of the quantity with its unit
   * @param value number to check
   * @param lowest smallest value allowed
   * @param highest largest value allowed
   * @return the value
   * @throws IllegalArgumentException if the value is not a number or outside the bounds
   */
  public static double within(String quantity, double value, double lowest, double highest) {
    if (!(value >= lowest && value <= highest)) {
      throw outside(quantity, value, "lie within " + lowest + " and " + highest);
    }
    return value;
  }

  /**
   * Demands a number strictly between two bounds.
   *
   * @param quantity name of the quantity with its unit
   * @param value number to check
   * @param low bound that the value must exceed
   * @param high bound that the value must stay below
   * @return the value
   * @throws IllegalArgumentException if the value is not a number or not between the bounds
   */
  public static double between(String quantity, double value, double low, double high) {
    if (!(value > low && value < high)) {
      throw outside(quantity, value, "be above " + low + " and below " + high);
    }
    return value;
  }

  /**
   * Demands a count of one or more.
   *
   * @param quantity name of the count
   * @param value number to check
   * @return the value
   * @throws IllegalArgumentException if the value is below one
   */
  public static int atLeastOne(String quantity, int value) {
    if (value < 1) {
      throw new IllegalArgumentException(quantity + " is " + value + " but must be at least 1");
    }
    return value;
  }

  private static IllegalArgumentException outside(String quantity, double value, String bound) {
    return new IllegalArgumentException(quantity + " is " + value + " but must " + bound);
  }
}
