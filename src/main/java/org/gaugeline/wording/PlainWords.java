package org.gaugeline.wording;

import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.advice.Recommendation.RuledOut;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Word;

/** The code followed by its numbers, for codes that have no template. */
public final class PlainWords implements Words {

  @Override
  public String reason(Reason reason, Job job) {
    return reason.code()
        + subject(reason.subject())
        + number(", demand ", reason.demand(), reason.measure())
        + number(", capacity ", reason.capacity(), reason.measure());
  }

  @Override
  public String caution(Caution caution, Job job) {
    return caution.code()
        + subject(caution.subject())
        + number(", ", caution.value(), caution.measure());
  }

  @Override
  public String setUp(SetUpStep step, Job job) {
    return step.code() + number(", ", step.value(), step.measure());
  }

  @Override
  public String assumption(Assumption assumption, Job job) {
    return assumption.reason();
  }

  @Override
  public String change(Change change, Job job) {
    String name = change.pointer().substring(change.pointer().lastIndexOf('/') + 1);
    return name + " → " + value(name, change.to());
  }

  @Override
  public String ruledOut(RuledOut ruledOut, Job job) {
    return reason(ruledOut.reason(), job);
  }

  private static String value(String name, Object value) {
    if (value instanceof Word word) {
      return word.id();
    }
    if (value instanceof Number number) {
      double shown = SixDigits.round(UnitSuffix.fromSi(name, number.doubleValue()));
      return shown + " " + UnitSuffix.labelOf(name);
    }
    return String.valueOf(value);
  }

  private static String subject(String subject) {
    return subject.isEmpty() ? "" : " (" + subject + ")";
  }

  private static String number(String lead, double valueSi, Measure measure) {
    return Double.isFinite(valueSi)
        ? lead + SixDigits.round(measure.fromSi(valueSi)) + " " + measure.unit()
        : "";
  }
}
