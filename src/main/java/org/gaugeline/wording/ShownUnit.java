package org.gaugeline.wording;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.gaugeline.assessment.Measure;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.quantity.TextNumber;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.quantity.UnitSuffix;

/**
 * A unit in which text shows a quantity.
 *
 * @param label with its leading space; empty for a bare number
 * @param perSi factor from SI
 * @param digits significant digits
 */
record ShownUnit(String label, double perSi, int digits) {
  static final ShownUnit BARE = new ShownUnit("", 1, 3);

  private static final int FEW = 3;
  private static final int MORE = 4;
  private static final int TELLING_APART = 6;
  // 1 ksi = 6.894757 MPa, NIST SP 811 (2008), appendix B
  private static final ShownUnit KSI = new ShownUnit(" ksi", 1 / 6.894757e6, FEW);
  private static final ShownUnit PSI = new ShownUnit(" psi", 1 / 6.894757e3, FEW);
  // a difference of 1 K is one of 1.8 °F
  private static final ShownUnit FAHRENHEIT = new ShownUnit(" °F", 1.8, FEW);
  private static final ShownUnit DEGREE = new ShownUnit("°", UnitSuffix.DEG.fromSi(1), FEW);

  private static final Map<Measure, ShownUnit> METRIC_BY_MEASURE = byMeasure(TextUnits.METRIC);
  private static final Map<Measure, ShownUnit> INCH_BY_MEASURE = byMeasure(TextUnits.INCH);

  static ShownUnit of(Measure measure, TextUnits units) {
    return Objects.requireNonNull(
        (units == TextUnits.INCH ? INCH_BY_MEASURE : METRIC_BY_MEASURE).get(measure));
  }

  private static Map<Measure, ShownUnit> byMeasure(TextUnits units) {
    Map<Measure, ShownUnit> shown = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      shown.put(measure, choose(measure, units));
    }
    return shown;
  }

  private static ShownUnit choose(Measure measure, TextUnits units) {
    boolean inch = units == TextUnits.INCH;
    return switch (measure) {
      case LENGTH -> inch ? of(UnitSuffix.IN, MORE) : of(UnitSuffix.MM, MORE);
      case SMALL_LENGTH -> inch ? of(UnitSuffix.TENTHS, FEW) : of(UnitSuffix.UM, FEW);
      case ROUGHNESS -> inch ? of(UnitSuffix.MICROINCH, FEW) : of(UnitSuffix.UM, FEW);
      case FORCE -> inch ? of(UnitSuffix.LBF, FEW) : of(UnitSuffix.N, FEW);
      case TORQUE, MOMENT -> inch ? of(UnitSuffix.LBF_FT, FEW) : of(UnitSuffix.NM, FEW);
      case SPINDLE_SPEED -> of(UnitSuffix.RPM, MORE);
      case POWER -> inch ? of(UnitSuffix.HP, FEW) : of(UnitSuffix.KW, FEW);
      case MASS -> inch ? of(UnitSuffix.LB, FEW) : of(UnitSuffix.KG, FEW);
      case FREQUENCY -> of(UnitSuffix.HZ, FEW);
      case TEMPERATURE_RISE -> inch ? FAHRENHEIT : of(UnitSuffix.K, FEW);
      case PRESSURE -> inch ? PSI : of(UnitSuffix.BAR, FEW);
      // a balance grade is the same word in both systems
      case BALANCE_GRADE -> new ShownUnit("", UnitSuffix.MM_PER_S.fromSi(1), FEW);
      case ANGLE -> DEGREE;
      case RATIO, COUNT, MONEY -> BARE;
    };
  }

  /** The unit for a number whose name ends in that one. */
  static ShownUnit of(UnitSuffix named, TextUnits units) {
    if (named == UnitSuffix.DEG) {
      return DEGREE;
    }
    if (units == TextUnits.METRIC) {
      return of(named, MORE);
    }
    return switch (named) {
      case MM -> of(UnitSuffix.IN, MORE);
      case UM -> of(UnitSuffix.TENTHS, FEW);
      case M_PER_MIN -> of(UnitSuffix.FT_PER_MIN, FEW);
      case N -> of(UnitSuffix.LBF, FEW);
      case KN -> of(UnitSuffix.KLBF, FEW);
      case NM -> of(UnitSuffix.LBF_FT, FEW);
      case KG -> of(UnitSuffix.LB, FEW);
      case KW -> of(UnitSuffix.HP, FEW);
      case N_PER_MM2 -> KSI;
      default -> of(named, MORE);
    };
  }

  private static ShownUnit of(UnitSuffix unit, int digits) {
    return new ShownUnit(" " + unit.label(), unit.fromSi(1), digits);
  }

  void append(TextBytes out, double valueSi) {
    append(out, valueSi, digits);
  }

  /** Two numbers that differ should not read the same: more digits where they are close. */
  void append(TextBytes out, double valueSi, double otherSi) {
    boolean close = valueSi != otherSi && Math.abs(valueSi - otherSi) < 0.01 * Math.abs(valueSi);
    append(out, valueSi, close ? TELLING_APART : digits);
  }

  private void append(TextBytes out, double valueSi, int significant) {
    if (Double.isInfinite(valueSi)) {
      out.append("no limit");
      return;
    }
    TextNumber.append(out, valueSi * perSi, significant);
    out.append(label);
  }
}
