package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** How hard a finding or caution is. */
public enum Severity implements Word {
  NOTE("note"),
  WARNING("warning"),
  ERROR("error");

  private final String id;

  Severity(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
