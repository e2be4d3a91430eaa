package org.gaugeline.assembly;

import org.gaugeline.reference.Word;

/** What a component does in an assembly. */
public enum Role implements Word {
  HOLDER("holder"),
  ARBOR("arbor"),
  ADAPTER("adapter"),
  DAMPED_BODY("damped-body"),
  EXTENSION("extension"),
  SLEEVE("sleeve"),
  COLLET("collet"),
  COOLANT_COLLET("coolant-collet"),
  FORM_LOCK("form-lock"),
  BACK_STOP_SCREW("back-stop-screw"),
  RETENTION_KNOB("retention-knob"),
  COOLANT_TUBE("coolant-tube");

  private final String id;

  Role(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
