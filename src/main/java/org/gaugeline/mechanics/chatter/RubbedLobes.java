package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.TipModel;

/**
 * Limit depth of a milling cut whose flanks damp, at given speeds.
 *
 * <p>The velocity force takes the place of nothing and scales with depth like the chip's, so that
 * the cut is at its limit where an eigenvalue q of c·[(1 − e^{−iωT})·α + 2iω(ℓ/v)·ν]·diag(G_x, G_y)
 * is real, and the least depth is 1/Re q. The matrix changes with speed beyond its phase; so q is
 * followed along ω, one branch at a time, in steps of a twelfth of a turn of ωT. Places at which no
 * q can be larger than the largest found so far are passed over: |q| ≤ c·‖…‖·max|G|.
 *
 * <p>Not for use by two threads at once.
 */
final class RubbedLobes {
  private static final double STEPS_PER_TURN = 12;
  private static final int AROUND_PEAK = 16;
  private static final int REFINEMENTS = 12;
  private static final double TOLERANCE = 1e-9;

  /** What a straight line between two places may hide of a crossing. */
  private static final double WORTH_SOLVING = 0.97;

  private final MillingProcess process;
  private final TipModel tip;
  private final double gainPa;
  private final DirectionalFactors chip;
  private final DirectionalFactors rub;
  private final double chipSize;
  private final double rubSize;
  private final double chipDeterminant;
  private final double mixedDeterminant;
  private final double rubDeterminant;

  /** Frequencies and, four each, the responses there; the larger response of each. */
  private final double[] omega;

  private final double[] g;
  private final double[] most;
  private final int[] peaks;

  // Of the speed that is looked at.
  private double periodS;
  private double rubS;

  /** The two eigenvalues at the place last evaluated, in the order of the branches. */
  private final double[] q = new double[4];

  private final double[] before = new double[4];

  private final double[] older = new double[4];
  private double olderOmega;
  private boolean hasOlder;
  private final double[] keptBefore = new double[4];
  private final double[] kept = new double[4];
  private final double[] onCrest = new double[4];
  private final double[] exact = new double[4];
  private double bestRe;
  private double bestOmega;

  /** Both branches at the ends of the step in which a crossing is solved. */
  private final double[] start = new double[4];

  private final double[] end = new double[4];

  RubbedLobes(MillingProcess process, TipModel tip, double[] support) {
    this.process = process;
    this.tip = tip;
    gainPa = process.teeth() * process.tangentialPa() / (4 * Math.PI);
    MillingEngagement arc = process.engagement();
    chip = DirectionalFactors.of(process);
    rub = DirectionalFactors.rubbing(arc.entryRad(), arc.exitRad());
    chipSize = size(chip);
    rubSize = size(rub);
    chipDeterminant = chip.xx() * chip.yy() - chip.xy() * chip.yx();
    rubDeterminant = rub.xx() * rub.yy() - rub.xy() * rub.yx();
    mixedDeterminant =
        chip.xx() * rub.yy() + chip.yy() * rub.xx() - chip.xy() * rub.yx() - chip.yx() * rub.xy();
    omega = support;
    g = new double[4 * omega.length];
    most = new double[omega.length];
    for (int i = 0; i < omega.length; i++) {
      respond(omega[i], g, 4 * i);
      most[i] = Math.sqrt(Math.max(square(g, 4 * i), square(g, 4 * i + 2)));
    }
    peaks = peaks(most);
  }

  private static double size(DirectionalFactors of) {
    return Math.sqrt(of.xx() * of.xx() + of.xy() * of.xy() + of.yx() * of.yx() + of.yy() * of.yy());
  }

  private static double square(double[] values, int at) {
    return values[at] * values[at] + values[at + 1] * values[at + 1];
  }

  private void respond(double omegaRadPerS, double[] target, int at) {
    tip.x().at(omegaRadPerS, target, at);
    if (tip.x() == tip.y()) {
      target[at + 2] = target[at];
      target[at + 3] = target[at + 1];
    } else {
      tip.y().at(omegaRadPerS, target, at + 2);
    }
  }

