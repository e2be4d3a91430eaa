package org.gaugeline.toollist;

import org.gaugeline.assessment.Severity;
import org.gaugeline.reference.Word;

/** The least hard finding that fails a list. */
public enum FailOn implements Word {
  ERROR("error", Severity.ERROR),
  WARNING("warning", Severity.WARNING);

  private final String id;
  private final Severity least;

  FailOn(String id, Severity least) {
    this.id = id;
    this.least = least;
  }

  @Override
  public String id() {
    return id;
  }

  /** Whether a finding that hard fails a list. */
  public boolean failedBy(Severity severity) {
    return severity.compareTo(least) >= 0;
  }
}
