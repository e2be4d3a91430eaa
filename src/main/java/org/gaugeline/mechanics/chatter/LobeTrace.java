package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import org.gaugeline.mechanics.FalsePosition;

/**
 * Follows both eigenvalues q of a cut and a tip along frequency, finds where one of them is real,
 * and keeps the largest: the least depth 1/q that chatters.
 *
 * <p>Not for use by two threads at once.
 */
final class LobeTrace {
  private static final int REFINEMENTS = 12;

  /** From here on the crossing is as good as found: what is left goes with its square. */
  private static final double CLOSE = 1e-3;

  /** A sign that changes where branches were exchanged is no crossing. */
  private static final double REAL = 1e-3;

  /** What a straight line between two places may hide of a crossing. */
  private static final double WORTH_SOLVING = 0.9;

  /** Both eigenvalues of the cut and the tip at a frequency. */
  interface At {
    void eigenvalues(double omegaRadPerS, double[] q);
  }

  private final At exact;

  /** Places in a row, and both eigenvalues of each, real and imaginary part. */
  private double[] omega = new double[32];

  private double[] places = new double[4 * omega.length];
  private int size;

  private double[] imaginary = new double[0];
  private final double[] q = new double[4];
  private final double[] crest = new double[4];

  /** The largest real eigenvalue found, or what it must exceed to be of interest. */
  private double bestQ;

  private double bestOmega;
  private boolean found;

  LobeTrace(At exact) {
    this.exact = exact;
  }

  /**
   * Starts again.
   *
   * @param leastQ what an eigenvalue must exceed to be of interest, 1/m
   */
  void startAgain(double leastQ) {
    bestQ = leastQ;
    found = false;
    size = 0;
  }

  /** Leaves the branches: what follows begins elsewhere. */
  void jump() {
    size = 0;
  }

  boolean isUnderWay() {
    return size > 0;
  }

  double bestQ() {
    return bestQ;
  }

  ChatterLimit limit() {
    return found ? new ChatterLimit(1 / bestQ, bestOmega) : ChatterLimit.NONE;
  }

  /** Evaluates the next place and looks at what lies before it. */
  void step(double omegaRadPerS) {
    exact.eigenvalues(omegaRadPerS, q);
    int last = size - 1;
    int at = place(omegaRadPerS);
    if (last >= 0) {
      CutMatrix.keepBranches(q, places, 4 * last);
    }
    System.arraycopy(q, 0, places, at, 4);
    look(last + 1);
  }

  /**
   * Looks at places in a row, with eigenvalues G·κ whose branches are known to be continuous.
   *
   * @param omegaRadPerS the places
   * @param re real part of G at each
   * @param im its imaginary part
   * @param kappa both κ
   * @param from where the first place stands in {@code kappa}
   * @param count how many places
   */
  void through(double[] omegaRadPerS, double[] re, double[] im, Kappa kappa, int from, int count) {
    if (imaginary.length < count) {
      imaginary = new double[count];
    }
    across(re, im, kappa.firstRe, kappa.firstIm, from, count);
    through(omegaRadPerS, re, im, kappa, from, count, 0);
    across(re, im, kappa.secondRe, kappa.secondIm, from, count);
    through(omegaRadPerS, re, im, kappa, from, count, 2);
    size = 0;
  }

  /** Imaginary part of G·κ for one branch. */
  private void across(
      double[] re, double[] im, double[] kappaRe, double[] kappaIm, int from, int count) {
    for (int i = 0; i < count; i++) {
      imaginary[i] = re[i] * kappaIm[from + i] + im[i] * kappaRe[from + i];
    }
  }

  /** Only the imaginary part of a branch says whether a place is worth more than a glance. */
  private void through(
      double[] omegaRadPerS,
      double[] re,
      double[] im,
      Kappa kappa,
      int from,
      int count,
      int branch) {
    double older = 0;
    double before = count > 0 ? imaginary[0] : 0;
    for (int i = 1; i < count; i++) {
      double now = imaginary[i];
      if (before * now <= 0 || (i > 1 && isTop(older, before, now))) {
        size = 0;
        for (int k = Math.max(0, i - 2); k <= i; k++) {
          put(omegaRadPerS[k], re[k], im[k], kappa, from + k);
        }
        look(size - 1, branch);
      }
      older = before;
      before = now;
    }
  }

