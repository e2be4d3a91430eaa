package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Measured;

/**
 * What was measured and is not what this assembly should be: something is wrong with it or with its
 * description.
 */
record MeasuredRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("measured-runout-worse", "measured-length-differs", "measured-mass-differs");
  }

  @Override
  public Criterion criterion() {
    return Criterion.ACCURACY;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("measured", "accuracy-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    Measured measured = on.given().measured();
    Assembly assembly = on.appraisal().assembly();
    Assembly unmeasured = assembly.with(Measured.NONE);
    double expected = RunoutModel.of(on.context(), unmeasured).quantileTirM(0.95);
    if (measured.runoutTirM() > expected) {
      found.accept(
          finding(
              "measured-runout-worse",
              measured.runoutTirM(),
              expected,
              Measure.SMALL_LENGTH,
              "/assembly/measured/runoutAtTipUm"));
    }
    double length = unmeasured.gaugeLengthM();
    if (Math.abs(measured.gaugeLengthM() - length)
        > on.context().practice("measuredLengthSpareM")) {
      found.accept(
          finding(
              "measured-length-differs",
              measured.gaugeLengthM(),
              length,
              Measure.LENGTH,
              "/assembly/measured/gaugeLengthMm"));
    }
    double mass = on.appraisal().body().massKg() + on.context().tool(assembly.stickOutM()).massKg();
    double share = on.context().practice("measuredMassShare");
    if (Math.abs(measured.massKg() - mass) > share * mass) {
      found.accept(
          finding(
              "measured-mass-differs",
              measured.massKg(),
              mass,
              Measure.MASS,
              "/assembly/measured/massKg"));
    }
  }

  private static Finding finding(
      String code, double measured, double expected, Measure measure, String pointer) {
    return Inspection.finding(
        code, Severity.NOTE, Criterion.ACCURACY, measured, expected, measure, "measured", pointer);
  }
}
