package org.gaugeline.advice;

import java.util.List;
import java.util.PriorityQueue;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Candidates of one family, best first: each by what it can have at best until it is settled by
 * looking at it in full, which can only put it further back.
 */
final class PlaceQueue {
  private final PriorityQueue<Place> left;
  private final UnaryOperator<Place> further;
  private @Nullable Place first;
  private int taken;

  PlaceQueue(List<Place> places, UnaryOperator<Place> further) {
    this.left = new PriorityQueue<>(places);
    this.further = further;
  }

  /** What stands first, settled or not; null where nothing is left. */
  @Nullable Place top() {
    return left.peek();
  }

  int taken() {
    return taken;
  }

  /**
   * Takes what stands first if it is settled; else looks further, which may put others before it.
   */
  @Nullable Place takeOrSettle() {
    Place top = left.remove();
    if (!top.isSettled()) {
      left.add(further.apply(top));
      return null;
    }
    first = first == null ? top : first;
    taken++;
    return top;
  }

  /** The best of all that were ever here; null where there were none. */
  @Nullable Place first() {
    while (first == null && !left.isEmpty()) {
      takeOrSettle();
    }
    return first;
  }
}
