package org.gaugeline.reference;

/**
 * How the tool offers itself to the holder; cylindrical, flat and inclined-flat are DIN 6535 HA, HB
 * and HE.
 */
public enum ShankForm implements Word {
  CYLINDRICAL("cylindrical"),
  FLAT("flat"),
  INCLINED_FLAT("inclined-flat"),
  FORM_LOCKED("form-locked"),
  PILOT_BORE("pilot-bore"),
  SQUARE_DRIVE("square-drive");

  private final String id;

  ShankForm(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
