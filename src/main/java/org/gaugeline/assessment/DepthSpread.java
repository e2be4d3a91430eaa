package org.gaugeline.assessment;

import java.util.Arrays;
import org.gaugeline.mechanics.FalsePosition;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.mechanics.spread.StandardNormal;

/**
 * Spread of a stable depth: equally likely limits at the median force, each spread out by the
 * force, to which the depth is inverse. P(depth ≤ x) is the mean over the limits b of P(force over
 * its median ≥ b/x), so that the force need not be drawn (conditional expectation instead of a
 * draw: Rao and Blackwell; memory).
 */
final class DepthSpread {
  private static final double HALF = 0.5;
  private static final double CLOSE = 1e-9;
  private static final int MOST_STEPS = 60;

  /** Score beyond which nothing is left. */
  private static final double FAR = 8;

  /** Score of the force up to which a limit is followed where the next is far. */
  private static final double MOST_BEYOND = 2;

  /** Score of the force to either side of which nothing of two limits is left between them. */
  private static final double GAP = 4;

  private final double[] logM;
  private final double share;

  /** Score of the force by the logarithm of what it is over its median, above and below it. */
  private final double scoreAbove;

  private final double scoreBelow;

  private DepthSpread(double[] limitsM, double share, Quantiles force) {
    this.share = share;
    logM = new double[limitsM.length];
    for (int i = 0; i < logM.length; i++) {
      logM[i] = Math.log(limitsM[i]);
    }
    Arrays.sort(logM);
    scoreAbove = StandardNormal.Z95 / Math.log(force.p95() / force.median());
    scoreBelow = StandardNormal.Z95 / Math.log(force.median() / force.p05());
  }

  /**
   * The spread of limits.
   *
   * @param limitsM at the median force, equally likely; +∞ where nothing chatters
   * @param force spread of the force over its median
   */
  static DepthSpread of(double[] limitsM, Quantiles force) {
    return new DepthSpread(limitsM, 1.0 / limitsM.length, force);
  }

  /**
   * What the spread of limits is at best if only some are known: the others are taken as +∞.
   *
   * @param limitsM those that are known
   * @param count of all
   * @param force spread of the force over its median
   */
  static DepthSpread atBest(double[] limitsM, int count, Quantiles force) {
    return new DepthSpread(limitsM, 1.0 / count, force);
  }

  /** Depth that is undercut with a probability; +∞ where nothing limits so often. */
  double quantileM(double probability) {
    int needed = (int) Math.ceil(probability / share - CLOSE);
    if (needed > logM.length || Double.isInfinite(logM[needed - 1])) {
      return Double.POSITIVE_INFINITY;
    }
    double wanted = StandardNormal.quantile(probability);
    double low = logM[0] - FAR / scoreAbove;
    double high = logM[needed - 1] + FAR / scoreBelow;
    if (share * needed < 1 - CLOSE && restIsFar(needed)) {
      high = logM[needed - 1] + MOST_BEYOND / scoreBelow;
      if (undercut(high) <= probability) {
        // what is needed is just there and the rest is far: those limits are told, if all are known
        return logM.length * share < 1 - CLOSE ? Double.POSITIVE_INFINITY : Math.exp(high);
      }
    }
    // by scores, because one limit alone makes a straight line of them
    FalsePosition bracket = new FalsePosition(low, -FAR, high, FAR);
    double log = bracket.next();
    for (int step = 0; step < MOST_STEPS && bracket.width() > CLOSE; step++) {
      double score = StandardNormal.quantile(undercut(log)) - wanted;
      if (Math.abs(score) < CLOSE) {
        break;
      }
      bracket.narrow(log, Math.max(-FAR, Math.min(FAR, score)));
      log = bracket.next();
    }
    return Math.exp(log);
  }

  /**
   * Whether what comes after so many limits is none, not known, or beyond what the force spreads.
   */
  private boolean restIsFar(int needed) {
    return needed == logM.length
        || logM[needed] - logM[needed - 1] > GAP / scoreBelow + GAP / scoreAbove;
  }

  double probabilityAtLeast(double depthM) {
    return 1 - undercut(Math.log(depthM));
  }

  private double undercut(double log) {
    double sum = 0;
    for (double limit : logM) {
      double above = log - limit;
      // a force without spread has infinite scores
      sum +=
          above == 0
              ? HALF
              : StandardNormal.probabilityAtMost(above * (above < 0 ? scoreAbove : scoreBelow));
    }
    return share * sum;
  }
}
