package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.GivenStack;

/** What was given and has no place in this assembly. */
record MisplacedRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("component-not-used", "property-not-applicable", "damper-tuning-for-chatter");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("given");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (GivenStack.Misplaced misplaced : on.built().misplaced()) {
      found.accept(
          Inspection.finding(
              misplaced.code(), Severity.NOTE, Criterion.GATE, "", "given", misplaced.pointer()));
    }
  }
}
