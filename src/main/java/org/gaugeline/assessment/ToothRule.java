package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** A tooth that runout leaves without a chip, or with much more than its share. */
record ToothRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("tooth-does-not-cut", "uneven-tooth-load");
  }

  @Override
  public Criterion criterion() {
    return Criterion.ACCURACY;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals("tooth-does-not-cut") ? Severity.WARNING : Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("accuracy-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    Margin runout = on.appraisal().margin(Pair.RUNOUT);
    if (runout != null && on.context().leavesToothIdle(runout.demand())) {
      found.accept(
          Inspection.finding(
              "tooth-does-not-cut",
              Severity.WARNING,
              Criterion.ACCURACY,
              runout.demand(),
              on.job().operation().feedPerToothM(),
              Measure.SMALL_LENGTH,
              "accuracy-practice",
              "/operation"));
    }
    double uneven = on.context().unevenToothFactor(on.appraisal());
    double note = on.context().practice("unevenToothNoteRatio");
    if (uneven > note) {
      found.accept(
          Inspection.finding(
              "uneven-tooth-load",
              Severity.NOTE,
              Criterion.ACCURACY,
              uneven,
              note,
              Measure.RATIO,
              "accuracy-practice",
              "/operation"));
    }
  }
}
