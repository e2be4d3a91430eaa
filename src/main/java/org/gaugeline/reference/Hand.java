package org.gaugeline.reference;

/** Direction of cutting rotation, or hand of the flutes. */
public enum Hand implements Word {
  RIGHT("right"),
  LEFT("left");

  private final String id;

  Hand(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
