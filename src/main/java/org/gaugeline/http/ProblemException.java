package org.gaugeline.http;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {
  private final transient Problem problem;

  ProblemException(Problem problem) {
    super(problem.detail(), null, false, false);
    this.problem = problem;
  }

  Problem problem() {
    return problem;
  }
}
