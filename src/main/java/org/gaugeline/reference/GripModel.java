package org.gaugeline.reference;

/** The physics by which a clamping family holds; every value has its own model in assessment. */
public enum GripModel implements Word {
  SHRINK("shrink"),
  PRESSURE("pressure"),
  COLLET("collet"),
  SIDE_LOCK("side-lock"),
  INCLINED_SIDE_LOCK("inclined-side-lock"),
  ARBOR("arbor"),
  DISC_ARBOR("disc-arbor"),
  SQUARE_DRIVE("square-drive"),
  FLOATING_COLLET("floating-collet"),
  JAWS("jaws");

  private final String id;

  GripModel(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  /** Whether an exchangeable collet closes on the shank. */
  public boolean usesCollet() {
    return switch (this) {
      case COLLET, FLOATING_COLLET, SQUARE_DRIVE -> true;
      case SHRINK, PRESSURE, SIDE_LOCK, INCLINED_SIDE_LOCK, ARBOR, DISC_ARBOR, JAWS -> false;
    };
  }

  /** Whether the tool may shift in it on purpose, to follow its hole. */
  public boolean givesWay() {
    return switch (this) {
      case FLOATING_COLLET, SQUARE_DRIVE -> true;
      case SHRINK, PRESSURE, COLLET, SIDE_LOCK, INCLINED_SIDE_LOCK, ARBOR, DISC_ARBOR, JAWS ->
          false;
    };
  }
}
