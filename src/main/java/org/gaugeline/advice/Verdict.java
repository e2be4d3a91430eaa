package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Severity;
import org.gaugeline.reference.Word;

/** What is said of a given assembly as a whole: the hardest of its findings. */
public enum Verdict implements Word {
  FIT("fit"),
  FIT_WITH_CAUTIONS("fit-with-cautions"),
  UNFIT("unfit");

  private final String id;

  Verdict(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static Verdict of(List<Finding> findings) {
    Verdict verdict = FIT;
    for (Finding finding : findings) {
      if (finding.severity() == Severity.ERROR) {
        return UNFIT;
      }
      if (finding.severity() == Severity.WARNING) {
        verdict = FIT_WITH_CAUTIONS;
      }
    }
    return verdict;
  }
}
