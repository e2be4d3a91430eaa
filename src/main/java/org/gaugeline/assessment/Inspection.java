package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.GivenStack;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.jspecify.annotations.Nullable;

/**
 * A given assembly on the bench: what the rules look at, and where they put what they find.
 *
 * @param given as it was sent
 * @param built what became of it
 */
public record Inspection(
    JobContext context, GivenAssembly given, GivenStack.Built built, Appraisal appraisal) {

  Job job() {
    return context.job;
  }

  HolderBody holder() {
    return built.body();
  }

  /** Runs every rule, in the order of the catalogue. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Rule rule : Rules.ALL) {
      rule.check(this, findings::add);
    }
    return List.copyOf(findings);
  }

  /** What was left out of the assembly and how it was filled. */
  public List<Assumption> assumptions() {
    return ComponentEstimates.of(context, built, appraisal, given.stickOutM() != null);
  }

  /** Pointer of the component that grips the tool. */
  String gripping() {
    return built.gripping().pointer();
  }

  /** Pointer of the collet; where none is named, of what takes it. */
  String collet() {
    String pointer = gripping();
    for (GivenStack.Placed placed : built.placed()) {
      pointer = placed.kind() == GivenStack.Kind.COLLET ? placed.pointer() : pointer;
    }
    return pointer;
  }

  /** Pointer of the component behind which a joint is, seen from the tool. */
  String pointerOf(Seam seam) {
    int joint = holder().seams().indexOf(seam);
    int seams = 0;
    for (GivenStack.Placed placed : built.placed()) {
      boolean joins = placed.kind() != GivenStack.Kind.COLLET;
      if (joins && seams == joint + 1) {
        return placed.pointer();
      }
      seams += joins ? 1 : 0;
    }
    return "/assembly/components";
  }

  /** A finding about two numbers of one kind. */
  static Finding finding(
      String code,
      Severity severity,
      Criterion criterion,
      double demand,
      double capacity,
      Measure measure,
      String basis,
      String pointer) {
    Tone tone = severity == Severity.NOTE ? Tone.NEUTRAL : Tone.AGAINST;
    return new Finding(
        code,
        severity,
        new Reason(criterion, code, tone, demand, capacity, measure, "", List.of(basis)),
        pointer);
  }

  /** A finding without numbers. */
  static Finding finding(
      String code,
      Severity severity,
      Criterion criterion,
      String subject,
      String basis,
      String pointer) {
    Tone tone = severity == Severity.NOTE ? Tone.NEUTRAL : Tone.AGAINST;
    return new Finding(
        code,
        severity,
        new Reason(
            criterion, code, tone, Double.NaN, Double.NaN, Measure.COUNT, subject, List.of(basis)),
        pointer);
  }

  /**
   * Error where the demand exceeds the median capacity, warning where it is met at the median but
   * not at the asked confidence; null where it is met.
   */
  static @Nullable Severity severity(double medianRatio, double ratio) {
    if (medianRatio < 1) {
      return Severity.ERROR;
    }
    return ratio < 1 ? Severity.WARNING : null;
  }
}
