package org.gaugeline.assessment;

/**
 * What kind of quantity a number is: decides the unit in which it leaves and its words in metric or
 * inch text. The factor takes SI to the metric unit.
 */
public enum Measure {
  LENGTH("mm", 1e3),
  SMALL_LENGTH("µm", 1e6),
  ROUGHNESS("µm", 1e6),
  FORCE("N", 1),
  TORQUE("N·m", 1),
  MOMENT("N·m", 1),
  SPINDLE_SPEED("1/min", 60 / (2 * Math.PI)),
  POWER("kW", 1e-3),
  MASS("kg", 1),
  FREQUENCY("Hz", 1),
  RATIO("", 1),
  COUNT("", 1),
  ANGLE("°", 180 / Math.PI),
  TEMPERATURE_RISE("K", 1),
  PRESSURE("bar", 1e-5),
  BALANCE_GRADE("mm/s", 1e3),
  MONEY("", 1);

  private final String unit;
  private final double fromSi;

  Measure(String unit, double fromSi) {
    this.unit = unit;
    this.fromSi = fromSi;
  }

  /** Unit of the number as it leaves in JSON. */
  public String unit() {
    return unit;
  }

  /** The number in {@link #unit()} from SI. */
  public double fromSi(double valueSi) {
    return valueSi * fromSi;
  }
}
