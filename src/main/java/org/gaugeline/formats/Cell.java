package org.gaugeline.formats;

import java.util.regex.Pattern;

/**
 * Text that a spreadsheet shows and does not run. What begins with {@code = + - @}, a tab or a line
 * end, be it after blanks or quotes, may be taken for a formula; an apostrophe before it makes it
 * text. The same holds for signs behind a semicolon, a bar, a tab or a line end inside of the text,
 * since a spreadsheet that was told of another separator begins a cell there. Plain numbers stay as
 * they are, and characters that no text format carries are left out.
 */
final class Cell {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?");

  /** What begins a formula, in full width too. */
  private static final String SIGNS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private static final String BREAKS = "\t\r\n";
  private static final String SEPARATORS = ";|" + BREAKS;
  private static final String QUOTES = "\"'`\u2018\u2019\u201C\u201D\u00AB\u00BB";
  private static final char DEFUSED = '\'';

  private Cell() {}

  /** The text as a spreadsheet can be given it. */
  static String text(String text) {
    String clean = Characters.printable(text);
    if (NUMBER.matcher(clean).matches()) {
      return clean;
    }
    StringBuilder out = new StringBuilder(clean.length() + 1);
    boolean begins = true;
    for (int at = 0; at < clean.length(); at++) {
      char c = clean.charAt(at);
      if (begins) {
        int ink = ink(clean, at);
        if (isOneOf(at == 0 ? SIGNS + BREAKS : SIGNS, clean, ink)) {
          out.append(DEFUSED).append(clean, at, ink);
          at = ink;
          c = clean.charAt(at);
        }
      }
      out.append(c);
      begins = SEPARATORS.indexOf(c) >= 0;
    }
    return out.toString();
  }

  private static boolean isOneOf(String characters, String text, int at) {
    return at < text.length() && characters.indexOf(text.charAt(at)) >= 0;
  }

  /** Where neither blanks nor quotes stand any more, or the end; breaks are not passed over. */
  private static int ink(String text, int from) {
    int at = from;
    while (at < text.length() && isPassedOver(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isPassedOver(char c) {
    if (BREAKS.indexOf(c) >= 0) {
      return false;
    }
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || Character.isISOControl(c)
        || Character.getType(c) == Character.FORMAT
        || QUOTES.indexOf(c) >= 0;
  }
}
