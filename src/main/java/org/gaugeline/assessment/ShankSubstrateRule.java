package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.Substrate;

/** High-speed steel in a shrink bore, which grows almost as much as the bore when heated. */
record ShankSubstrateRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("shank-substrate");
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
    boolean shrink = on.holder().family().gripModel() == GripModel.SHRINK;
    if (shrink && on.job().tool().substrate() == Substrate.HSS) {
      found.accept(
          Inspection.finding(
              "shank-substrate",
              Severity.WARNING,
              Criterion.GRIP,
              "",
              "grip-practice",
              "/tool/substrate"));
    }
  }
}
