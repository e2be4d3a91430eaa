package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A limit of machine or interface that is passed or not. */
record GateRule(String code, String pointer, List<Severity> severities, List<String> sources)
    implements Rule {
  @Override
  public List<String> codes() {
    return List.of(code);
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String any) {
    return severities;
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (Gate gate : on.appraisal().gates()) {
      if (gate.code().equals(code)) {
        found.accept(new Finding(code, gate.severity(), Reasons.reason(gate), pointer));
      }
    }
  }
}
