package org.gaugeline.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects what had to be assumed while an intent is completed. */
final class Assumptions {
  private final List<Assumption> made = new ArrayList<>();

  /** The given value, or the assumed one with its reason on record. */
  <T> T given(@Nullable T value, String pointer, T assumed, String reason, String sourceKey) {
    if (value != null) {
      return value;
    }
    return assume(pointer, assumed, reason, sourceKey);
  }

  <T> T assume(String pointer, T assumed, String reason, String sourceKey) {
    made.add(new Assumption(pointer, assumed, reason, sourceKey));
    return assumed;
  }

  List<Assumption> list() {
    return List.copyOf(made);
  }
}
