package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** What an assembly is judged by; the gate passes or stops and carries no score. */
public enum Criterion implements Word {
  ACCURACY("accuracy"),
  GRIP("grip"),
  REACH("reach"),
  SPEED("speed"),
  GATE("gate");

  private final String id;

  Criterion(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
