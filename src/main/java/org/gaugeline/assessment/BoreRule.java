package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A shank in a fixed bore of another size, such as inch in metric. */
record BoreRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("bore-and-shank-differ");
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
    return List.of("grip-practice", "shank-h6-carbide-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double bore = on.holder().boreM();
    double shank = on.job().tool().shankDiameterM();
    if (on.holder().colletSize() == null && !on.holder().takes(shank)) {
      found.accept(
          Inspection.finding(
              "bore-and-shank-differ",
              Severity.ERROR,
              Criterion.GRIP,
              shank,
              bore,
              Measure.LENGTH,
              on.holder().sourceKey(),
              on.gripping() + "/boreMm"));
    }
  }
}
