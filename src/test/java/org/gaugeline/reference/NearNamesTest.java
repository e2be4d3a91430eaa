package org.gaugeline.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.gaugeline.advice.Bench;
import org.junit.jupiter.api.Test;

/** The index finds what comparing with each known name finds. */
class NearNamesTest {
  private static final int MOST = 3;

  @Test
  void findsWhatComparingWithEachFinds() {
    List<String> names = new ArrayList<>(Bench.CATALOGUE.byRef().keySet());
    NearNames index = new NearNames(names);
    int found = 0;
    for (long seed = 0; seed < 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      String typed = mistyped(names.get(random.nextInt(names.size())), random);
      List<String> near = index.nearest(typed, MOST);
      found += near.size();
      assertThat(near).as("seed %d: %s", seed, typed).isEqualTo(oneByOne(typed, names));
    }
    assertThat(found).isGreaterThan(100);
    assertThat(index.nearest("nothing of the kind at all", MOST)).isEmpty();
  }

  private static String mistyped(String name, SplittableRandom random) {
    StringBuilder typed = new StringBuilder(name);
    for (int i = random.nextInt(1, 6); i > 0; i--) {
      int at = random.nextInt(typed.length());
      switch (random.nextInt(4)) {
        case 0 -> typed.deleteCharAt(at);
        case 1 -> typed.insert(at, (char) ('a' + random.nextInt(26)));
        case 2 -> typed.setCharAt(at, (char) ('0' + random.nextInt(10)));
        default -> typed.setLength(Math.max(4, at));
      }
    }
    return typed.toString();
  }

  private static List<String> oneByOne(String typed, List<String> names) {
    record Near(String name, int distance) {}
    String folded = Nearness.fold(typed);
    return names.stream()
        .map(name -> new Near(name, Nearness.of(folded, Nearness.fold(name))))
        .filter(near -> near.distance < Nearness.FAR)
        .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
        .limit(MOST)
        .map(Near::name)
        .toList();
  }
}
