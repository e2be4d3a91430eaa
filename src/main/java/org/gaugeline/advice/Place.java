package org.gaugeline.advice;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Appraiser;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Standing;

/**
 * What an assembly is ordered by, computed once and not at every comparison.
 *
 * @param first what is asked for: fit as a loss, or cost
 * @param second what decides where that is equal: price, or fit
 * @param known how much of its stable depth was looked at
 */
record Place(
    Weighed weighed, Standing standing, double nearness, double first, double second, Known known)
    implements Comparable<Place> {

  /** How much of the stable depth is in a place. */
  enum Known {
    NOTHING,
    /** A bound that the true place cannot pass. */
    AT_BEST,
    /** All there is to know, or to ask. */
    ALL
  }

  /** By all but its stable depth; what fails without it is not looked at any further. */
  static Place of(JobContext context, Weighed weighed) {
    boolean fails = weighed.appraisal().standing() == Standing.UNSUITABLE;
    return of(context, weighed, weighed, fails ? Known.ALL : Known.NOTHING);
  }

  /** With more of its stable depth, where that is judged. */
  Place further(JobContext context) {
    return switch (known) {
      case NOTHING ->
          of(
              context,
              weighed,
              weighed.with(context, Appraiser.withStableDepthAtMost(context, weighed.appraisal())),
              Known.AT_BEST);
      case AT_BEST -> inFull(context);
      case ALL -> this;
    };
  }

  /** With its stable depth, where that is judged. */
  Place inFull(JobContext context) {
    if (isSettled()) {
      return this;
    }
    Weighed whole = weighed.with(context, Appraiser.withStableDepth(context, weighed.appraisal()));
    return of(context, whole, whole, Known.ALL);
  }

  boolean isSettled() {
    return known == Known.ALL;
  }

  /**
   * A place.
   *
   * @param weighed what stands there
   * @param atBest the same by what it is ordered: by what it can have at best
   */
  private static Place of(JobContext context, Weighed weighed, Weighed atBest, Known known) {
    double fit = -told(context, atBest.scores().overall());
    boolean byFit =
        switch (context.job().preferences().rankBy()) {
          case FIT -> true;
          case COST -> false;
        };
    return new Place(
        weighed,
        atBest.appraisal().standing(),
        nearness(weighed),
        byFit ? fit : weighed.economics().costPerPart(),
        byFit ? outlay(weighed) : fit,
        known);
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

  /**
   * Scores closer than this are one score: the models do not tell them apart. A tenth of a point,
   * and a whole one where predicted stable depths move the scores.
   */
  private static double told(JobContext context, double score) {
    double steps = context.judgesStability() ? 1 : 10;
    return Math.rint(score * steps);
  }

  private static double outlay(Weighed weighed) {
    double price = weighed.economics().purchase();
    return Double.isNaN(price) ? Double.MAX_VALUE : price;
  }
}
