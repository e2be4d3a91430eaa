package org.gaugeline.reference;

import java.util.Arrays;
import java.util.Locale;

/** How near a typed name is to a known one; separators and case do not count. */
public final class Nearness {
  /** Further apart than a slip of the keyboard. */
  public static final int FAR = Integer.MAX_VALUE;

  private static final int SHORTEST_START = 3;

  private Nearness() {}

  /** Letters and digits only, in lower case. */
  public static String fold(String name) {
    StringBuilder kept = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      char letter = name.charAt(i);
      if (Character.isLetterOrDigit(letter)) {
        kept.append(letter);
      }
    }
    return kept.toString().toLowerCase(Locale.ROOT);
  }

  /**
   * The number of edits, and on top the number of letters and digits that would have to be replaced
   * whatever their order: blocks of a name are swapped more often than its digits are wrong.
   *
   * @param typed folded name that is not known
   * @param known folded name that is
   * @return smaller is nearer; {@link #FAR} where more than a quarter of the letters, or half of
   *     their order, differ
   */
  public static int of(String typed, String known) {
    if (typed.equals(known)) {
      return 0;
    }
    boolean starts = typed.length() >= SHORTEST_START && known.startsWith(typed);
    if (starts || (known.length() >= SHORTEST_START && typed.startsWith(known))) {
      return 1;
    }
    int replaced = replaced(sorted(typed), sorted(known));
    if (replaced > mostReplaced(typed)) {
      return FAR;
    }
    int edits = EditDistance.between(typed, known);
    return edits > Math.max(1, typed.length() / 2) ? FAR : replaced + edits;
  }

  static int mostReplaced(String typed) {
    return Math.max(1, typed.length() / 4);
  }

  /** Letters of one that the other lacks, whatever their order; both sorted. */
  static int replaced(String a, String b) {
    int common = 0;
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      if (a.charAt(i) == b.charAt(j)) {
        common++;
        i++;
        j++;
      } else if (a.charAt(i) < b.charAt(j)) {
        i++;
      } else {
        j++;
      }
    }
    return Math.max(a.length(), b.length()) - common;
  }

  static String sorted(String text) {
    char[] letters = text.toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }
}
