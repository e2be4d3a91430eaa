package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** Whether a reason speaks for or against. */
public enum Tone implements Word {
  FOR("for"),
  AGAINST("against"),
  NEUTRAL("neutral");

  private final String id;

  Tone(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
