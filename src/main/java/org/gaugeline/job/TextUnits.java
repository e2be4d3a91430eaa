package org.gaugeline.job;

import org.gaugeline.reference.Word;

/** Units of human text; no number in an answer depends on it. */
public enum TextUnits implements Word {
  METRIC("metric"),
  INCH("inch");

  private final String id;

  TextUnits(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
