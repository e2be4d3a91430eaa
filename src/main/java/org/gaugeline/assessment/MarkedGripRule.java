package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A peak torque or pull above what is marked on the holder. */
record MarkedGripRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("marked-torque-exceeded", "marked-axial-exceeded");
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
    double hold = on.holder().ratings().axialHoldN();
    double pull = on.context().forces.pullN();
    if (pull > hold) {
      found.accept(
          Inspection.finding(
              "marked-axial-exceeded",
              Severity.ERROR,
              Criterion.GRIP,
              pull,
              hold,
              Measure.FORCE,
              "given",
              on.gripping() + "/axialHoldN"));
    }
  }
}
