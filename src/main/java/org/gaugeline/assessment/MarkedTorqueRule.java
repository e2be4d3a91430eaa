package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A peak torque above what is marked on the holder. */
record MarkedTorqueRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("marked-torque-exceeded");
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
    return List.of("given");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double marked = on.holder().ratings().clampingTorqueNm();
    double peak = on.context().forces.peakTorqueNm();
    if (peak > marked) {
      found.accept(
          Inspection.finding(
              "marked-torque-exceeded",
              Severity.ERROR,
              Criterion.GRIP,
              peak,
              marked,
              Measure.TORQUE,
              "given",
              on.gripping() + "/clampingTorqueNm"));
    }
  }
}
