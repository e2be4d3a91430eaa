package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A pair of the table of criteria that is not met, as hard as its margin says. */
record PairRule(Pair pair, String pointer, List<String> sources) implements Rule {
  @Override
  public List<String> codes() {
    return List.of(pair.id());
  }

  @Override
  public Criterion criterion() {
    return pair.criterion();
  }

  @Override
  public List<Severity> severities(String any) {
    return switch (pair) {
      case TOOL_GAP, INSERTION -> List.of(Severity.ERROR); // geometry does not scatter
      case GAP,
          RUNOUT,
          SIZE_ERROR,
          ROUGHNESS,
          SLIP,
          PULL_OUT,
          STOP_TORQUE,
          PUSH_IN,
          STABLE_DEPTH,
          SPINDLE_SPEED,
          UNBALANCE_FORCE ->
          List.of(Severity.ERROR, Severity.WARNING);
    };
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (Margin margin : on.appraisal().margins()) {
      Severity severity = margin.severity();
      if (margin.pair() == pair && severity != null) {
        found.accept(new Finding(pair.id(), severity, Reasons.reason(margin), pointer));
      }
    }
  }
}
