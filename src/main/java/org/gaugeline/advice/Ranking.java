package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Standing;
import org.gaugeline.job.RankBy;

/**
 * Orders what was weighed: by standing first, then by fit or by cost; what is still equal by price,
 * then the shorter and stiffer first, then by name, so that no order of input shows.
 *
 * @param all everything weighed, best first
 * @param shown the assemblies to name, at most two of a family so that the choice is one of ways to
 *     hold and not of lengths
 * @param bestOfFamily the best of every family that was weighed
 */
record Ranking(List<Weighed> all, List<Weighed> shown, Map<String, Weighed> bestOfFamily) {
  private static final int MOST_OF_A_FAMILY = 2;

  static Ranking of(JobContext context, Map<String, List<Weighed>> byFamily) {
    List<Weighed> all = new ArrayList<>();
    byFamily.values().forEach(all::addAll);
    all.sort(order(context.job().preferences().rankBy()));
    Map<String, Weighed> best = new LinkedHashMap<>();
    Map<String, Integer> taken = new LinkedHashMap<>();
    List<Weighed> shown = new ArrayList<>();
    for (Weighed weighed : all) {
      String family = weighed.candidate().holder().family().id();
      best.putIfAbsent(family, weighed);
      boolean good = weighed.appraisal().standing().compareTo(Standing.MARGINAL) <= 0;
      if (good
          && shown.size() < context.job().preferences().limit()
          && taken.merge(family, 1, Integer::sum) <= MOST_OF_A_FAMILY) {
        shown.add(weighed);
      }
    }
    return new Ranking(List.copyOf(all), List.copyOf(shown), best);
  }

  /** Place among everything weighed, 1 for the best. */
  @SuppressWarnings("ReferenceEquality") // equal candidates have places of their own
  int rank(Weighed weighed) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i) == weighed) {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("not weighed here");
  }

  /** The best losing assembly of each family that is not shown. */
  List<Weighed> flagged() {
    Set<String> shownFamilies = new LinkedHashSet<>();
    shown.forEach(weighed -> shownFamilies.add(weighed.candidate().holder().family().id()));
    List<Weighed> flagged = new ArrayList<>();
    bestOfFamily.forEach(
        (family, weighed) -> {
          if (!shownFamilies.contains(family)) {
            flagged.add(weighed);
          }
        });
    return flagged;
  }

  private static Comparator<Weighed> order(RankBy rankBy) {
    Comparator<Weighed> standing = Comparator.comparing(w -> w.appraisal().standing());
    Comparator<Weighed> fit = Comparator.comparingDouble(w -> -tenths(w.scores().overall()));
    Comparator<Weighed> cost = Comparator.comparingDouble(w -> w.economics().costPerPart());
    Comparator<Weighed> price = Comparator.comparingDouble(Ranking::outlay);
    Comparator<Weighed> chosen =
        switch (rankBy) {
          case FIT -> fit.thenComparing(price);
          case COST -> cost.thenComparing(fit);
        };
    Comparator<Weighed> shorter =
        Comparator.comparingDouble(w -> w.candidate().holder().projectionM());
    return standing
        .thenComparing(Ranking::nearness)
        .thenComparing(chosen)
        .thenComparing(shorter)
        .thenComparing(w -> w.candidate().holder().ref());
  }

  /** Among those that fail, the one that comes nearest is the best; price does not mend it. */
  private static double nearness(Weighed weighed) {
    return weighed.appraisal().standing() == Standing.UNSUITABLE
        ? -Math.min(1, weighed.appraisal().leastMedianRatio())
        : 0;
  }

  /** Scores closer than this are one score: the models do not tell them apart. */
  private static double tenths(double score) {
    return Math.rint(score * 10);
  }

  private static double outlay(Weighed weighed) {
    double price = weighed.economics().purchase();
    return Double.isNaN(price) ? Double.MAX_VALUE : price;
  }
}