  /** Local maxima, largest first. */
  private static int[] peaks(double[] values) {
    int[] found = new int[values.length];
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      boolean rises = i == 0 || values[i] > values[i - 1];
      boolean falls = i == values.length - 1 || values[i] >= values[i + 1];
      if (rises && falls) {
        int at = count++;
        while (at > 0 && values[found[at - 1]] < values[i]) {
          found[at] = found[at - 1];
          at--;
        }
        found[at] = i;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Limit at one speed. */
  ChatterLimit limitAt(double spindleRadPerS) {
    periodS = process.toothPeriodS(spindleRadPerS);
    rubS = 2 * process.damping().timeS(spindleRadPerS);
    bestRe = 0;
    for (int peak : peaks) {
      search(Math.max(1, peak - AROUND_PEAK), Math.min(omega.length - 1, peak + AROUND_PEAK));
    }
    search(1, omega.length - 1);
    return bestRe > 0 ? new ChatterLimit(1 / bestRe, bestOmega) : ChatterLimit.NONE;
  }

  /** Looks between the node before the first and the last, where the bound leaves hope. */
  private void search(int first, int last) {
    boolean evaluated = false;
    for (int i = first; i <= last; i++) {
      double bound = gainPa * (2 * chipSize + omega[i] * rubS * rubSize);
      if (bound * Math.max(most[i - 1], most[i]) <= bestRe) {
        evaluated = false;
        continue;
      }
      if (!evaluated) {
        evaluate(omega[i - 1], g, 4 * (i - 1));
        hasOlder = false;
      }
      follow(i);
      evaluated = true;
    }
  }

  /** Follows both branches from one node to the next. */
  private void follow(int node) {
    double low = omega[node - 1];
    double width = omega[node] - low;
    double turns = width * periodS / (2 * Math.PI);
    int steps = Math.max(1, (int) Math.ceil(turns * STEPS_PER_TURN));
    for (int step = 1; step <= steps; step++) {
      System.arraycopy(before, 0, older, 0, 4);
      System.arraycopy(q, 0, before, 0, 4);
      double share = (double) step / steps;
      if (step == steps) {
        evaluate(omega[node], g, 4 * node);
      } else {
        between(node, share);
        evaluate(low + share * width, exact, 0);
      }
      keepBranches();
      double from = low + width * (step - 1) / steps;
      double to = low + width * share;
      take(from, to, 0);
      take(from, to, 2);
      if (hasOlder) {
        touch(from, to, 0);
        touch(from, to, 2);
      }
      olderOmega = from;
      hasOlder = true;
    }
  }

  /** Responses straight between two nodes. */
  private void between(int node, double share) {
    for (int k = 0; k < 4; k++) {
      double low = g[4 * (node - 1) + k];
      exact[k] = low + share * (g[4 * node + k] - low);
    }
  }

  /** Exchanges the pair where that continues the last one better. */
  private void keepBranches() {
    double straight = distance(0, 0) + distance(2, 2);
    double crossed = distance(0, 2) + distance(2, 0);
    if (crossed < straight) {
      exchange();
    }
  }

  private double distance(int now, int then) {
    double re = q[now] - before[then];
    double im = q[now + 1] - before[then + 1];
    return re * re + im * im;
  }

  private void exchange() {
    double re = q[0];
    double im = q[1];
    q[0] = q[2];
    q[1] = q[3];
    q[2] = re;
    q[3] = im;
  }

  private void take(double from, double to, int at) {
    double imBefore = before[at + 1];
    double im = q[at + 1];
    if ((imBefore > 0) == (im > 0)) {
      return;
    }
    double share = imBefore / (imBefore - im);
    double re = before[at] + share * (q[at] - before[at]);
    if (re > bestRe * WORTH_SOLVING) {
      System.arraycopy(before, 0, keptBefore, 0, 4);
      System.arraycopy(q, 0, kept, 0, 4);
      solve(from, before, to, q, at);
      restore();
    }
  }

  private void restore() {
    System.arraycopy(keptBefore, 0, before, 0, 4);
    System.arraycopy(kept, 0, q, 0, 4);
  }

  /**
   * Looks whether Im q passes zero twice within the last two steps: where rubbing all but quenches
   * the lobes, q only just touches the real axis. A parabola through three places finds the top.
   */
  private void touch(double middle, double to, int at) {
    double left = older[at + 1];
    double centre = before[at + 1];
    double right = q[at + 1];
    boolean top = Math.abs(centre) < Math.abs(left) && Math.abs(centre) <= Math.abs(right);
    if (!top || (left > 0) != (centre > 0) || (right > 0) != (centre > 0)) {
      return;
    }
    double back = olderOmega - middle;
    double ahead = to - middle;
    double slope =
        ((left - centre) * ahead / back - (right - centre) * back / ahead) / (ahead - back);
    double bend = ((right - centre) / ahead - (left - centre) / back) / (ahead - back);
    double shift = -slope / (2 * bend);
    if ((centre + slope * shift / 2 > 0) == (centre > 0) || !(shift > back && shift < ahead)) {
      return;
    }
    if (Math.max(before[at], Math.max(older[at], q[at])) <= bestRe) {
      return;
    }
    System.arraycopy(before, 0, keptBefore, 0, 4);
    System.arraycopy(q, 0, kept, 0, 4);
    double crest = middle + shift;
    evaluateExactly(
        crest, middle, keptBefore, shift < 0 ? olderOmega : to, shift < 0 ? older : kept);
    if ((q[at + 1] > 0) != (centre > 0)) {
      System.arraycopy(q, 0, onCrest, 0, 4);
      solve(shift < 0 ? olderOmega : middle, shift < 0 ? older : keptBefore, crest, onCrest, at);
      solve(crest, onCrest, shift < 0 ? middle : to, shift < 0 ? keptBefore : kept, at);
    }
    restore();
  }

  /** Solves for a crossing with the response itself, by the Illinois rule, and keeps it if best. */
  private void solve(double from, double[] atFrom, double to, double[] atTo, int at) {
    System.arraycopy(atFrom, 0, start, 0, 4);
    System.arraycopy(atTo, 0, end, 0, 4);
    double low = from;
    double high = to;
    double imLow = start[at + 1];
    double imHigh = end[at + 1];
    double w = low - imLow * (high - low) / (imHigh - imLow);
    int side = 0;
    for (int step = 0; step < REFINEMENTS; step++) {
      evaluateExactly(w, from, start, to, end);
      double im = q[at + 1];
      if (Math.abs(im) < TOLERANCE * Math.abs(q[at])) {
        break;
      }
      if ((im > 0) == (imHigh > 0)) {
        high = w;
        imHigh = im;
        imLow = side == 1 ? imLow / 2 : imLow;
        side = 1;
      } else {
        low = w;
        imLow = im;
        imHigh = side == -1 ? imHigh / 2 : imHigh;
        side = -1;
      }
      w = low - imLow * (high - low) / (imHigh - imLow);
    }
    if (q[at] > bestRe) {
      bestRe = q[at];
      bestOmega = w;
    }
  }

  /**
   * Evaluates the response itself and keeps the branches near the straight line between two places.
   */
  private void evaluateExactly(double w, double from, double[] atFrom, double to, double[] atTo) {
    respond(w, exact, 0);
    evaluate(w, exact, 0);
    double share = (w - from) / (to - from);
    for (int k = 0; k < 4; k++) {
      before[k] = atFrom[k] + share * (atTo[k] - atFrom[k]);
    }
    keepBranches();
  }

  /** Eigenvalues at a frequency with given responses. */
  private void evaluate(double w, double[] of, int at) {
    double phase = w * periodS;
    double sigmaRe = 1 - Math.cos(phase);
    double sigmaIm = Math.sin(phase);
    double p = w * rubS;
    // half the trace of (σα + ipν)·diag(G)
    double xxRe = sigmaRe * chip.xx();
    double xxIm = sigmaIm * chip.xx() + p * rub.xx();
    double yyRe = sigmaRe * chip.yy();
    double yyIm = sigmaIm * chip.yy() + p * rub.yy();
    double gxRe = of[at];
    double gxIm = of[at + 1];
    double gyRe = of[at + 2];
    double gyIm = of[at + 3];
    double halfRe = (xxRe * gxRe - xxIm * gxIm + yyRe * gyRe - yyIm * gyIm) / 2;
    double halfIm = (xxRe * gxIm + xxIm * gxRe + yyRe * gyIm + yyIm * gyRe) / 2;
    // determinant: (σ²·|α| + iσp·mixed − p²·|ν|)·G_x·G_y
    double detRe =
        (sigmaRe * sigmaRe - sigmaIm * sigmaIm) * chipDeterminant
            - sigmaIm * p * mixedDeterminant
            - p * p * rubDeterminant;
    double detIm = 2 * sigmaRe * sigmaIm * chipDeterminant + sigmaRe * p * mixedDeterminant;
    double ggRe = gxRe * gyRe - gxIm * gyIm;
    double ggIm = gxRe * gyIm + gxIm * gyRe;
    double re = halfRe * halfRe - halfIm * halfIm - (detRe * ggRe - detIm * ggIm);
    double im = 2 * halfRe * halfIm - (detRe * ggIm + detIm * ggRe);
    double size = Math.sqrt(re * re + im * im);
    double rootRe = Math.sqrt(Math.max(0, (size + re) / 2));
    double rootIm = Math.copySign(Math.sqrt(Math.max(0, (size - re) / 2)), im);
    q[0] = gainPa * (halfRe + rootRe);
    q[1] = gainPa * (halfIm + rootIm);
    q[2] = gainPa * (halfRe - rootRe);
    q[3] = gainPa * (halfIm - rootIm);
  }
}
