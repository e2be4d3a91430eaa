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
    int replaced = replaced(typed, known);
    if (replaced > Math.max(1, typed.length() / 4)) {
      return FAR;
    }
    int edits = EditDistance.between(typed, known);
    return edits > Math.max(1, typed.length() / 2) ? FAR : replaced + edits;
  }

  private static int replaced(String a, String b) {
    char[] ofA = sorted(a);
    char[] ofB = sorted(b);
    int common = 0;
    int i = 0;
    int j = 0;
    while (i < ofA.length && j < ofB.length) {
      if (ofA[i] == ofB[j]) {
        common++;
        i++;
        j++;
      } else if (ofA[i] < ofB[j]) {
        i++;
      } else {
        j++;
      }
    }
    return Math.max(ofA.length, ofB.length) - common;
  }

  private static char[] sorted(String text) {
    char[] letters = text.toCharArray();
    Arrays.sort(letters);
    return letters;
  }
}
