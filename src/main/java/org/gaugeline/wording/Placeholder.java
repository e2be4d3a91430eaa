package org.gaugeline.wording;

import java.util.Locale;

/** What a template may ask for, in braces. */
enum Placeholder {
  /** number of a caution or step, or value of a member */
  VALUE,
  DEMAND,
  CAPACITY,
  /** capacity below zero, as a magnitude */
  OVERLAP,
  SUBJECT,
  /** asked confidence, per cent */
  CONFIDENCE,
  /** what is left of it: the share of cases that may be worse */
  TAIL,
  MATERIAL,
  /** spindle speed of the job */
  SPEED,
  INTERFACE,
  /** name of a member of the request */
  NAME,
  /** present value of a member */
  FROM;

  private final String id = name().toLowerCase(Locale.ROOT);

  String id() {
    return id;
  }

  static Placeholder of(String id) {
    for (Placeholder placeholder : values()) {
      if (placeholder.id.equals(id)) {
        return placeholder;
      }
    }
    throw new IllegalArgumentException("unknown placeholder {" + id + "}");
  }
}
