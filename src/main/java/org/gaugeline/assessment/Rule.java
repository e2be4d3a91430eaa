package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** One thing to look for in a given assembly. */
public interface Rule {
  /** Codes of what it can find. */
  List<String> codes();

  /** What it bears on. */
  Criterion criterion();

  /**
   * How hard a finding of it can be, hardest first.
   *
   * @param code one of {@link #codes()}
   */
  List<Severity> severities(String code);

  /**
   * Source keys of its equation, or of the practice behind it. A finding names those of its own
   * numbers.
   */
  List<String> sources();

  /** Looks, and reports what it finds. */
  void check(Inspection on, Consumer<Finding> found);
}
