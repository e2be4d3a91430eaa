package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** How an assembly or family stands to the job, best first: the order of the constants ranks. */
public enum Standing implements Word {
  /** every pair met at the asked confidence */
  SUITABLE("suitable"),
  /** met at the median, not at the confidence */
  MARGINAL("marginal"),
  /** a pair failed at the median, or a hard limit broken */
  UNSUITABLE("unsuitable"),
  /** none for this shank, interface, stock or shop */
  UNAVAILABLE("unavailable");

  private final String id;

  Standing(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
