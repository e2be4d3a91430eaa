package org.gaugeline.reference;

/** How coolant reaches the cut. */
public enum Coolant implements Word {
  DRY("dry"),
  FLOOD("flood"),
  MIST("mist"),
  MINIMUM_QUANTITY("minimum-quantity"),
  AIR("air"),
  THROUGH_TOOL("through-tool");

  private final String id;

  Coolant(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
