package org.gaugeline.quantity;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text in the making, as UTF-8 bytes: what leaves the service is never a string on its way. One
 * thread at a time; used again after {@link #clear}.
 */
public class TextBytes {
  private static final int LONGEST_NUMBER = 40;
  private static final int MOST_DIGITS = 18;

  /** The text so far, from 0 to {@link #length}. */
  protected byte[] bytes;

  protected int length;

  /**
   * Empty text.
   *
   * @param usualBytes room to begin with; it grows
   */
  public TextBytes(int usualBytes) {
    bytes = new byte[usualBytes];
  }

  public final void clear() {
    length = 0;
  }

  /** Appends what is UTF-8 already. */
  public final void append(byte[] utf8) {
    reserve(utf8.length);
    System.arraycopy(utf8, 0, bytes, length, utf8.length);
    length += utf8.length;
  }

  public final void append(String text) {
    int chars = text.length();
    reserve(2 * chars);
    byte[] out = bytes;
    int at = length;
    for (int i = 0; i < chars; i++) {
      char c = text.charAt(i);
      if (c < 0x80) {
        out[at++] = (byte) c;
      } else if (c < 0x800) {
        out[at++] = (byte) (0xC0 | (c >> 6));
        out[at++] = (byte) (0x80 | (c & 0x3F));
      } else {
        length = at;
        append(text.substring(i).getBytes(StandardCharsets.UTF_8));
        return;
      }
    }
    length = at;
  }

  /** Appends text of ASCII characters alone, such as a name of our own: one copy of memory. */
  public final void appendAscii(String ascii) {
    reserve(ascii.length());
    appendReserved(ascii);
  }

  /** The same where {@link #reserve} has made room for it. */
  @SuppressWarnings("deprecation") // takes the low bytes of characters, which is what ASCII needs
  protected final void appendReserved(String ascii) {
    int chars = ascii.length();
    ascii.getBytes(0, chars, bytes, length);
    length += chars;
  }

  /** Appends one ASCII character. */
  public final void append(char ascii) {
    reserve(1);
    bytes[length++] = (byte) ascii;
  }

  /**
   * Appends the decimal digits·10^−places without trailing zeros after the point.
   *
   * @param digits not negative
   * @param places of them behind the point, 0 to 18
   */
  public final void appendDecimal(long digits, int places) {
    reserve(LONGEST_NUMBER);
    if (places == 0) {
      appendWhole(digits);
      return;
    }
    long scale = DecimalPowers.whole(places);
    long whole = digits < scale ? 0 : digits / scale;
    appendWhole(whole);
    if (whole * scale != digits) {
      bytes[length] = '.';
      int end = length + 1 + places;
      print(digits - whole * scale, length + 1, end);
      while (bytes[end - 1] == '0') {
        end--;
      }
      length = end;
    }
  }

  private void appendWhole(long whole) {
    int digits = 1;
    while (digits <= MOST_DIGITS && whole >= DecimalPowers.whole(digits)) {
      digits++;
    }
    print(whole, length, length + digits);
    length += digits;
  }

  /** Puts the last digits of a number, as many as fit, with zeros before them. */
  private void print(long number, int from, int end) {
    byte[] out = bytes;
    long left = number;
    int at = end - 1;
    for (; left > Integer.MAX_VALUE && at >= from; at--) {
      out[at] = (byte) ('0' + left % 10);
      left /= 10;
    }
    int rest = (int) left;
    for (; at >= from; at--) {
      int tenth = rest / 10;
      out[at] = (byte) ('0' + (rest - 10 * tenth));
      rest = tenth;
    }
  }

  /** Makes room for so many bytes. */
  protected final void reserve(int more) {
    if (bytes.length - length < more) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
    }
  }

  /** Bytes that are held, used or not. */
  public final int capacity() {
    return bytes.length;
  }

  public final byte[] toByteArray() {
    return Arrays.copyOf(bytes, length);
  }

  @Override
  public final String toString() {
    return new String(bytes, 0, length, StandardCharsets.UTF_8);
  }
}
