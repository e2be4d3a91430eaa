package org.gaugeline.wording;

import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.advice.Recommendation.RuledOut;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;

/** Codes and numbers in words, in the units of text that the job asks for. */
public interface Words {
  String reason(Reason reason, Job job);

  String caution(Caution caution, Job job);

  String setUp(SetUpStep step, Job job);

  String assumption(Assumption assumption, Job job);

  String change(Change change, Job job);

  String ruledOut(RuledOut ruledOut, Job job);

  /** What stops a limit from being higher. */
  String limit(Limit limit, Job job);
}
