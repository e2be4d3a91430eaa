package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Word;

/** Numbers as they leave: six significant digits, whole ones without a point. */
final class JsonNumbers {
  private static final double LARGEST_WHOLE = 1e15;

  private JsonNumbers() {}

  /** A finite number as it is. */
  static void write(JsonGenerator json, double value) throws IOException {
    if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
      json.writeNumber((long) value);
    } else {
      json.writeNumber(value);
    }
  }

  /** A member with six digits; left out where it is not finite. */
  static void member(JsonGenerator json, String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeFieldName(name);
      char[] digits = new char[SixDigits.PRINTED];
      json.writeRawValue(digits, 0, SixDigits.print(value, digits));
    }
  }

  /** A member given in SI, in that unit; left out where it is not finite. */
  static void member(JsonGenerator json, String name, double valueSi, UnitSuffix unit)
      throws IOException {
    member(json, name, unit.fromSi(valueSi));
  }

  /** A value of no fixed kind: a number in SI whose unit the name tells, a word, a flag, a text. */
  static void untyped(JsonGenerator json, String name, Object value, String unitName)
      throws IOException {
    if (value instanceof Integer number) {
      json.writeNumberField(name, number);
    } else if (value instanceof Number number) {
      member(json, name, fromSi(unitName, number.doubleValue()));
    } else if (value instanceof Boolean flag) {
      json.writeBooleanField(name, flag);
    } else {
      json.writeStringField(name, value instanceof Word word ? word.id() : value.toString());
    }
  }

  /** Minutes and counts per year stay as they are in the engine. */
  private static double fromSi(String name, double value) {
    UnitSuffix unit = UnitSuffix.findOf(name);
    return unit == null || unit == UnitSuffix.MINUTES || unit == UnitSuffix.PER_YEAR
        ? value
        : unit.fromSi(value);
  }
}
