package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A tool that stands out further than the job needs: runout and bending for nothing. */
record StickOutRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("stick-out-longer-than-needed");
  }

  @Override
  public Criterion criterion() {
    return Criterion.REACH;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("plane-geometry", "accuracy-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double given = on.appraisal().assembly().stickOutM();
    double needed = StickOut.choose(on.context(), on.appraisal().body()).stickOutM();
    double spare = on.context().practice("stickOutSpareM");
    if (given > needed + spare) {
      found.accept(
          Inspection.finding(
              "stick-out-longer-than-needed",
              Severity.NOTE,
              Criterion.REACH,
              given,
              needed,
              Measure.LENGTH,
              "plane-geometry",
              "/assembly/stickOutMm"));
    }
  }
}
