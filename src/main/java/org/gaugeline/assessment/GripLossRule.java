package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** Grip that the speed takes away. */
record GripLossRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("grip-lost-at-speed");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("grip-memory", "grip-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    Appraisal appraisal = on.appraisal();
    Held held = Held.of(on.context(), appraisal.body(), appraisal.assembly());
    double rest = held.at(on.context(), 0).grip().frictionForceN().median();
    double left = held.grip().frictionForceN().median();
    double kept = on.context().practice("gripKeptNoteShare");
    if (left < kept * rest) {
      found.accept(
          Inspection.finding(
              "grip-lost-at-speed",
              Severity.NOTE,
              Criterion.GRIP,
              rest,
              left,
              Measure.FORCE,
              on.holder().family().sourceKey(),
              "/operation"));
    }
  }
}
