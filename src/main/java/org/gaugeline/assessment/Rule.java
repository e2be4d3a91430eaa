package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;

/** One thing to look for in a given assembly. */
public interface Rule {
  /** Codes of what it can find. */
  List<String> codes();

  /** What it bears on. */
  Criterion criterion();

  /** Looks, and reports what it finds. */
  void check(Inspection on, Consumer<Finding> found);
}
