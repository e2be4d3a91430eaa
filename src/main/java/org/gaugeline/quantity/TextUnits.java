package org.gaugeline.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Quantities as people read them, metric or inch. Arguments are SI; results carry value and unit,
 * with a full stop as decimal sign whatever the locale.
 */
public enum TextUnits {
  METRIC("metric"),
  INCH("inch");

  private static final int DIGITS = 4;
  private static final int FINE_DIGITS = 3;

  private final String id;

  TextUnits(String id) {
    this.id = id;
  }

  /** The word that requests use. */
  public String id() {
    return id;
  }

  /** The units that a request's word names; null for no word or an unknown one. */
  public static @Nullable TextUnits find(@Nullable String id) {
    for (TextUnits units : values()) {
      if (units.id.equals(id)) {
        return units;
      }
    }
    return null;
  }

  /** A length, mm or in. */
  public String length(double lengthM) {
    return write(lengthM, UnitSuffix.MM, UnitSuffix.IN, DIGITS);
  }

  /** A small length, µm or tenths (0.0001 in). */
  public String fineLength(double lengthM) {
    return write(lengthM, UnitSuffix.UM, UnitSuffix.TENTHS, FINE_DIGITS);
  }

  /** A roughness, µm or µin. */
  public String roughness(double roughnessM) {
    return write(roughnessM, UnitSuffix.UM, UnitSuffix.MICROINCH, FINE_DIGITS);
  }

  /** A force, N or lbf. */
  public String force(double forceN) {
    return write(forceN, UnitSuffix.N, UnitSuffix.LBF, FINE_DIGITS);
  }

  /** A torque or moment, N·m or lbf·ft. */
  public String torque(double torqueNm) {
    return write(torqueNm, UnitSuffix.NM, UnitSuffix.LBF_FT, FINE_DIGITS);
  }

  /** A cutting speed, m/min or ft/min. */
  public String cuttingSpeed(double speedMPerS) {
    return write(speedMPerS, UnitSuffix.M_PER_MIN, UnitSuffix.FT_PER_MIN, FINE_DIGITS);
  }

  /** A power, kW or hp. */
  public String power(double powerW) {
    return write(powerW, UnitSuffix.KW, UnitSuffix.HP, FINE_DIGITS);
  }

  /** A mass, kg or lb. */
  public String mass(double massKg) {
    return write(massKg, UnitSuffix.KG, UnitSuffix.LB, FINE_DIGITS);
  }

  /** A spindle speed, 1/min in both. */
  public String spindleSpeed(double angularVelocityRadPerS) {
    return write(angularVelocityRadPerS, UnitSuffix.RPM, UnitSuffix.RPM, DIGITS);
  }

  /**
   * A number with at most that many significant digits, no exponent, no trailing zeros; digits
   * before the decimal sign are never dropped.
   */
  public static String number(double value, int digits) {
    TextBytes out = new TextBytes(24);
    TextNumber.append(out, value, digits);
    return out.toString();
  }

  private String write(double si, UnitSuffix metric, UnitSuffix inch, int digits) {
    UnitSuffix unit = this == METRIC ? metric : inch;
    return number(unit.fromSi(si), digits) + " " + unit.label();
  }
}
