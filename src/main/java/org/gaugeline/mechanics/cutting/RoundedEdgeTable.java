package org.gaugeline.mechanics.cutting;

/**
 * Forces on the rounded part of an edge, all teeth summed, cumulated upwards over slices of equal
 * angle κ. A slice has its own radius R − r + r·sin κ, chip fz·sin κ·sin φ, edge length r·dκ and
 * lag. Values between two levels are linear in depth.
 */
final class RoundedEdgeTable {
  private static final int SLICES = 24;

  private final double roundingM;
  private final int steps;
  final double[][] torque = new double[SLICES + 1][];
  final double[][] feed = new double[SLICES + 1][];
  final double[][] normal = new double[SLICES + 1][];
  final double[][] push = new double[SLICES + 1][];
  private final double[] torqueMean = new double[SLICES + 1];
  private final double[] feedMean = new double[SLICES + 1];

  RoundedEdgeTable(MillingCut cut, RotationGrid grid, ForceLaw law) {
    roundingM = cut.cutter().roundingM();
    steps = grid.steps();
    allocate(0);
    for (int k = 0; k < SLICES; k++) {
      allocate(k + 1);
      double kappa = (k + 0.5) * Math.PI / 2 / SLICES;
      addSlice(k, kappa, cut, grid, law);
    }
  }

  private void allocate(int level) {
    torque[level] = new double[steps + 1];
    feed[level] = new double[steps + 1];
    normal[level] = new double[steps + 1];
    push[level] = new double[steps + 1];
  }

  /** A slice is a short straight edge of its own κ, spread over the lag between its ends. */
  private void addSlice(int k, double kappa, MillingCut cut, RotationGrid grid, ForceLaw law) {
    MillingCutter cutter = cut.cutter();
    StraightEdgeTable slice = new StraightEdgeTable(cut, grid, law, Math.sin(kappa));
    double width = roundingM * Math.PI / 2 / SLICES;
    double armM = cutter.radiusM() - roundingM + roundingM * Math.sin(kappa);
    double pushRatio = cut.radialRatio() * Math.cos(kappa);
    double lagSteps = cutter.lagRadPerM() / grid.stepRad();
    Shift lower = Shift.by(-heightM(k + 1) * lagSteps, steps);
    Shift upper = Shift.by(-heightM(k) * lagSteps, steps);
    double lagRad = (heightM(k + 1) - heightM(k)) * cutter.lagRadPerM();
    boolean helical = lagRad > 0;
    double scale = helical ? width / lagRad : width;
    for (int i = 0; i <= steps; i++) {
      int at = i % steps;
      double t = helical ? slice.tangential.difference(at, upper, lower) : slice.tangentialNow[at];
      double x = helical ? slice.feed.difference(at, upper, lower) : slice.feedNow[at];
      double y = helical ? slice.normal.difference(at, upper, lower) : slice.normalNow[at];
      torque[k + 1][i] = torque[k][i] + armM * scale * t;
      feed[k + 1][i] = feed[k][i] + scale * x;
      normal[k + 1][i] = normal[k][i] + scale * y;
      push[k + 1][i] = push[k][i] + pushRatio * scale * t;
    }
    double perPitch = width / cutter.pitchRad();
    torqueMean[k + 1] = torqueMean[k] + armM * perPitch * slice.tangential.growth;
    feedMean[k + 1] = feedMean[k] + perPitch * slice.feed.growth;
  }

  /** Level of a depth; at most the top of the rounding. */
  Level levelAt(double depthM) {
    double kappa = Math.acos(1 - Math.min(depthM, roundingM) / roundingM);
    int below = Math.min(SLICES - 1, (int) (kappa / (Math.PI / 2) * SLICES));
    double low = heightM(below);
    double fraction = Math.min(1, (depthM - low) / (heightM(below + 1) - low));
    return new Level(below, fraction);
  }

  private double heightM(int level) {
    return roundingM * (1 - Math.cos(level * Math.PI / 2 / SLICES));
  }

  double normalAt(Level level, double position) {
    Shift shift = Shift.by(position, steps);
    double low = level.of(normal, shift.step());
    return low + shift.fraction() * (level.of(normal, shift.step() + 1) - low);
  }

  double torqueMean(Level level) {
    return level.of(torqueMean);
  }

  double feedMean(Level level) {
    return level.of(feedMean);
  }

  /**
   * A depth between two levels of the table.
   *
   * @param below level below
   * @param fraction way to the next level, 0 to 1
   */
  record Level(int below, double fraction) {
    double of(double[][] table, int step) {
      double low = table[below][step];
      return low + fraction * (table[below + 1][step] - low);
    }

    double of(double[] table) {
      return table[below] + fraction * (table[below + 1] - table[below]);
    }
  }
}
