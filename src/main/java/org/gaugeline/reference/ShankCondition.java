package org.gaugeline.reference;

/** How clean shank and bore are when clamped. */
public enum ShankCondition implements Word {
  CLEAN("clean"),
  OILY("oily"),
  UNKNOWN("unknown");

  private final String id;

  ShankCondition(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
