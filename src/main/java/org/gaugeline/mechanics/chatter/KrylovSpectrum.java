package org.gaugeline.mechanics.chatter;

import java.util.SplittableRandom;

/**
 * Largest eigenvalue in size of a linear map known by its action, from the Hessenberg matrix of
 * Arnoldi's method with twice repeated orthogonalisation (Saad, Numerical Methods for Large
 * Eigenvalue Problems, ch. 6). The basis grows until the eigenvalue stands still, so that clusters
 * of equal size, on which power iteration stalls, are resolved.
 */
final class KrylovSpectrum {
  private static final int FIRST_LOOK = 16;
  private static final int LOOK_EVERY = 8;
  private static final int MOST = 160;
  private static final double SETTLED = 1e-8;
  private static final double BREAKDOWN = 1e-13;
  private static final long START_VECTOR = 17;

  private KrylovSpectrum() {}

  /** A linear map of vectors of one length. */
  interface LinearMap {
    void apply(double[] from, double[] to);
  }

  /** Real and imaginary part of the largest eigenvalue; the imaginary part is not negative. */
  static double[] dominant(int length, LinearMap map) {
    int most = Math.min(length, MOST);
    double[][] basis = new double[most + 1][length];
    double[][] hessenberg = new double[most + 1][most];
    // A fixed vector without symmetry, so that no eigenvector is missed and answers repeat.
    SplittableRandom random = new SplittableRandom(START_VECTOR);
    for (int i = 0; i < length; i++) {
      basis[0][i] = random.nextDouble() - 0.5;
    }
    scale(basis[0], 1 / norm(basis[0]));
    double[] last = {0, 0};
    int standing = 0;
    for (int j = 0; j < most; j++) {
      boolean exhausted = extend(map, basis, hessenberg, j);
      int order = j + 1;
      boolean look = order >= FIRST_LOOK && (order - FIRST_LOOK) % LOOK_EVERY == 0;
      if (look || exhausted || order == most) {
        double[] now = largest(HessenbergEigenvalues.of(order, hessenberg));
        double moved = Math.abs(Math.hypot(now[0], now[1]) - Math.hypot(last[0], last[1]));
        standing = moved <= SETTLED * Math.hypot(now[0], now[1]) ? standing + 1 : 0;
        last = now;
        if (exhausted || standing == 2) {
          break;
        }
      }
    }
    return last;
  }

  private static boolean extend(LinearMap map, double[][] basis, double[][] h, int j) {
    double[] next = basis[j + 1];
    map.apply(basis[j], next);
    double before = norm(next);
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i <= j; i++) {
        double share = dot(basis[i], next);
        h[i][j] += share;
        for (int k = 0; k < next.length; k++) {
          next[k] -= share * basis[i][k];
        }
      }
    }
    double left = norm(next);
    if (!(left > BREAKDOWN * before)) {
      return true;
    }
    h[j + 1][j] = left;
    scale(next, 1 / left);
    return false;
  }

  private static double[] largest(double[] values) {
    int best = 0;
    for (int i = 2; i < values.length; i += 2) {
      double size = Math.hypot(values[i], values[i + 1]);
      best = size > Math.hypot(values[best], values[best + 1]) ? i : best;
    }
    return new double[] {values[best], Math.abs(values[best + 1])};
  }

  private static void scale(double[] v, double factor) {
    for (int i = 0; i < v.length; i++) {
      v[i] *= factor;
    }
  }

  private static double norm(double[] v) {
    return Math.sqrt(dot(v, v));
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
