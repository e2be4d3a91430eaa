package org.gaugeline.reference;

/** Standard family of the spindle end. */
public enum InterfaceKind implements Word {
  STEEP_TAPER("steep-taper"),
  HOLLOW_TAPER("hollow-taper"),
  POLYGON_TAPER("polygon-taper"),
  BALL_TRACK_TAPER("ball-track-taper");

  private final String id;

  InterfaceKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
