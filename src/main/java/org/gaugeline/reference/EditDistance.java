package org.gaugeline.reference;

/** How far two spellings are apart. */
public final class EditDistance {
  private EditDistance() {}

  /**
   * Levenshtein distance: the least number of characters to insert, delete or replace.
   *
   * @param a one spelling
   * @param b the other
   * @return number of edits, 0 if equal
   */
  public static int between(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int substitute = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(substitute, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
