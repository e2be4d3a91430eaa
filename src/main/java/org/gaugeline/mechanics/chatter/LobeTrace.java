package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.FalsePosition;

/**
 * Follows both eigenvalues q of a cut and a tip along frequency, finds where one of them is real,
 * and keeps the largest: the least depth 1/q that chatters.
 *
 * <p>Not for use by two threads at once.
 */
final class LobeTrace {
  private static final int REFINEMENTS = 12;
  private static final double TOLERANCE = 1e-9;

  /** A sign that changes where branches were exchanged is no crossing. */
  private static final double REAL = 1e-3;

  /** What a straight line between two places may hide of a crossing. */
  private static final double WORTH_SOLVING = 0.9;

  /** Both eigenvalues of the cut and the tip at a frequency. */
  interface At {
    void eigenvalues(double omegaRadPerS, double[] q);
  }

  private final At exact;
  private double[] now = new double[4];
  private double[] before = new double[4];
  private double[] older = new double[4];
  private double nowOmega;
  private double beforeOmega;
  private double olderOmega;
  private int known;
  private final double[] q = new double[4];
  private final double[] line = new double[4];
  private final double[] crest = new double[4];
  private double bestQ;
  private double bestOmega;

  LobeTrace(At exact) {
    this.exact = exact;
  }

  void startAgain() {
    bestQ = 0;
    known = 0;
  }

  /** Leaves the branches: what follows begins elsewhere. */
  void jump() {
    known = 0;
  }

  boolean isUnderWay() {
    return known > 0;
  }

  double bestQ() {
    return bestQ;
  }

  ChatterLimit limit() {
    return bestQ > 0 ? new ChatterLimit(1 / bestQ, bestOmega) : ChatterLimit.NONE;
  }

  /** The next place, evaluated exactly. */
  void step(double omegaRadPerS) {
    exact.eigenvalues(omegaRadPerS, q);
    step(omegaRadPerS, q);
  }

  /** The next place, with its eigenvalues in any order. */
  void step(double omegaRadPerS, double[] eigenvalues) {
    double[] next = advance(omegaRadPerS);
    System.arraycopy(eigenvalues, 0, next, 0, 4);
    if (known > 1) {
      CutMatrix.keepBranches(next, before);
    }
    look();
  }

  /**
   * The next place, with eigenvalues G·κ whose branches are known to continue the last.
   *
   * @param kappa both κ, four numbers from {@code at}
   */
  void step(double omegaRadPerS, double re, double im, double[] kappa, int at) {
    double[] next = advance(omegaRadPerS);
    next[0] = re * kappa[at] - im * kappa[at + 1];
    next[1] = re * kappa[at + 1] + im * kappa[at];
    next[2] = re * kappa[at + 2] - im * kappa[at + 3];
    next[3] = re * kappa[at + 3] + im * kappa[at + 2];
    look();
  }

  /** Moves on by one place; returns where its eigenvalues go. */
  private double[] advance(double omegaRadPerS) {
    double[] free = older;
    older = before;
    before = now;
    now = free;
    olderOmega = beforeOmega;
    beforeOmega = nowOmega;
    nowOmega = omegaRadPerS;
    known++;
    return now;
  }

  private void look() {
    if (known > 1) {
      look(0);
      look(2);
    }
  }

  private void look(int at) {
    if ((before[at + 1] > 0) != (now[at + 1] > 0)) {
      double share = before[at + 1] / (before[at + 1] - now[at + 1]);
      double re = before[at] + share * (now[at] - before[at]);
      if (re > bestQ * WORTH_SOLVING) {
        solve(beforeOmega, before, nowOmega, now, at);
      }
    } else if (known > 2
        && Math.max(before[at], Math.max(older[at], now[at])) > bestQ
        && isTop(older[at + 1], before[at + 1], now[at + 1])) {
      touch(at);
    }
  }

  private static boolean isTop(double left, double centre, double right) {
    return Math.abs(centre) < Math.abs(left)
        && Math.abs(centre) <= Math.abs(right)
        && (left > 0) == (centre > 0);
  }

  /**
   * Looks whether Im q passes zero twice within the last two steps: where rubbing all but quenches
   * the lobes, q only just touches the real axis. A parabola through three places finds the top.
   */
  private void touch(int at) {
    double centre = before[at + 1];
    double back = olderOmega - beforeOmega;
    double ahead = nowOmega - beforeOmega;
    double left = (older[at + 1] - centre) / back;
    double right = (now[at + 1] - centre) / ahead;
    double slope = (left * ahead - right * back) / (ahead - back);
    double bend = (right - left) / (ahead - back);
    double shift = -slope / (2 * bend);
    if ((centre + slope * shift / 2 > 0) == (centre > 0) || !(shift > back && shift < ahead)) {
      return;
    }
    double top = beforeOmega + shift;
    double from = shift < 0 ? olderOmega : beforeOmega;
    double to = shift < 0 ? beforeOmega : nowOmega;
    double[] atFrom = shift < 0 ? older : before;
    double[] atTo = shift < 0 ? before : now;
    between(top, from, atFrom, to, atTo);
    if ((q[at + 1] > 0) != (centre > 0)) {
      System.arraycopy(q, 0, crest, 0, 4);
      solve(from, atFrom, top, crest, at);
      solve(top, crest, to, atTo, at);
    }
  }

  /** Solves for a crossing and keeps it if best. */
  private void solve(double from, double[] atFrom, double to, double[] atTo, int at) {
    FalsePosition bracket = new FalsePosition(from, atFrom[at + 1], to, atTo[at + 1]);
    double w = bracket.next();
    for (int step = 0; step < REFINEMENTS; step++) {
      between(w, from, atFrom, to, atTo);
      double im = q[at + 1];
      if (Math.abs(im) < TOLERANCE * Math.abs(q[at])) {
        break;
      }
      bracket.narrow(w, im);
      w = bracket.next();
    }
    boolean isReal = Math.abs(q[at + 1]) < REAL * Math.abs(q[at]);
    if (isReal && q[at] > bestQ) {
      bestQ = q[at];
      bestOmega = w;
    }
  }

  /** Evaluates exactly, on the branches near the straight line between two places. */
  private void between(double w, double from, double[] atFrom, double to, double[] atTo) {
    exact.eigenvalues(w, q);
    double share = (w - from) / (to - from);
    for (int k = 0; k < 4; k++) {
      line[k] = atFrom[k] + share * (atTo[k] - atFrom[k]);
    }
    CutMatrix.keepBranches(q, line);
  }
}
