package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A pair of the table of criteria that is not met, as hard as its margin says. */
record PairRule(Pair pair, String pointer) implements Rule {
  @Override
  public List<String> codes() {
    return List.of(pair.id());
  }

  @Override
  public Criterion criterion() {
    return pair.criterion();
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (Margin margin : on.appraisal().margins()) {
      Severity severity = Inspection.severity(margin.medianRatio(), margin.ratio());
      if (margin.pair() == pair && severity != null) {
        found.accept(new Finding(pair.id(), severity, Reasons.reason(margin), pointer));
      }
    }
  }
}
