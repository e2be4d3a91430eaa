package org.gaugeline.wording;

import java.util.function.Consumer;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;

/** What the words say, as strings. */
record Spoken(Words words) {
  String reason(Reason reason, Job job) {
    return said(out -> words.reason(out, reason, job));
  }

  String caution(Caution caution, Job job) {
    return said(out -> words.caution(out, caution, job));
  }

  String setUp(SetUpStep step, Job job) {
    return said(out -> words.setUp(out, step, job));
  }

  String assumption(Assumption assumption, Job job) {
    return said(out -> words.assumption(out, assumption, job));
  }

  String change(Change change, Job job) {
    return said(out -> words.change(out, change, job));
  }

  String limit(Limit limit, Job job) {
    return said(out -> words.limit(out, limit, job));
  }

  String finding(Finding finding, Job job) {
    return said(out -> words.finding(out, finding, job));
  }

  private static String said(Consumer<TextBytes> speech) {
    TextBytes out = new TextBytes(16);
    speech.accept(out);
    return out.toString();
  }
}
