package org.gaugeline.quantity;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The units that names may end in, each with its factor to SI.
 *
 * <p>The unit of a number is the suffix of its name: {@code axialDepthMm} is in millimetres. The
 * longest suffix wins ({@code stiffnessNPerM} is N/m, not m). A suffix begins with a capital and
 * follows a lower-case letter or a digit; a name without one is dimensionless and is not converted.
 * A count per year stays a count per year. Inch, pound and horsepower factors: NIST SP 811 (2008),
 * appendix B; all others are decimal.
 */
public enum UnitSuffix {
  MM("Mm", 1e-3, "mm"),
  UM("Um", 1e-6, "µm"),
  M("M", 1, "m"),
  IN("In", 0.0254, "in"),
  TENTHS("Tenths", 2.54e-6, "tenths"),
  MICROINCH("Microinch", 2.54e-8, "µin"),
  MM_PER_MIN("MmPerMin", 1e-3 / 60, "mm/min"),
  M_PER_MIN("MPerMin", 1.0 / 60, "m/min"),
  M_PER_S("MPerS", 1, "m/s"),
  MM_PER_S("MmPerS", 1e-3, "mm/s"),
  FT_PER_MIN("FtPerMin", 0.3048 / 60, "ft/min"),
  CM3_PER_MIN("Cm3PerMin", 1e-6 / 60, "cm³/min"),
  N("N", 1, "N"),
  KN("Kn", 1e3, "kN"),
  LBF("Lbf", 4.4482216152605, "lbf"),
  KLBF("Klbf", 4448.2216152605, "klbf"),
  NM("Nm", 1, "N·m"),
  LBF_FT("LbfFt", 1.3558179483314003, "lbf·ft"),
  PA("Pa", 1, "Pa"),
  MPA("Mpa", 1e6, "MPa"),
  GPA("Gpa", 1e9, "GPa"),
  N_PER_MM2("NPerMm2", 1e6, "N/mm²"),
  BAR("Bar", 1e5, "bar"),
  KG("Kg", 1, "kg"),
  LB("Lb", 0.45359237, "lb"),
  KG_PER_M3("KgPerM3", 1, "kg/m³"),
  KG_M("KgM", 1, "kg·m"),
  GMM("Gmm", 1e-6, "g·mm"),
  W("W", 1, "W"),
  KW("Kw", 1e3, "kW"),
  HP("Hp", 745.6998715822702, "hp"),
  RPM("Rpm", 2 * Math.PI / 60, "1/min"),
  RAD_PER_S("RadPerS", 1, "rad/s"),
  DEG("Deg", Math.PI / 180, "°"),
  RAD("Rad", 1, "rad"),
  HZ("Hz", 1, "Hz"),
  S("S", 1, "s"),
  SECONDS("Seconds", 1, "s"),
  MIN("Min", 60, "min"),
  MINUTES("Minutes", 60, "min"),
  UM_PER_N("UmPerN", 1e-6, "µm/N"),
  M_PER_N("MPerN", 1, "m/N"),
  N_PER_M("NPerM", 1, "N/m"),
  N_PER_UM("NPerUm", 1e6, "N/µm"),
  NM_PER_RAD("NmPerRad", 1, "N·m/rad"),
  PER_K("PerK", 1, "1/K"),
  K("K", 1, "K"),
  PER_UM("PerUm", 1e6, "1/µm"),
  PER_M("PerM", 1, "1/m"),
  PER_YEAR("PerYear", 1, "1/a"),
  HB("Hb", 1, "HB");

  private static final Map<String, UnitSuffix> BY_SUFFIX = bySuffix();

  private final String suffix;
  private final double factorToSi;
  private final String label;

  UnitSuffix(String suffix, double factorToSi, String label) {
    this.suffix = suffix;
    this.factorToSi = factorToSi;
    this.label = label;
  }

  private static Map<String, UnitSuffix> bySuffix() {
    Map<String, UnitSuffix> map = new HashMap<>();
    for (UnitSuffix unit : values()) {
      map.put(unit.suffix, unit);
    }
    return map;
  }

  /**
   * The unit that a name ends in.
   *
   * @param name camel-case name, such as {@code torqueNm}
   * @return its unit, or null where the name is dimensionless
   */
  public static @Nullable UnitSuffix findOf(String name) {
    for (int i = 1; i < name.length(); i++) {
      if (Character.isUpperCase(name.charAt(i)) && !Character.isUpperCase(name.charAt(i - 1))) {
        UnitSuffix unit = BY_SUFFIX.get(name.substring(i));
        if (unit != null) {
          return unit;
        }
      }
    }
    return null;
  }

  /** The value of a named number in SI; unchanged where the name has no unit. */
  public static double toSi(String name, double value) {
    UnitSuffix unit = findOf(name);
    return unit == null ? value : unit.toSi(value);
  }

  /** A value in SI in the unit that the name ends in; unchanged where the name has no unit. */
  public static double fromSi(String name, double value) {
    UnitSuffix unit = findOf(name);
    return unit == null ? value : unit.fromSi(value);
  }

  /** How people write the unit that the name ends in; empty where it has none. */
  public static String labelOf(String name) {
    UnitSuffix unit = findOf(name);
    return unit == null ? "" : unit.label;
  }

  public double toSi(double value) {
    return value * factorToSi;
  }

  public double fromSi(double value) {
    return value / factorToSi;
  }

  public String suffix() {
    return suffix;
  }

  public double factorToSi() {
    return factorToSi;
  }

  public String label() {
    return label;
  }
}
