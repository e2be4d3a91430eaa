package org.gaugeline.wording;

import org.gaugeline.assessment.Reason;

/** Which of a reason's sentences suits its tone and numbers. */
enum Variant {
  FOR("for"),
  AGAINST("against"),
  NEUTRAL("neutral"),
  /** against, though demand does not exceed capacity: too close for the scatter */
  CLOSE("close"),
  /** nothing limits */
  UNLIMITED("unlimited"),
  /** capacity below zero */
  NEGATIVE("negative");

  private final String id;

  Variant(String id) {
    this.id = id;
  }

  String id() {
    return id;
  }

  static Variant of(Reason reason) {
    if (reason.capacity() == Double.POSITIVE_INFINITY) {
      return UNLIMITED;
    }
    if (reason.capacity() < 0) {
      return NEGATIVE;
    }
    return switch (reason.tone()) {
      case FOR -> FOR;
      case NEUTRAL -> NEUTRAL;
      case AGAINST -> reason.demand() <= reason.capacity() ? CLOSE : AGAINST;
    };
  }

  /** The variant that speaks where this one has no sentence of its own. */
  Variant next() {
    return this == CLOSE || this == NEGATIVE ? AGAINST : this;
  }
}
