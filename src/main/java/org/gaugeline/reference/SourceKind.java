package org.gaugeline.reference;

/** How much weight a source carries; shown wherever a value of it decides something. */
public enum SourceKind {
  STANDARD("standard"),
  HANDBOOK("handbook"),
  PAPER("paper"),
  DERIVED("derived"),
  COMMON_PRACTICE("common-practice"),
  MEMORY("memory"),
  /** Invented for the demonstration; never mixed with the others. */
  INVENTED("invented");

  private final String id;

  SourceKind(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }
}
