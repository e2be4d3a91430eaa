package org.gaugeline.http;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.gaugeline.reference.Nearness;

/** Known names that are close to one that is not. */
final class Nearest {
  static final int MOST = 3;
  static final int LONGEST = 200;

  private Nearest() {}

  /** At most three names, nearest first; none where none is near. */
  static List<String> of(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return List.of();
    }
    record Candidate(String name, int distance) {}
    String folded = Nearness.fold(name);
    return known.stream()
        .map(candidate -> new Candidate(candidate, Nearness.of(folded, Nearness.fold(candidate))))
        .filter(candidate -> candidate.distance < Nearness.FAR)
        .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
        .limit(MOST)
        .map(Candidate::name)
        .toList();
  }
}
