package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.reference.GripModel;

/** A shank of another tolerance than the h6 that shrink and hydraulic bores are made for. */
record ShankToleranceRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("shank-tolerance");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.WARNING);
  }

  @Override
  public List<String> sources() {
    return List.of("grip-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    GripModel model = on.holder().family().gripModel();
    boolean close = model == GripModel.SHRINK || model == GripModel.PRESSURE;
    String tolerance = on.job().tool().shankTolerance();
    if (close && !(tolerance.equals("h6") || tolerance.equals("h5"))) {
      found.accept(
          Inspection.finding(
              "shank-tolerance",
              Severity.WARNING,
              Criterion.GRIP,
              tolerance,
              "grip-practice",
              "/tool/shank/tolerance"));
    }
  }
}
