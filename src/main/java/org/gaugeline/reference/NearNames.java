package org.gaugeline.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Thousands of known names, made ready once, so that the ones near a typed name are found without
 * comparing it to each of them letter by letter.
 */
public final class NearNames {
  private static final Comparator<Near> ORDER =
      Comparator.comparingInt(Near::distance).thenComparing(Near::name);

  private final List<Known> known;

  public NearNames(Collection<String> names) {
    this.known = names.stream().map(Known::of).toList();
  }

  private record Known(String name, String folded, String sorted) {
    static Known of(String name) {
      String folded = Nearness.fold(name);
      return new Known(name, folded, Nearness.sorted(folded));
    }
  }

  private record Near(String name, String folded, int distance) {}

  /** At most so many names, nearest first; the same as {@link Nearness} of each would give. */
  public List<String> nearest(String typed, int most) {
    String folded = Nearness.fold(typed);
    List<Near> found = new ArrayList<>();
    for (Near one : atLeast(folded)) {
      // from here on every name is further off than what was found
      if (found.size() == most && one.distance > found.get(most - 1).distance) {
        break;
      }
      int distance = Nearness.of(folded, one.folded);
      if (distance < Nearness.FAR) {
        found.add(new Near(one.name, one.folded, distance));
        found.sort(ORDER);
        found.subList(Math.min(most, found.size()), found.size()).clear();
      }
    }
    return found.stream().map(Near::name).toList();
  }

  /**
   * What may be near, by the least that its distance can be: one that begins alike is at 1 at most,
   * and an edit replaces one letter at most, so that edits and letters together are twice these.
   */
  private List<Near> atLeast(String folded) {
    String sorted = Nearness.sorted(folded);
    List<Near> near = new ArrayList<>();
    for (Known one : known) {
      boolean alike = one.folded.startsWith(folded) || folded.startsWith(one.folded);
      int replaced = Nearness.replaced(sorted, one.sorted);
      if (alike || replaced <= Nearness.mostReplaced(folded)) {
        near.add(new Near(one.name, one.folded, alike ? 0 : 2 * replaced));
      }
    }
    near.sort(ORDER);
    return near;
  }
}
