package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;

/** A collet nut whose torque nobody states, or with less than it needs. */
record NutTorqueRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("nut-torque-missing", "nut-torque-low");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals("nut-torque-low") ? Severity.WARNING : Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("er-memory");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    ColletSize collet = on.holder().colletSize();
    if (collet == null || on.holder().family().gripModel() != GripModel.COLLET) {
      return;
    }
    double given = on.holder().ratings().nutTorqueNm();
    double usual = collet.nutTorqueNm().median();
    if (Double.isNaN(given)) {
      found.accept(
          Inspection.finding(
              "nut-torque-missing",
              Severity.NOTE,
              Criterion.GRIP,
              Double.NaN,
              usual,
              Measure.TORQUE,
              collet.sourceKey(),
              on.gripping() + "/nutTorqueNm"));
    } else if (given < collet.nutTorqueNm().p05()) {
      found.accept(
          Inspection.finding(
              "nut-torque-low",
              Severity.WARNING,
              Criterion.GRIP,
              given,
              usual,
              Measure.TORQUE,
              collet.sourceKey(),
              on.gripping() + "/nutTorqueNm"));
    }
  }
}
