package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.quantity.UnitSuffix;

/** Words for the faults that the document's schemas tell. */
final class SchemaFaults {
  private static final int LONGEST_SHOWN = 60;
  private static final int MOST_WORDS_SHOWN = 20;

  private SchemaFaults() {}

  static Fault required(String pointer) {
    return new Fault(pointer, "required", name(pointer) + " is required.", Map.of());
  }

  static Fault nullValue(String pointer, Schema schema) {
    return new Fault(
        pointer,
        "null",
        name(pointer) + " is null. Leave it out where it is not known.",
        Map.of("expected", schema.kind().words()));
  }

  static Fault wrongType(String pointer, JsonNode node, Schema schema) {
    if (node.isNumber() && isNumeric(schema) && !Double.isFinite(node.doubleValue())) {
      return number(pointer, node.doubleValue(), schema.range());
    }
    String expected = schema.kind().words();
    String cause =
        node.isTextual() && isNumeric(schema)
            ? " Maybe a number was sent as text; the unit stands in the name, not in the value."
            : node.isNumber() && schema.kind() == Schema.Kind.INTEGER
                ? " Maybe a count was sent with a decimal point."
                : "";
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", shown(node));
    parameters.put("expected", expected);
    return new Fault(
        pointer,
        "wrong-type",
        name(pointer) + " must be " + expected + ", was " + shown(node) + "." + cause,
        parameters);
  }

  private static boolean isNumeric(Schema schema) {
    return schema.kind() == Schema.Kind.NUMBER || schema.kind() == Schema.Kind.INTEGER;
  }

  static Fault unknownField(String pointer, String field, Collection<String> known) {
    List<String> nearest = Nearest.of(field, known);
    String likely =
        nearest.isEmpty() ? " Check the spelling." : " Maybe " + nearest.get(0) + " was meant.";
    return new Fault(
        pointer,
        "unknown-field",
        "There is no field " + shown(field) + " here." + likely,
        nearest.isEmpty() ? Map.of() : Map.of("nearest", nearest));
  }

  static Fault tooMany(String pointer, int size, int maxItems) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", size);
    parameters.put("maxItems", maxItems);
    return new Fault(
        pointer,
        "too-many",
        name(pointer) + " has " + size + " entries, at most " + maxItems + " are read.",
        parameters);
  }

  static Fault text(String pointer, String text, Schema schema) {
    String name = name(pointer);
    if (text.chars().anyMatch(Character::isISOControl)) {
      return new Fault(
          pointer,
          "control-character",
          name + " holds a control character. Maybe a line break or tab was copied along.",
          Map.of());
    }
    if (!schema.words().isEmpty()) {
      return unknownWord(pointer, text, schema.words());
    }
    int length = text.codePointCount(0, text.length());
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", length);
    parameters.put("minLength", schema.size().minLength());
    parameters.put("maxLength", schema.size().maxLength());
    if (length < schema.size().minLength() || length > schema.size().maxLength()) {
      return new Fault(
          pointer,
          length < schema.size().minLength() ? "too-short" : "too-long",
          name
              + " has "
              + length
              + " characters, "
              + schema.size().minLength()
              + " to "
              + schema.size().maxLength()
              + " are read.",
          parameters);
    }
    return new Fault(
        pointer,
        "wrong-form",
        name
            + " is "
            + shown(text)
            + ", which does not match "
            + schema.pattern()
            + "."
            + LikelyCause.ofForm(text, schema),
        Map.of("actual", shown(text)));
  }

  private static Fault unknownWord(String pointer, String text, Collection<String> words) {
    List<String> nearest = Nearest.of(text, words);
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", shown(text));
    parameters.put("allowed", new ArrayList<>(words));
    if (!nearest.isEmpty()) {
      parameters.put("nearest", nearest);
    }
    String list = words.size() > MOST_WORDS_SHOWN ? "the listed words" : String.join(", ", words);
    return new Fault(
        pointer,
        "unknown-value",
        name(pointer)
            + " is "
            + shown(text)
            + ", which is not one of "
            + list
            + "."
            + (nearest.isEmpty() ? "" : " Maybe " + nearest.get(0) + " was meant."),
        parameters);
  }

  static Fault number(String pointer, double value, Schema.Range range) {
    String name = name(pointer);
    String unit = UnitSuffix.labelOf(name);
    Map<String, Object> parameters = new LinkedHashMap<>();
    if (!Double.isFinite(value)) {
      return new Fault(
          pointer,
          "not-finite",
          name
              + " is further from 0 than any number that can be computed with. Maybe an exponent"
              + " slipped.",
          parameters);
    }
    parameters.put("actual", value);
    if (!unit.isEmpty()) {
      parameters.put("unit", unit);
    }
    boolean low = value <= range.minimum();
    String relation = low ? range.exclusiveMinimum() ? "> " : "≥ " : "≤ ";
    double bound = low ? range.minimum() : range.maximum();
    parameters.put(
        low ? range.exclusiveMinimum() ? "exclusiveMinimum" : "minimum" : "maximum", bound);
    String of = unit.isEmpty() ? "" : " " + unit;
    return new Fault(
        pointer,
        "out-of-range",
        name
            + " ("
            + plain(value)
            + of
            + ") must be "
            + relation
            + plain(bound)
            + of
            + "."
            + LikelyCause.of(unit, value, low),
        parameters);
  }

  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  static String name(String pointer) {
    if (pointer.isEmpty()) {
      return "The body";
    }
    int last = pointer.lastIndexOf('/');
    String name = pointer.substring(last + 1).replace("~1", "/").replace("~0", "~");
    boolean index = !name.isEmpty() && name.chars().allMatch(Character::isDigit);
    return index && last > 0 ? name(pointer.substring(0, last)) + "[" + name + "]" : shown(name);
  }

  private static String shown(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT -> "an object";
      case ARRAY -> "an array";
      case STRING -> '"' + shown(node.textValue()) + '"';
      default -> shown(node.asText());
    };
  }

  /** A text of the caller's, cut to what a message bears. */
  static String shown(String text) {
    int end =
        text.offsetByCodePoints(0, Math.min(LONGEST_SHOWN, text.codePointCount(0, text.length())));
    String cut = end < text.length() ? text.substring(0, end) + "…" : text;
    return cut.replaceAll("\\p{Cntrl}", "�");
  }
}
