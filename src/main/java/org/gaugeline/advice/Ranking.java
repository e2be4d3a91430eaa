package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.gaugeline.assessment.JobContext;
import org.jspecify.annotations.Nullable;

/**
 * Orders what was weighed: by standing first, then by fit or by cost; what is still equal by price,
 * then the shorter and stiffer first, then by name, so that no order of input shows.
 *
 * <p>The stable depth takes longer to predict than all else and can only lower a place. So the best
 * place without it is looked at first, and given out once no other can pass it any more.
 *
 * @param all everything weighed without its stable depth, best first
 * @param shown the assemblies to name, at most two of a family so that the choice is one of ways to
 *     hold and not of lengths
 * @param bestOfFamily the best of every family that was weighed
 * @param flagged the best of each family that is not shown, best first
 */
record Ranking(
    List<Weighed> all,
    List<Weighed> shown,
    Map<String, Weighed> bestOfFamily,
    List<Weighed> flagged) {
  private static final int MOST_OF_A_FAMILY = 2;

  /** How many candidates have their stable depth judged. */
  enum Search {
    /** Those that can still come to be named. */
    WHERE_IT_MATTERS,
    /** All: what the other must agree with. */
    EXHAUSTIVE
  }

  static Ranking of(JobContext context, Map<String, List<Weighed>> byFamily, Search search) {
    UnaryOperator<Place> further = place -> place.further(context);
    List<Place> places = new ArrayList<>();
    Map<String, PlaceQueue> families = new LinkedHashMap<>();
    byFamily.forEach(
        (family, of) -> {
          List<Place> ofFamily = of.stream().map(one -> Place.of(context, one)).toList();
          List<Place> first =
              search == Search.EXHAUSTIVE
                  ? ofFamily.stream().map(place -> place.inFull(context)).toList()
                  : ofFamily;
          families.put(family, new PlaceQueue(first, further));
          places.addAll(ofFamily);
        });
    List<Weighed> all = new ArrayList<>(places.size());
    places.stream().sorted().forEach(place -> all.add(place.weighed()));
    List<Weighed> shown = shown(families, context.job().preferences().limit());
    Map<String, Weighed> best = new LinkedHashMap<>();
    List<Place> flagged = new ArrayList<>();
    families.forEach(
        (family, queue) -> {
          Place first = queue.first();
          if (first != null) {
            best.put(family, first.weighed());
            if (shown.stream().noneMatch(weighed -> isOf(family, weighed))) {
              flagged.add(first);
            }
          }
        });
    return new Ranking(
        List.copyOf(all), shown, best, flagged.stream().sorted().map(Place::weighed).toList());
  }

  private static boolean isOf(String family, Weighed weighed) {
    return weighed.candidate().holder().family().id().equals(family);
  }

  /** The best of what is left of any family, as long as it is good and its family has room. */
  private static List<Weighed> shown(Map<String, PlaceQueue> families, int limit) {
    List<Weighed> shown = new ArrayList<>();
    while (shown.size() < limit) {
      PlaceQueue best = best(families);
      if (best == null) {
        break;
      }
      Place taken = best.takeOrSettle();
      if (taken != null) {
        shown.add(taken.weighed());
      }
    }
    return List.copyOf(shown);
  }

  /** The queue with the best good candidate in front of which its family has room. */
  private static @Nullable PlaceQueue best(Map<String, PlaceQueue> families) {
    PlaceQueue best = null;
    Place first = null;
    for (PlaceQueue queue : families.values()) {
      Place top = queue.taken() < MOST_OF_A_FAMILY ? queue.top() : null;
      if (top != null && top.isGood() && (first == null || top.compareTo(first) < 0)) {
        best = queue;
        first = top;
      }
    }
    return best;
  }

  /** Place among the assemblies that are named, 1 for the best. */
  @SuppressWarnings("ReferenceEquality") // equal candidates have places of their own
  int rank(Weighed weighed) {
    int rank = 1;
    for (List<Weighed> named : List.of(shown, flagged)) {
      for (Weighed one : named) {
        if (one == weighed) {
          return rank;
        }
        rank++;
      }
    }
    throw new IllegalArgumentException("not named here");
  }

  /** Whether the candidate of something weighed is shown. */
  @SuppressWarnings("ReferenceEquality") // equal candidates have places of their own
  boolean isShown(Weighed weighed) {
    return shown.stream().anyMatch(one -> one.candidate() == weighed.candidate());
  }
}
