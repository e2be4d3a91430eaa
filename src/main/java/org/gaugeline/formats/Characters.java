package org.gaugeline.formats;

/** Callers' texts as other formats can carry them. */
final class Characters {
  private static final char REPLACEMENT = '\uFFFD';

  private Characters() {}

  /** The text with U+FFFD for each half of a surrogate pair that stands alone: UTF-8 has none. */
  static String paired(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(isLoneSurrogate(c) ? REPLACEMENT : c));
    return out.toString();
  }

  /**
   * The text without what a document of XML 1.0 cannot hold, escaped or not (production 2, Char):
   * control characters but tab and line ends, lone surrogates, U+FFFE and U+FFFF.
   */
  static String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().filter(Characters::isPrintable).forEach(out::appendCodePoint);
    return out.toString();
  }

  private static boolean isLoneSurrogate(int c) {
    return c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
  }

  private static boolean isPrintable(int c) {
    if (c < ' ') {
      return c == '\t' || c == '\n' || c == '\r';
    }
    return !isLoneSurrogate(c) && c != 0xFFFE && c != 0xFFFF;
  }
}
