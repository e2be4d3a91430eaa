package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** The balance grade that is reached at this speed, and what the seat alone spoils. */
record BalanceRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("balance-grade-coarse", "grade-not-attainable");
  }

  @Override
  public Criterion criterion() {
    return Criterion.SPEED;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("iso-16084-scope", "balance-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double reached = on.context().predicted(on.appraisal()).balanceGradeReachedMPerS();
    double usual = on.context().practice("balanceGradeUsualMPerS");
    if (reached > usual) {
      found.accept(note("balance-grade-coarse", reached, usual));
    }
    double seat = on.context().seatGradeMPerS(on.appraisal());
    double fine = on.context().practice("balanceGradeFineMPerS");
    if (seat > fine) {
      found.accept(note("grade-not-attainable", seat, fine));
    }
  }

  private static Finding note(String code, double grade, double than) {
    return Inspection.finding(
        code,
        Severity.NOTE,
        Criterion.SPEED,
        grade,
        than,
        Measure.BALANCE_GRADE,
        "iso-16084-scope",
        "/operation");
  }
}
