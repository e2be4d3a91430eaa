package org.gaugeline.advice;

import java.util.Comparator;
import java.util.List;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Standing;
import org.jspecify.annotations.Nullable;

/**
 * When an outlay is paid by what it saves: parts = outlay / saving per part.
 *
 * @param parts parts until then
 * @param months the same at the job's parts per year
 * @param against catalogue id of the assembly that it is compared with
 */
public record BreakEven(double parts, double months, String against) {
  private static final double MONTHS_PER_YEAR = 12;

  /**
   * Null where there is nothing to pay, nothing to save, or more to pay than is saved while the
   * thing lasts.
   */
  static @Nullable BreakEven of(
      JobContext context, double outlay, double savedPerPart, double lifeYears, String against) {
    double perYear = context.job().operation().partsPerYear();
    double parts = outlay / savedPerPart;
    boolean pays = outlay > 0 && savedPerPart > 0 && parts <= lifeYears * perYear;
    return pays ? new BreakEven(parts, parts / perYear * MONTHS_PER_YEAR, against) : null;
  }

  /** An assembly that must be bought, against what the shop does now; null where it never pays. */
  static @Nullable BreakEven of(JobContext context, Weighed bought, @Nullable Weighed now) {
    return now == null
        ? null
        : of(
            context,
            bought.economics().purchase(),
            now.economics().runningCostPerPart() - bought.economics().runningCostPerPart(),
            context.practice("holderLifeYears"),
            now.candidate().holder().ref());
  }

  /**
   * What a shop does now: of its own assemblies the cheapest that is suitable or marginal, else the
   * best; null where it owns none for the job.
   */
  static @Nullable Weighed now(Ranking ranking) {
    List<Weighed> owned = ranking.all().stream().filter(w -> w.economics().owned()).toList();
    return owned.stream()
        .filter(w -> w.appraisal().standing().compareTo(Standing.MARGINAL) <= 0)
        .min(Comparator.comparingDouble(w -> w.economics().runningCostPerPart()))
        .orElse(owned.isEmpty() ? null : owned.get(0));
  }

  /**
   * A heat unit, against the cheapest of the best that the shop can do without; null where no
   * shrink-fit is at least as good, or it never pays on this job.
   *
   * @param heated the shrink-fit assemblies that wait for the unit
   */
  static @Nullable BreakEven ofHeatUnit(JobContext context, Ranking ranking, List<Weighed> heated) {
    if (ranking.shown().isEmpty()) {
      return null;
    }
    Standing best = ranking.all().get(0).appraisal().standing();
    Weighed without = cheapest(ranking.all(), best);
    Weighed with = cheapest(heated, best);
    return without == null || with == null
        ? null
        : of(
            context,
            context.practice("heatUnitPrice"),
            without.economics().costPerPart() - with.economics().costPerPart(),
            context.practice("heatUnitLifeYears"),
            without.candidate().holder().ref());
  }

  private static @Nullable Weighed cheapest(List<Weighed> all, Standing least) {
    return all.stream()
        .filter(w -> w.appraisal().standing().compareTo(least) <= 0)
        .min(Comparator.comparingDouble(w -> w.economics().costPerPart()))
        .orElse(null);
  }
}
