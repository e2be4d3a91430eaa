package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assembly.HolderBody;
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
    RankBy rankBy = context.job().preferences().rankBy();
    List<Place> places = new ArrayList<>();
    for (List<Weighed> family : byFamily.values()) {
      for (Weighed weighed : family) {
        places.add(Place.of(weighed, rankBy));
      }
    }
    Collections.sort(places);
    List<Weighed> all = new ArrayList<>(places.size());
    for (Place place : places) {
      all.add(place.weighed());
    }
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

  /**
   * What an assembly is ordered by, computed once and not at every comparison.
   *
   * @param first what is asked for: fit as a loss, or cost
   * @param second what decides where that is equal: price, or fit
   */
  private record Place(
      Weighed weighed, Standing standing, double nearness, double first, double second)
      implements Comparable<Place> {

    static Place of(Weighed weighed, RankBy rankBy) {
      double fit = -tenths(weighed.scores().overall());
      return switch (rankBy) {
        case FIT -> place(weighed, fit, outlay(weighed));
        case COST -> place(weighed, weighed.economics().costPerPart(), fit);
      };
    }

    private static Place place(Weighed weighed, double first, double second) {
      return new Place(
          weighed, weighed.appraisal().standing(), Ranking.nearness(weighed), first, second);
    }

    @Override
    public int compareTo(Place other) {
      int order = standing.compareTo(other.standing);
      order = order == 0 ? Double.compare(nearness, other.nearness) : order;
      order = order == 0 ? Double.compare(first, other.first) : order;
      order = order == 0 ? Double.compare(second, other.second) : order;
      return order == 0 ? bySize(other) : order;
    }

    /** The shorter first, then by name. */
    private int bySize(Place other) {
      HolderBody holder = weighed.candidate().holder();
      HolderBody others = other.weighed.candidate().holder();
      int order = Double.compare(holder.projectionM(), others.projectionM());
      return order == 0 ? holder.ref().compareTo(others.ref()) : order;
    }
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
