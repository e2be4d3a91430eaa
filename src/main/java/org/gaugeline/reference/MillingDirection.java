package org.gaugeline.reference;

/** Whether the chip starts thick (down) or thin (up). */
public enum MillingDirection implements Word {
  DOWN("down"),
  UP("up");

  private final String id;

  MillingDirection(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
