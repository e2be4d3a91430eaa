package org.gaugeline.mechanics.cutting;

import java.util.Arrays;

/**
 * Points on the arc of contact, one per step of the grid, with their weights. Sine and cosine are
 * carried from step to step by rotation: the points are equally spaced.
 */
final class ArcPoints {
  private static final double GAUSS_OFFSET = 0.5 / Math.sqrt(3);
  private static final double END_TOLERANCE_RAD = 1e-9;

  final double[] sine;
  final double[] cosine;
  final double[] weight;

  private ArcPoints(int count) {
    sine = new double[count];
    cosine = new double[count];
    weight = new double[count];
  }

  /** Middles of the steps, weighted with their width. */
  static ArcPoints middles(MillingEngagement engagement, RotationGrid grid) {
    return within(engagement, grid, 0.5, 1);
  }

  /** First points of the two-point Gauss rule, weighted with half the width. */
  static ArcPoints gaussLow(MillingEngagement engagement, RotationGrid grid) {
    return within(engagement, grid, 0.5 - GAUSS_OFFSET, 0.5);
  }

  /** Second points of the two-point Gauss rule. */
  static ArcPoints gaussHigh(MillingEngagement engagement, RotationGrid grid) {
    return within(engagement, grid, 0.5 + GAUSS_OFFSET, 0.5);
  }

  /** Ends of the steps, of weight 1 where they lie in the arc. */
  static ArcPoints ends(MillingEngagement engagement, RotationGrid grid) {
    // Where the arc is a whole number of pitches, one tooth leaves as the next one enters.
    boolean handsOver =
        grid.arcSteps() % grid.steps() == 0
            && Math.abs(grid.startRad() - engagement.entryRad()) < END_TOLERANCE_RAD;
    ArcPoints points = new ArcPoints(handsOver ? grid.arcSteps() : grid.arcSteps() + 1);
    points.rotate(grid.startRad(), grid.stepRad());
    for (int i = 0; i < points.weight.length; i++) {
      double angle = grid.startRad() + i * grid.stepRad();
      boolean inside =
          angle >= engagement.entryRad() - END_TOLERANCE_RAD
              && angle <= engagement.exitRad() + END_TOLERANCE_RAD;
      points.weight[i] = inside ? 1 : 0;
    }
    return points;
  }

  private static ArcPoints within(
      MillingEngagement engagement, RotationGrid grid, double position, double share) {
    ArcPoints points = new ArcPoints(grid.arcSteps());
    points.rotate(grid.startRad() + position * grid.stepRad(), grid.stepRad());
    Arrays.fill(points.weight, share * grid.stepRad());
    // The arc ends within a step at the end that the grid is not aligned to.
    int cut = grid.entryAligned() ? grid.arcSteps() - 1 : 0;
    double low = Math.max(engagement.entryRad(), grid.startRad() + cut * grid.stepRad());
    double high = Math.min(engagement.exitRad(), grid.startRad() + (cut + 1) * grid.stepRad());
    double width = Math.max(0, high - low);
    points.sine[cut] = Math.sin(low + position * width);
    points.cosine[cut] = Math.cos(low + position * width);
    points.weight[cut] = share * width;
    return points;
  }

  private void rotate(double firstRad, double stepRad) {
    double s = Math.sin(firstRad);
    double c = Math.cos(firstRad);
    double stepSine = Math.sin(stepRad);
    double stepCosine = Math.cos(stepRad);
    for (int i = 0; i < sine.length; i++) {
      sine[i] = s;
      cosine[i] = c;
      double next = s * stepCosine + c * stepSine;
      c = c * stepCosine - s * stepSine;
      s = next;
    }
  }
}
