package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** How the depth limit against chatter is found. */
public enum StabilityMethod implements Word {
  ZEROTH_ORDER("zeroth-order"),
  SEMI_DISCRETIZATION("semi-discretization");

  private final String id;

  StabilityMethod(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
