package org.gaugeline.wording;

import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextBytes;
import org.gaugeline.quantity.TextNumber;

/** Fills sentences about quantities; a number that is not there is NaN. */
record NumberFilling(
    Job job, double value, double demand, double capacity, Measure measure, String subject)
    implements Filling {
  private static final int PERCENT_DIGITS = 4;

  static NumberFilling of(Reason reason, Job job) {
    return new NumberFilling(
        job, Double.NaN, reason.demand(), reason.capacity(), reason.measure(), reason.subject());
  }

  static NumberFilling of(Caution caution, Job job) {
    return new NumberFilling(
        job, caution.value(), Double.NaN, Double.NaN, caution.measure(), caution.subject());
  }

  static NumberFilling of(SetUpStep step, Job job) {
    return new NumberFilling(job, step.value(), Double.NaN, Double.NaN, step.measure(), "");
  }

  static NumberFilling none(Job job) {
    return new NumberFilling(job, Double.NaN, Double.NaN, Double.NaN, Measure.COUNT, "");
  }

  @Override
  public boolean has(Placeholder placeholder) {
    return switch (placeholder) {
      case VALUE -> !Double.isNaN(value);
      case DEMAND -> !Double.isNaN(demand);
      case CAPACITY, OVERLAP -> !Double.isNaN(capacity);
      case SUBJECT -> !subject.isEmpty();
      case CONFIDENCE, TAIL, MATERIAL, INTERFACE, SPEED -> true;
      case NAME, FROM -> false;
    };
  }

  @Override
  public void write(TextBytes out, Placeholder placeholder) {
    switch (placeholder) {
      case VALUE -> number(out, value, value);
      case DEMAND -> number(out, demand, capacity);
      case CAPACITY -> number(out, capacity, demand);
      case OVERLAP -> number(out, -capacity, -capacity);
      case SUBJECT -> out.append(subject);
      case CONFIDENCE -> percent(out, job.preferences().confidence());
      case TAIL -> percent(out, 1 - job.preferences().confidence());
      case MATERIAL -> out.append(job.workpiece().name());
      case SPEED ->
          ShownUnit.of(Measure.SPINDLE_SPEED, job.textUnits())
              .append(out, job.operation().spindleSpeedRadPerS());
      case INTERFACE -> out.append(job.machine().spindle().id());
      case NAME, FROM ->
          throw new IllegalStateException("{" + placeholder.id() + "} is for members only");
    }
  }

  private void number(TextBytes out, double si, double beside) {
    if (Double.isNaN(si)) {
      out.append("an unknown amount");
      return;
    }
    ShownUnit.of(measure, job.textUnits()).append(out, si, beside);
    if (measure == Measure.MONEY) {
      out.append(' ');
      out.append(job.shop().currency());
    }
  }

  private static void percent(TextBytes out, double share) {
    TextNumber.append(out, 100 * share, PERCENT_DIGITS);
    out.append(" %");
  }
}
