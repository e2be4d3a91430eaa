package org.gaugeline.job;

import java.util.List;

/** The intent is well formed but cannot be computed; carries every fault that was found. */
public final class IntentFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<IntentFault> faults;

  public IntentFaultException(List<IntentFault> faults) {
    super(faults.size() + " fault(s) in the intent, first: " + faults.get(0).code());
    this.faults = List.copyOf(faults);
  }

  public List<IntentFault> faults() {
    return faults;
  }
}
