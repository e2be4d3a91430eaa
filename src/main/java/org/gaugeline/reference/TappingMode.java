package org.gaugeline.reference;

/** How spindle and feed are coupled in tapping. */
public enum TappingMode implements Word {
  SYNCHRONOUS("synchronous"),
  FLOATING("floating");

  private final String id;

  TappingMode(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
