package org.gaugeline.http;

import java.util.List;
import java.util.Locale;

/** What probably went wrong where a number is far out of its range. */
final class LikelyCause {
  private LikelyCause() {}

  /** A sentence with a leading blank. */
  static String of(String unit, double value, boolean low) {
    if (low && value < 0) {
      return " Maybe the sender measures in the other direction.";
    }
    if (low && value == 0) {
      return " Maybe 0 stands for not known; members that are not known are left out.";
    }
    return switch (unit) {
      case "mm" -> low ? " Maybe it was meant in inches or metres." : " Maybe it was meant in µm.";
      case "µm" -> low ? " Maybe it was meant in mm." : " Maybe it was meant in nm.";
      case "m/min" -> low ? " Maybe it was meant in m/s." : " Maybe a spindle speed was put here.";
      case "1/min" -> low ? " Maybe it was meant in 1/s." : " Maybe digits were repeated.";
      case "kW" -> low ? " Maybe it was meant in MW." : " Maybe it was meant in W.";
      case "kN" -> low ? " Maybe it was meant in MN." : " Maybe it was meant in N.";
      case "N/mm²" -> low ? " Maybe it was meant in GPa." : " Maybe it was meant in kPa.";
      case "kg" -> low ? " Maybe it was meant in t." : " Maybe it was meant in g.";
      case "bar" -> " Maybe it was meant in kPa or psi.";
      case "HB" -> " Maybe another hardness scale was meant; this one is Brinell.";
      case "°" -> " Angles are in degrees.";
      default -> " Check the unit and the decimal point.";
    };
  }

  /** A sentence with a leading blank, where another way of writing would be read; else empty. */
  static String ofForm(String text, Schema schema) {
    String close = text.replaceAll("[\\s_-]", "");
    for (String other :
        List.of(close, close.toLowerCase(Locale.ROOT), close.toUpperCase(Locale.ROOT))) {
      if (schema.admits(other)) {
        return " Maybe " + other + " was meant; capitals, blanks and hyphens count here.";
      }
    }
    return text.chars().anyMatch(Character::isLetter)
        ? ""
        : " Maybe a size or deviation was put here; a name is asked.";
  }
}
