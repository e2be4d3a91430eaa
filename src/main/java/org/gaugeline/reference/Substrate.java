package org.gaugeline.reference;

/** What the tool's shank and core are made of. */
public enum Substrate implements Word {
  CARBIDE("carbide"),
  HSS("hss"),
  CERMET("cermet"),
  STEEL("steel"),
  HEAVY_METAL("heavy-metal");

  private final String id;

  Substrate(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
