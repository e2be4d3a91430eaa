package org.gaugeline.http;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Known names that are close to one that is not. */
final class Nearest {
  private static final int MOST = 3;
  private static final int LONGEST = 200;

  private Nearest() {}

  /** At most three names, nearest first; those that share hardly anything are left out. */
  static List<String> of(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return List.of();
    }
    record Candidate(String name, int distance) {}
    String folded = fold(name);
    int furthest = Math.max(2, folded.length() / 2);
    return known.stream()
        .map(candidate -> new Candidate(candidate, distance(folded, fold(candidate))))
        .filter(candidate -> candidate.distance <= furthest)
        .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
        .limit(MOST)
        .map(Candidate::name)
        .toList();
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.\\-]", "");
  }

  /** Levenshtein distance; 0 or 1 where one begins with the other. */
  private static int distance(String a, String b) {
    if ((!a.isEmpty() && b.startsWith(a)) || (!b.isEmpty() && a.startsWith(b))) {
      return a.length() == b.length() ? 0 : 1;
    }
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
