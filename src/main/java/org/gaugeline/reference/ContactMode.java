package org.gaugeline.reference;

/** Which surfaces of the spindle end touch. */
public enum ContactMode implements Word {
  TAPER_ONLY("taper-only"),
  TAPER_AND_FACE("taper-and-face"),
  THREE_SURFACE("three-surface");

  private final String id;

  ContactMode(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
