package org.gaugeline.wording;

import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.advice.Recommendation.RuledOut;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.toollist.ListFinding;

/** Appends codes and numbers in words, in the units of text that the job asks for. */
public interface Words {
  void reason(TextBytes out, Reason reason, Job job);

  void caution(TextBytes out, Caution caution, Job job);

  void setUp(TextBytes out, SetUpStep step, Job job);

  void assumption(TextBytes out, Assumption assumption, Job job);

  void change(TextBytes out, Change change, Job job);

  void ruledOut(TextBytes out, RuledOut ruledOut, Job job);

  /** What stops a limit from being higher. */
  void limit(TextBytes out, Limit limit, Job job);

  /** What is wrong, or worth knowing. */
  void finding(TextBytes out, Finding finding, Job job);

  /** What is wrong with a list as a whole, or worth knowing. */
  void listFinding(TextBytes out, ListFinding finding);

  /** What to do about a finding. */
  void remedy(TextBytes out, Finding finding);

  /**
   * What a finding of a code means, whatever its numbers.
   *
   * @throws IllegalArgumentException for a code that no rule has
   */
  Explained explained(String code);

  /**
   * A code in plain words, without numbers.
   *
   * @param meaning what it says
   * @param formula what it is found by
   * @param remedy what to do about it
   */
  record Explained(String meaning, String formula, String remedy) {}
}
