package org.gaugeline.mechanics.receptance;

import java.util.Arrays;

/**
 * Frequencies that resolve resonances: steps of a share of the distance to the nearest pole −h ± iω
 * of a response, h the half width.
 */
final class SupportGrid {
  static final double FINE_STEPS_PER_HALF_WIDTH = 10;
  static final double COARSE_STEPS_PER_HALF_WIDTH = 3;

  private static final double LOWEST = 0.02;
  private static final double HIGHEST = 4;

  private SupportGrid() {}

  /**
   * From 0.02 of the lowest to 4 times the highest frequency.
   *
   * @param angular frequencies ω of the poles, rad/s, each greater than 0
   * @param halfWidth their half widths h, rad/s, each greater than 0
   * @param stepsPerHalfWidth how many steps make up the distance
   */
  static double[] of(double[] angular, double[] halfWidth, double stepsPerHalfWidth) {
    if (angular.length == 0) {
      return new double[0];
    }
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (double natural : angular) {
      low = Math.min(low, natural);
      high = Math.max(high, natural);
    }
    double[] grid = new double[256];
    int size = 0;
    double end = HIGHEST * high;
    for (double w = LOWEST * low;
        w < end;
        w += distance(w, angular, halfWidth) / stepsPerHalfWidth) {
      if (size == grid.length) {
        grid = Arrays.copyOf(grid, 2 * size);
      }
      grid[size++] = w;
    }
    return Arrays.copyOf(grid, size);
  }

  private static double distance(double omegaRadPerS, double[] angular, double[] halfWidth) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < angular.length; i++) {
      double off = omegaRadPerS - angular[i];
      least = Math.min(least, off * off + halfWidth[i] * halfWidth[i]);
    }
    return Math.sqrt(least);
  }
}
