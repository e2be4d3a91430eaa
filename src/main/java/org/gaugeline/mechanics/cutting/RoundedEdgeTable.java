package org.gaugeline.mechanics.cutting;

/**
 * Forces on the rounded part of an edge, all teeth summed, cumulated upwards over slices. A slice
 * has its own radius R − r + r·sin κ, chip fz·sin κ·sin φ, edge length r·dκ and lag. Values between
 * two levels, the ends of a slice, are linear in depth. Only the levels around the asked depths are
 * kept.
 */
final class RoundedEdgeTable {
  private final double roundingM;
  private final int steps;
  private final EdgeSlices slices;
  private final int first;
  final double[][] torque;
  final double[][] feed;
  final double[][] normal;
  final double[][] push;
  private final double[] torqueMean;
  private final double[] feedMean;

  /** Cumulates the forces for depths between two bounds. */
  RoundedEdgeTable(
      MillingCut cut,
      RotationGrid grid,
      ChipForceTable table,
      EdgeSlices slices,
      double leastDepthM,
      double mostDepthM) {
    MillingCutter cutter = cut.cutter();
    this.roundingM = cutter.roundingM();
    this.steps = grid.steps();
    this.slices = slices;
    this.first = levelAt(leastDepthM).below;
    int last = levelAt(mostDepthM).below + 1;
    this.torque = new double[last - first + 1][];
    this.feed = new double[last - first + 1][];
    this.normal = new double[last - first + 1][];
    this.push = new double[last - first + 1][];
    this.torqueMean = new double[last - first + 1];
    this.feedMean = new double[last - first + 1];
    allocate(0);
    boolean helical = cutter.helixRad() > 0;
    ArcPoints middles = ArcPoints.middles(cut.engagement(), grid);
    ArcPoints ends = helical ? middles : ArcPoints.ends(cut.engagement(), grid);
    SliceForces slice = new SliceForces(grid, cutter.lagRadPerM());
    for (int k = 0; k < last; k++) {
      double chipM = cut.feedPerToothM() * slices.sine[k];
      double lateral = cut.radialRatio() * slices.sine[k];
      slice.integrate(middles, table, chipM, lateral);
      int below = Math.max(0, k - first);
      int above = Math.max(0, k + 1 - first);
      addMeans(k, below, above, cut, slice);
      if (helical) {
        slice.spread(roundingM * slices.height[k], roundingM * slices.height[k + 1]);
      } else {
        slice.stand(ends, table, chipM, lateral);
      }
      addSlice(k, below, above, cut, slice);
    }
  }

  private void allocate(int level) {
    torque[level] = new double[steps + 1];
    feed[level] = new double[steps + 1];
    normal[level] = new double[steps + 1];
    push[level] = new double[steps + 1];
  }

  /** A slice is a short straight edge of its own κ, spread over the lag between its ends. */
  private void addSlice(int k, int below, int above, MillingCut cut, SliceForces slice) {
    if (above > below) {
      allocate(above);
    }
    double width = roundingM * slices.widthRad[k];
    double push = width * cut.radialRatio() * slices.cosine[k];
    slice.addTangential(
        width * armM(k, cut),
        torque[below],
        torque[above],
        push,
        this.push[below],
        this.push[above]);
    slice.addFeed(width, feed[below], feed[above]);
    slice.addNormal(width, normal[below], normal[above]);
  }

  private void addMeans(int k, int below, int above, MillingCut cut, SliceForces slice) {
    double perPitch = roundingM * slices.widthRad[k] / cut.cutter().pitchRad();
    torqueMean[above] = torqueMean[below] + armM(k, cut) * perPitch * slice.tangentialGrowth();
    feedMean[above] = feedMean[below] + perPitch * slice.feedGrowth();
  }

  private double armM(int k, MillingCut cut) {
    return cut.cutter().radiusM() - roundingM + roundingM * slices.sine[k];
  }

  /** Level of a depth; at most the top of the rounding. */
  Level levelAt(double depthM) {
    double height = Math.min(1, depthM / roundingM);
    int below = slices.at(height);
    double low = slices.height[below];
    return new Level(below, Math.min(1, (height - low) / (slices.height[below + 1] - low)));
  }

  /** Forces at the steps of a pitch at the level below a depth; above it where that is met. */
  double[] low(double[][] table, Level level) {
    return level.fraction == 1 ? high(table, level) : table[level.below - first];
  }

  /** Forces at the steps of a pitch at the level above a depth. */
  double[] high(double[][] table, Level level) {
    return table[level.below - first + 1];
  }

  /** Normal force at a depth and any position, in steps. */
  double normalAt(Level level, double position) {
    double[] low = low(normal, level);
    double[] high = high(normal, level);
    Shift shift = Shift.by(position, steps);
    double here = level.between(low, high, shift.step());
    return here + shift.fraction() * (level.between(low, high, shift.step() + 1) - here);
  }

  double torqueMean(Level level) {
    return mean(torqueMean, level);
  }

  double feedMean(Level level) {
    return mean(feedMean, level);
  }

  private double mean(double[] means, Level level) {
    double low = means[level.below - first];
    return low + level.fraction * (means[level.below - first + 1] - low);
  }

  /**
   * A depth between two levels of the table.
   *
   * @param below level below
   * @param fraction way to the next level, 0 to 1
   */
  record Level(int below, double fraction) {
    /** Value at a step on that way. */
    double between(double[] low, double[] high, int step) {
      return low[step] + fraction * (high[step] - low[step]);
    }
  }
}
