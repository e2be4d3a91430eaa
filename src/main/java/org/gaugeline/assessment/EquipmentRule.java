package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.job.Job;

/** Equipment without which this cannot be put together as it should be. */
record EquipmentRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("equipment-missing");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.ERROR, Severity.WARNING);
  }

  @Override
  public List<String> sources() {
    return List.of("grip-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    Job.Shop shop = on.job().shop();
    if (on.holder().family().needsShrinkUnit() && !shop.shrinkUnit()) {
      found.accept(missing(Severity.ERROR, "heat unit", "/shop/shrinkUnit"));
    }
    if (on.holder().family().needsTorqueWrench() && !shop.torqueWrench()) {
      found.accept(missing(Severity.WARNING, "torque wrench", "/shop/torqueWrench"));
    }
  }

  private static Finding missing(Severity severity, String what, String pointer) {
    return Inspection.finding(
        "equipment-missing", severity, Criterion.GATE, what, "grip-practice", pointer);
  }
}
