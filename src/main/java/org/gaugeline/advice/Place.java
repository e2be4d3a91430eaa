package org.gaugeline.advice;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Appraiser;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Standing;
import org.gaugeline.job.RankBy;

/**
 * What an assembly is ordered by, computed once and not at every comparison.
 *
 * @param first what is asked for: fit as a loss, or cost
 * @param second what decides where that is equal: price, or fit
 * @param isSettled whether its stable depth was looked at, or is not to be
 */
record Place(
    Weighed weighed,
    Standing standing,
    double nearness,
    double first,
    double second,
    RankBy rankBy,
    boolean isSettled)
    implements Comparable<Place> {

  /** By all but its stable depth; what fails without it is not looked at any further. */
  static Place of(Weighed weighed, RankBy rankBy) {
    return of(weighed, rankBy, weighed.appraisal().standing() == Standing.UNSUITABLE);
  }

  /** With its stable depth, where that is judged. */
  Place inFull(JobContext context) {
    return isSettled
        ? this
        : of(
            weighed.with(context, Appraiser.withStableDepth(context, weighed.appraisal())),
            rankBy,
            true);
  }

  private static Place of(Weighed weighed, RankBy rankBy, boolean isSettled) {
    double fit = -tenths(weighed.scores().overall());
    return switch (rankBy) {
      case FIT -> place(weighed, fit, outlay(weighed), rankBy, isSettled);
      case COST -> place(weighed, weighed.economics().costPerPart(), fit, rankBy, isSettled);
    };
  }

  private static Place place(
      Weighed weighed, double first, double second, RankBy rankBy, boolean isSettled) {
    return new Place(
        weighed,
        weighed.appraisal().standing(),
        nearness(weighed),
        first,
        second,
        rankBy,
        isSettled);
  }

  /** Suitable or marginal. */
  boolean isGood() {
    return standing.compareTo(Standing.MARGINAL) <= 0;
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
