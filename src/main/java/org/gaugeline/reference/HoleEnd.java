package org.gaugeline.reference;

/** Whether a hole has a bottom. */
public enum HoleEnd implements Word {
  BLIND("blind"),
  THROUGH("through");

  private final String id;

  HoleEnd(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
