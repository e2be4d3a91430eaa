package org.gaugeline.job;

import java.util.List;

/** An intent that cannot be completed; carries all its faults. */
public final class IntentFaultException extends RuntimeException {
  private final transient List<IntentFault> faults;

  public IntentFaultException(List<IntentFault> faults) {
    super("the intent has " + faults.size() + " faults", null, false, false);
    this.faults = List.copyOf(faults);
  }

  public List<IntentFault> faults() {
    return faults;
  }
}
