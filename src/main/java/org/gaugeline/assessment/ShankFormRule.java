package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A shank that the family does not take. */
record ShankFormRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("shank-form");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.ERROR);
  }

  @Override
  public List<String> sources() {
    return List.of("grip-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    if (!on.holder().family().shankForms().contains(on.job().tool().shankForm())) {
      found.accept(
          Inspection.finding(
              "shank-form",
              Severity.ERROR,
              Criterion.GRIP,
              on.job().tool().shankForm().id(),
              on.holder().family().sourceKey(),
              "/tool/shank/form"));
    }
  }
}
