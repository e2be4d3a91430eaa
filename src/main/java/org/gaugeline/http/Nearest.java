package org.gaugeline.http;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.gaugeline.reference.EditDistance;

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
    return EditDistance.between(a, b);
  }
}