  private void put(double omegaRadPerS, double re, double im, Kappa kappa, int i) {
    int at = place(omegaRadPerS);
    places[at] = re * kappa.firstRe[i] - im * kappa.firstIm[i];
    places[at + 1] = re * kappa.firstIm[i] + im * kappa.firstRe[i];
    places[at + 2] = re * kappa.secondRe[i] - im * kappa.secondIm[i];
    places[at + 3] = re * kappa.secondIm[i] + im * kappa.secondRe[i];
  }

  /** Room for a place; returns where its eigenvalues go. */
  private int place(double omegaRadPerS) {
    if (size == omega.length) {
      omega = Arrays.copyOf(omega, 2 * size);
      places = Arrays.copyOf(places, 8 * size);
    }
    omega[size] = omegaRadPerS;
    return 4 * size++;
  }

  private void look(int i) {
    if (i > 0) {
      look(i, 0);
      look(i, 2);
    }
  }

  private void look(int i, int branch) {
    int now = 4 * i + branch;
    int before = now - 4;
    double im = places[now + 1];
    double imBefore = places[before + 1];
    if ((imBefore > 0) != (im > 0)) {
      double share = imBefore / (imBefore - im);
      double re = places[before] + share * (places[now] - places[before]);
      if (re > bestQ * WORTH_SOLVING) {
        solve(omega[i - 1], places, 4 * (i - 1), omega[i], places, 4 * i, branch);
      }
    } else if (i > 1 && isTop(places[before - 3], imBefore, im)) {
      double most = Math.max(places[before], Math.max(places[before - 4], places[now]));
      if (most > bestQ) {
        touch(i, branch);
      }
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
  private void touch(int i, int branch) {
    int at = 4 * (i - 1) + branch + 1;
    double centre = places[at];
    double back = omega[i - 2] - omega[i - 1];
    double ahead = omega[i] - omega[i - 1];
    double left = (places[at - 4] - centre) / back;
    double right = (places[at + 4] - centre) / ahead;
    double slope = (left * ahead - right * back) / (ahead - back);
    double bend = (right - left) / (ahead - back);
    double shift = -slope / (2 * bend);
    if ((centre + slope * shift / 2 > 0) == (centre > 0) || !(shift > back && shift < ahead)) {
      return;
    }
    double top = omega[i - 1] + shift;
    int from = shift < 0 ? i - 2 : i - 1;
    double low = omega[from];
    double high = omega[from + 1];
    between(top, low, places, 4 * from, high, places, 4 * (from + 1));
    if ((q[branch + 1] > 0) != (centre > 0)) {
      System.arraycopy(q, 0, crest, 0, 4);
      solve(low, places, 4 * from, top, crest, 0, branch);
      solve(top, crest, 0, high, places, 4 * (from + 1), branch);
    }
  }

  /**
   * Solves for a crossing of a branch between two places and keeps it if best. Once close, the
   * straight line through the last two places is followed to the crossing.
   */
  private void solve(
      double low, double[] atLow, int l, double high, double[] atHigh, int h, int branch) {
    double im = atHigh[h + branch + 1];
    FalsePosition bracket = new FalsePosition(low, atLow[l + branch + 1], high, im);
    double re = atHigh[h + branch];
    double w = high;
    double next = bracket.next();
    for (int step = 0; step < REFINEMENTS; step++) {
      between(next, low, atLow, l, high, atHigh, h);
      double wBefore = w;
      double reBefore = re;
      double imBefore = im;
      w = next;
      re = q[branch];
      im = q[branch + 1];
      double share = im == 0 ? 0 : im / (imBefore - im);
      if (Math.abs(im) < CLOSE * Math.abs(re) && Math.abs(share) <= 1) {
        w -= share * (wBefore - w);
        re -= share * (reBefore - re);
        im = 0;
        break;
      }
      bracket.narrow(w, im);
      next = bracket.next();
    }
    boolean isReal = Math.abs(im) < REAL * Math.abs(re);
    if (isReal && re > bestQ) {
      found = true;
      bestQ = re;
      bestOmega = w;
    }
  }

  /** Evaluates exactly, on the branches near the straight line between two places. */
  private void between(
      double w, double low, double[] atLow, int l, double high, double[] atHigh, int h) {
    exact.eigenvalues(w, q);
    double share = (w - low) / (high - low);
    double rest = 1 - share;
    double firstRe = rest * atLow[l] + share * atHigh[h];
    double firstIm = rest * atLow[l + 1] + share * atHigh[h + 1];
    double secondRe = rest * atLow[l + 2] + share * atHigh[h + 2];
    double secondIm = rest * atLow[l + 3] + share * atHigh[h + 3];
    CutMatrix.keepBranches(q, firstRe, firstIm, secondRe, secondIm);
  }
}
