package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A tool so far in that its flutes are clamped. */
record FluteRule() implements Rule {
  private static final double TOUCHING_M = 1e-6;

  @Override
  public List<String> codes() {
    return List.of("flutes-clamped");
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
    double out = on.appraisal().assembly().stickOutM();
    double flutes = on.job().tool().fluteLengthM();
    if (out < flutes - TOUCHING_M) {
      found.accept(
          Inspection.finding(
              "flutes-clamped",
              Severity.ERROR,
              Criterion.GRIP,
              flutes,
              out,
              Measure.LENGTH,
              "grip-practice",
              "/assembly/stickOutMm"));
    }
  }
}
