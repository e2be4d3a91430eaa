package org.gaugeline.reference;

/** How a tap makes its thread. */
public enum TapForm implements Word {
  CUT("cut"),
  FORM("form");

  private final String id;

  TapForm(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
