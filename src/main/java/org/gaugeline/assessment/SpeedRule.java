package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/**
 * One rated speed that the asked one exceeds.
 *
 * @param scatters whether it is known with a spread only; what is marked or given has none
 */
record SpeedRule(String code, boolean scatters, List<String> sources) implements Rule {
  @Override
  public List<String> codes() {
    return List.of(code);
  }

  @Override
  public Criterion criterion() {
    return Criterion.SPEED;
  }

  @Override
  public List<Severity> severities(String any) {
    return scatters ? List.of(Severity.ERROR, Severity.WARNING) : List.of(Severity.ERROR);
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    double asked = on.job().operation().spindleSpeedRadPerS();
    Appraisal appraisal = on.appraisal();
    for (SpeedLimits.Rated rated :
        SpeedLimits.all(on.context(), appraisal.body(), appraisal.assembly())) {
      Severity severity =
          Inspection.severity(rated.medianRadPerS() / asked, rated.safeRadPerS() / asked);
      if (rated.code().equals(code) && severity != null) {
        double capacity = severity == Severity.ERROR ? rated.medianRadPerS() : rated.safeRadPerS();
        found.accept(
            Inspection.finding(
                code,
                severity,
                Criterion.SPEED,
                asked,
                capacity,
                Measure.SPINDLE_SPEED,
                rated.basis(),
                "/operation"));
      }
    }
  }
}
