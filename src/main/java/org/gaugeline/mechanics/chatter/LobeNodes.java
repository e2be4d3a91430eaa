package org.gaugeline.mechanics.chatter;

import java.util.Arrays;

/**
 * Samples of the branches λ(ω) where Re λ &gt; 0, in runs over which each branch is continuous; all
 * that a limit needs and that does not change with speed.
 */
final class LobeNodes {
  double[] omega = new double[256];

  /** arg λ/π + ½; the cut is at its limit where ωT/2π less this is an integer. */
  double[] turn = new double[256];

  double[] re = new double[256];
  double[] im = new double[256];
  boolean[] opensRun = new boolean[256];
  int size;

  static LobeNodes of(OrientedResponse response, double[] support) {
    int branches = response.branches();
    double[] samples = new double[2 * branches * support.length];
    double[] lambda = new double[4];
    for (int i = 0; i < support.length; i++) {
      response.at(support[i], lambda);
      if (branches == 2 && i > 0 && swapped(samples, 4 * (i - 1), lambda)) {
        samples[4 * i] = lambda[2];
        samples[4 * i + 1] = lambda[3];
        samples[4 * i + 2] = lambda[0];
        samples[4 * i + 3] = lambda[1];
      } else {
        System.arraycopy(lambda, 0, samples, 2 * branches * i, 2 * branches);
      }
    }
    LobeNodes nodes = new LobeNodes();
    for (int branch = 0; branch < branches; branch++) {
      nodes.addBranch(support, samples, 2 * branch, 2 * branches);
    }
    return nodes;
  }

  /** Whether the pair continues the last one better when exchanged. */
  private static boolean swapped(double[] last, int at, double[] now) {
    return square(last, at, now, 0) + square(last, at + 2, now, 2)
        > square(last, at, now, 2) + square(last, at + 2, now, 0);
  }

  private static double square(double[] a, int ao, double[] b, int bo) {
    double re = a[ao] - b[bo];
    double im = a[ao + 1] - b[bo + 1];
    return re * re + im * im;
  }

  private void addBranch(double[] support, double[] samples, int offset, int stride) {
    boolean inside = false;
    for (int i = 0; i < support.length; i++) {
      int at = stride * i + offset;
      boolean positive = samples[at] > 0;
      if (i > 0 && positive != inside) {
        addZero(support, samples, i, at, stride, !inside);
      }
      if (positive) {
        add(support[i], samples[at], samples[at + 1], i == 0);
      }
      inside = positive;
    }
  }

  /** The place between two samples where Re λ passes zero, as the end of a run. */
  private void addZero(
      double[] support, double[] samples, int i, int at, int stride, boolean opens) {
    double before = samples[at - stride];
    double share = before / (before - samples[at]);
    double imBefore = samples[at - stride + 1];
    double crossing = imBefore + share * (samples[at + 1] - imBefore);
    add(support[i - 1] + share * (support[i] - support[i - 1]), 0, crossing, opens);
  }

  private void add(double w, double real, double imaginary, boolean opens) {
    if (size == omega.length) {
      int more = 2 * size;
      omega = Arrays.copyOf(omega, more);
      turn = Arrays.copyOf(turn, more);
      re = Arrays.copyOf(re, more);
      im = Arrays.copyOf(im, more);
      opensRun = Arrays.copyOf(opensRun, more);
    }
    omega[size] = w;
    turn[size] = turn(real, imaginary);
    re[size] = real;
    im[size] = imaginary;
    opensRun[size] = opens;
    size++;
  }

  /** arg λ/π + ½. */
  static double turn(double real, double imaginary) {
    return Math.atan2(imaginary, real) / Math.PI + 0.5;
  }

  /** Straight between the node before and the node. */
  static double between(double[] values, int node, double share) {
    return values[node - 1] + share * (values[node] - values[node - 1]);
  }
}
