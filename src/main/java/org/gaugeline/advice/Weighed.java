package org.gaugeline.advice;

import org.gaugeline.assembly.Candidate;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Scores;
import org.gaugeline.job.Job;

/** A candidate with its appraisal, scores and cost: all that ranking needs. */
record Weighed(Candidate candidate, Appraisal appraisal, Scores scores, Economics economics) {

  static Weighed of(
      JobContext context, Economist economist, Candidate candidate, Appraisal appraisal) {
    return new Weighed(
        candidate,
        appraisal,
        scores(context.job().preferences(), appraisal),
        economist.economics(candidate, appraisal));
  }

  /** The same candidate, looked at once more. */
  @SuppressWarnings("ReferenceEquality") // an equal appraisal would only be scored again
  Weighed with(JobContext context, Appraisal other) {
    if (other == appraisal) {
      return this;
    }
    return new Weighed(candidate, other, scores(context.job().preferences(), other), economics);
  }

  /** Overall is the weighted geometric mean: no strength buys back a criterion at zero. */
  private static Scores scores(Job.Preferences weights, Appraisal appraisal) {
    double accuracy = appraisal.score(Criterion.ACCURACY);
    double grip = appraisal.score(Criterion.GRIP);
    double reach = appraisal.score(Criterion.REACH);
    double speed = appraisal.score(Criterion.SPEED);
    double sum =
        weights.accuracyWeight()
            + weights.gripWeight()
            + weights.reachWeight()
            + weights.speedWeight();
    double log =
        weighted(weights.accuracyWeight(), accuracy)
            + weighted(weights.gripWeight(), grip)
            + weighted(weights.reachWeight(), reach)
            + weighted(weights.speedWeight(), speed);
    // rounding of the logarithm must not lift a full score above 100
    double overall = sum > 0 ? Math.min(100, Math.exp(log / sum)) : 0;
    return new Scores(accuracy, grip, reach, speed, overall);
  }

  private static double weighted(double weight, double score) {
    return weight == 0 ? 0 : weight * Math.log(score);
  }
}
