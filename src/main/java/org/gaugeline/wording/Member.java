package org.gaugeline.wording;

import java.util.Locale;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.quantity.UnitSuffix;

/**
 * A member of the request as text speaks of it.
 *
 * @param words its name in words
 * @param money whether its number is in the shop's currency
 */
record Member(String words, ShownUnit metric, ShownUnit inch, boolean money) {

  static Member of(String pointer, String words) {
    String name = lastOf(pointer);
    UnitSuffix unit = UnitSuffix.findOf(name);
    boolean money = name.equals("hourlyRate") || name.equals("price");
    if (unit == null) {
      return new Member(words, ShownUnit.BARE, ShownUnit.BARE, money);
    }
    if (unit == UnitSuffix.MINUTES) {
      // minutes stay minutes in the engine
      ShownUnit minutes = new ShownUnit(" min", 1, ShownUnit.BARE.digits());
      return new Member(words, minutes, minutes, money);
    }
    if (unit == UnitSuffix.PER_YEAR) {
      return new Member(words, ShownUnit.BARE, ShownUnit.BARE, money);
    }
    return new Member(
        words, ShownUnit.of(unit, TextUnits.METRIC), ShownUnit.of(unit, TextUnits.INCH), money);
  }

  /** A member that has no name of its own in the templates: its words are those of its pointer. */
  static Member of(String pointer) {
    String name = lastOf(pointer);
    UnitSuffix unit = UnitSuffix.findOf(name);
    int end = unit == null ? name.length() : name.length() - unit.suffix().length();
    StringBuilder words = new StringBuilder(name.length() + 8);
    for (int i = 0; i < end; i++) {
      char letter = name.charAt(i);
      if (Character.isUpperCase(letter)) {
        words.append(' ');
      }
      words.append(letter);
    }
    return of(pointer, words.toString().toLowerCase(Locale.ROOT));
  }

  private static String lastOf(String pointer) {
    return pointer.substring(pointer.lastIndexOf('/') + 1);
  }
}
