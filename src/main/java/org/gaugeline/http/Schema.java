package org.gaugeline.http;

import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the document says of a value: one source of ranges for binding, checking and explaining.
 *
 * @param properties members of an object, in the order of the document
 * @param required members that must be there
 * @param items what an array holds; null for others
 * @param words permitted words; empty where any text is
 * @param pattern what a text must match; null where anything does
 */
record Schema(
    Kind kind,
    Map<String, Schema> properties,
    Set<String> required,
    @Nullable Schema items,
    Range range,
    Size size,
    Set<String> words,
    @Nullable Pattern pattern) {

  /** Kind of JSON value. */
  enum Kind {
    OBJECT("an object"),
    ARRAY("an array"),
    STRING("a string"),
    NUMBER("a number"),
    INTEGER("a whole number"),
    BOOLEAN("true or false");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind as people read it. */
    String words() {
      return words;
    }
  }

  /** Permitted numbers. */
  record Range(double minimum, boolean exclusiveMinimum, double maximum) {
    boolean holds(double value) {
      return Double.isFinite(value)
          && (exclusiveMinimum ? value > minimum : value >= minimum)
          && value <= maximum;
    }
  }

  /** Permitted lengths of texts, in code points, and of arrays. */
  record Size(int minLength, int maxLength, int maxItems) {}

  /** Whether a text is permitted. */
  boolean admits(String text) {
    int length = text.codePointCount(0, text.length());
    Pattern asked = pattern;
    return length >= size.minLength()
        && length <= size.maxLength()
        && (words.isEmpty() || words.contains(text))
        && (asked == null || asked.matcher(text).find());
  }
}
