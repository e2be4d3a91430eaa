package org.gaugeline.formats;

/**
 * A test case.
 *
 * @param type code of what failed it; empty where it passed
 * @param message what failed it in one sentence; empty where it passed
 * @param body everything that was found
 */
record JunitCase(String name, Outcome outcome, String type, String message, String body) {
  /** What became of a test case. */
  enum Outcome {
    PASSED,
    FAILURE,
    ERROR
  }

  static JunitCase passed(String name, String body) {
    return new JunitCase(name, Outcome.PASSED, "", "", body);
  }
}
