package org.gaugeline.http;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Word;

/**
 * A JSON document in the making (RFC 8259), without white space. Members are written in order, each
 * with its name; what opens must be closed by the writer. Names are ASCII and need no escapes.
 *
 * <p>It is text itself so that words are put where they belong, between {@link #startText} and
 * {@link #endText}. Numbers leave with six significant digits.
 */
final class JsonBytes extends TextBytes {
  private static final VarHandle EIGHT_BYTES =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final long ONES = 0x0101010101010101L;
  private static final long HIGH_BITS = 0x8080808080808080L;
  private static final byte[] HEX = "0123456789ABCDEF".getBytes(StandardCharsets.US_ASCII);
  private static final double LARGEST_WHOLE = 1e15;

  private int textStart;

  JsonBytes(int usualBytes) {
    super(usualBytes);
  }

  void object() {
    separate();
    append('{');
  }

  void object(String name) {
    name(name);
    append('{');
  }

  void endObject() {
    append('}');
  }

  void array(String name) {
    name(name);
    append('[');
  }

  void array() {
    separate();
    append('[');
  }

  void endArray() {
    append(']');
  }

  void text(String name, String value) {
    startText(name);
    append(value);
    endText();
  }

  /** A text of our own vocabulary: ASCII letters, digits, stops and hyphens, nothing to escape. */
  void word(String name, String word) {
    name(name);
    quoted(word, 0);
  }

  void texts(String name, Iterable<String> values) {
    array(name);
    values.forEach(this::text);
    endArray();
  }

  /** An item of an array. */
  void text(String value) {
    separate();
    quote();
    append(value);
    endText();
  }

  /** Begins a member whose text is appended next. */
  void startText(String name) {
    name(name);
    quote();
  }

  void endText() {
    if (needsEscape(textStart)) {
      escapeFrom(textStart);
    }
    append('"');
  }

  void flag(String name, boolean value) {
    name(name);
    flag(value);
  }

  void flag(boolean value) {
    separate();
    appendAscii(value ? "true" : "false");
  }

  void whole(String name, long value) {
    name(name);
    whole(value);
  }

  void whole(long value) {
    separate();
    if (value < 0) {
      append('-');
    }
    appendDecimal(Math.abs(value), 0);
  }

  /** A member with six digits; left out where it is not finite. */
  void number(String name, double value) {
    if (Double.isFinite(value)) {
      name(name);
      SixDigits.append(this, value);
    }
  }

  /** A member given in SI, in that unit; left out where it is not finite. */
  void number(String name, double valueSi, UnitSuffix unit) {
    number(name, unit.fromSi(valueSi));
  }

  /** An item of an array; finite. */
  void number(double value) {
    separate();
    SixDigits.append(this, value);
  }

  /** A finite number with all its digits. */
  void exact(double value) {
    if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
      whole((long) value);
    } else {
      separate();
      appendAscii(NumberOutput.toString(value, true));
    }
  }

  /** A value of no fixed kind: a number in SI whose unit the name tells, a word, a flag, a text. */
  void untyped(String name, Object value, String unitName) {
    if (value instanceof Integer number) {
      whole(name, number);
    } else if (value instanceof Number number) {
      number(name, fromSi(unitName, number.doubleValue()));
    } else if (value instanceof Boolean flag) {
      flag(name, flag);
    } else {
      text(name, value instanceof Word word ? word.id() : value.toString());
    }
  }

  /** Minutes and counts per year stay as they are in the engine. */
  private static double fromSi(String name, double value) {
    UnitSuffix unit = UnitSuffix.findOf(name);
    return unit == null || unit == UnitSuffix.MINUTES || unit == UnitSuffix.PER_YEAR
        ? value
        : unit.fromSi(value);
  }

  /** The name of a member whose value is written next. */
  void name(String name) {
    quoted(name, 1);
    bytes[length++] = ':';
  }

  /** What is ASCII and needs no escape, in quotes and after a comma where one is due. */
  private void quoted(String ascii, int moreBytes) {
    reserve(ascii.length() + 3 + moreBytes);
    separate();
    bytes[length++] = '"';
    appendReserved(ascii);
    bytes[length++] = '"';
  }

  private void quote() {
    append('"');
    textStart = length;
  }

  /** What stands before tells whether this is the first of its siblings, or the value of a name. */
  private void separate() {
    byte before = length == 0 ? (byte) ':' : bytes[length - 1];
    if (before != '{' && before != '[' && before != ':') {
      append(',');
    }
  }

  private boolean needsEscape(int from) {
    reserve(Long.BYTES);
    for (int at = from; at < length; at += Long.BYTES) {
      long eight = (long) EIGHT_BYTES.get(bytes, at);
      int left = length - at;
      if (left < Long.BYTES) {
        // What lies behind the text shall not matter: no byte of ones needs an escape.
        eight |= -1L << (Byte.SIZE * left);
      }
      long belowSpace = (eight - ' ' * ONES) & ~eight;
      long found = belowSpace | hasZero(eight ^ ('"' * ONES)) | hasZero(eight ^ ('\\' * ONES));
      if ((found & HIGH_BITS) != 0) {
        return true;
      }
    }
    return false;
  }

  /** High bits set where a byte is 0, and only if one is. */
  private static long hasZero(long eight) {
    return eight - ONES & ~eight;
  }

  private static boolean isEscaped(byte b) {
    return (b >= 0 && b < ' ') || b == '"' || b == '\\';
  }

  private void escapeFrom(int start) {
    byte[] plain = Arrays.copyOfRange(bytes, start, length);
    length = start;
    for (byte b : plain) {
      if (isEscaped(b)) {
        escape(b);
      } else {
        append((char) (b & 0xFF));
      }
    }
  }

  private void escape(byte b) {
    append('\\');
    switch (b) {
      case '"', '\\' -> append((char) b);
      case '\b' -> append('b');
      case '\t' -> append('t');
      case '\n' -> append('n');
      case '\f' -> append('f');
      case '\r' -> append('r');
      default -> {
        appendAscii("u00");
        append((char) HEX[b >> 4]);
        append((char) HEX[b & 0xF]);
      }
    }
  }
}
