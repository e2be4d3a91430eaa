package org.gaugeline.http;

/**
 * Finds in a body what a JSON parser lets pass and I-JSON (RFC 7493) does not: bytes that are not
 * UTF-8 (RFC 3629), and escapes of lone surrogates.
 */
final class TextScan {
  private TextScan() {}

  /** Index of the first byte at fault, or −1. */
  static int firstFault(byte[] body) {
    int i = 0;
    while (i < body.length) {
      byte b = body[i];
      if (b == '\\') {
        int length = escapeLength(body, i);
        if (length < 0) {
          return i;
        }
        i += length;
      } else if (b > 0) {
        i++;
      } else {
        int length = sequenceLength(body, i);
        if (length < 0) {
          return i;
        }
        i += length;
      }
    }
    return -1;
  }

  /** Length of the escape, a pair of surrogates taken as one; −1 for a lone surrogate. */
  private static int escapeLength(byte[] body, int at) {
    int unit = codeUnit(body, at);
    if (unit < 0 || unit < 0xD800 || unit > 0xDFFF) {
      return unit < 0 ? 2 : 6;
    }
    int second = unit <= 0xDBFF ? codeUnit(body, at + 6) : -1;
    return second >= 0xDC00 && second <= 0xDFFF ? 12 : -1;
  }

  /** The code unit of a four-digit escape that starts there; −1 for anything else. */
  private static int codeUnit(byte[] body, int at) {
    if (at + 6 > body.length || body[at] != '\\' || body[at + 1] != 'u') {
      return -1;
    }
    int unit = 0;
    for (int i = at + 2; i < at + 6; i++) {
      int digit = Character.digit(body[i], 16);
      if (digit < 0) {
        return -1;
      }
      unit = unit << 4 | digit;
    }
    return unit;
  }

  /** Length of the UTF-8 sequence of a byte that is not ASCII; −1 where it is not one. */
  private static int sequenceLength(byte[] body, int at) {
    int lead = body[at] & 0xFF;
    int length = lead < 0xC2 ? -1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : lead < 0xF5 ? 4 : -1;
    if (length < 0 || at + length > body.length) {
      return -1;
    }
    for (int i = at + 1; i < at + length; i++) {
      if ((body[i] & 0xC0) != 0x80) {
        return -1;
      }
    }
    int second = body[at + 1] & 0xFF;
    boolean overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    boolean surrogate = lead == 0xED && second > 0x9F;
    boolean beyond = lead == 0xF4 && second > 0x8F;
    return overlong || surrogate || beyond ? -1 : length;
  }
}
