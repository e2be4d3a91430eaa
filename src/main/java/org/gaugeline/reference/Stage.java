package org.gaugeline.reference;

/** How far the operation is from the finished surface. */
public enum Stage implements Word {
  ROUGHING("roughing"),
  SEMI_FINISHING("semi-finishing"),
  FINISHING("finishing");

  private final String id;

  Stage(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
