package org.gaugeline.reference;

/** The physics by which a clamping family holds; every value has its own model in assessment. */
public enum GripModel implements Word {
  SHRINK("shrink"),
  PRESSURE("pressure"),
  COLLET("collet"),
  SIDE_LOCK("side-lock"),
  ARBOR("arbor"),
  SQUARE_DRIVE("square-drive");

  private final String id;

  GripModel(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
