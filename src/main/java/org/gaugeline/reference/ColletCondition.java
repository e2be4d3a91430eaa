package org.gaugeline.reference;

/** State of the collet. */
public enum ColletCondition implements Word {
  NEW("new"),
  USED("used");

  private final String id;

  ColletCondition(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
