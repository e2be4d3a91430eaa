package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assembly.Candidates;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Tone;
import org.gaugeline.job.Job;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ShankForm;

/** Why a family has no candidate, and the single change that would admit it. */
final class Absences {
  private Absences() {}

  static Reason reason(Job job, ClampingFamily family, Candidates.Absence absence) {
    String code = absence.code();
    String subject =
        switch (code) {
          case "shank-form" -> job.tool().shankForm().id();
          case "other-cutter" -> job.tool().kind().id();
          default -> job.machine().spindle().id();
        };
    return new Reason(
        Criterion.GATE,
        code,
        Tone.AGAINST,
        Double.NaN,
        code.equals("no-bore-for-shank") ? job.tool().shankDiameterM() : Double.NaN,
        Measure.LENGTH,
        subject,
        List.of(family.sourceKey()));
  }

  /** Only a change that admits the family by itself is proposed. */
  static List<Recommendation.Change> changes(
      Job job, ClampingFamily family, Candidates.Absence absence) {
    if (!absence.single()) {
      return List.of();
    }
    return switch (absence.code()) {
      case "shank-form" ->
          List.of(
              new Recommendation.Change(
                  "/tool/shank/form", job.tool().shankForm().id(), firstForm(family)));
      case "needs-shrink-unit" ->
          List.of(new Recommendation.Change("/shop/shrinkUnit", false, true));
      case "not-in-stock" -> List.of(new Recommendation.Change("/shop/stockOnly", true, false));
      case "no-bore-for-shank" ->
          List.of(
              new Recommendation.Change(
                  "/tool/shank/diameterMm", job.tool().shankDiameterM(), absence.nearestBoreM()));
      case "excluded-by-shop" ->
          List.of(
              new Recommendation.Change(
                  "/shop/excludedFamilies",
                  job.shop().excludedFamilies().stream().sorted().toList(),
                  job.shop().excludedFamilies().stream()
                      .filter(id -> !id.equals(family.id()))
                      .sorted()
                      .toList()));
      default -> List.of();
    };
  }

  private static String firstForm(ClampingFamily family) {
    for (ShankForm form : ShankForm.values()) {
      if (family.shankForms().contains(form)) {
        return form.id();
      }
    }
    throw new IllegalStateException("family " + family.id() + " takes no shank form");
  }
}
