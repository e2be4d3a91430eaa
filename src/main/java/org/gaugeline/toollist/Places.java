package org.gaugeline.toollist;

import java.util.ArrayList;
import java.util.List;

/** Counts lines and remembers the first of them. */
final class Places {
  private final List<LinePlace> first = new ArrayList<>(1);
  private long count;

  void add(LinePlace place) {
    count++;
    if (first.size() < ListFinding.MOST_PLACES) {
      first.add(place);
    }
  }

  long count() {
    return count;
  }

  List<LinePlace> first() {
    return List.copyOf(first);
  }
}
