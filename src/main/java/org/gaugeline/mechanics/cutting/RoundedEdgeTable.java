package org.gaugeline.mechanics.cutting;

/**
 * Forces on the rounded part of an edge, all teeth summed, cumulated upwards over slices of equal
 * angle κ. A slice has its own radius R − r + r·sin κ, chip fz·sin κ·sin φ, edge length r·dκ and
 * lag. Values between two levels are linear in depth.
 */
final class RoundedEdgeTable {
  private static final int SLICES = 24;

  private static final double SLICE_RAD = Math.PI / 2 / SLICES;

  private final double roundingM;
  private final int steps;
  final double[][] torque = new double[SLICES + 1][];
  final double[][] feed = new double[SLICES + 1][];
  final double[][] normal = new double[SLICES + 1][];
  final double[][] push = new double[SLICES + 1][];
  private final double[] torqueMean = new double[SLICES + 1];
  private final double[] feedMean = new double[SLICES + 1];

  RoundedEdgeTable(MillingCut cut, RotationGrid grid, ChipForceTable table) {
    MillingCutter cutter = cut.cutter();
    boolean helical = cutter.helixRad() > 0;
    ArcPoints middles = ArcPoints.middles(cut.engagement(), grid);
    ArcPoints ends = helical ? middles : ArcPoints.ends(cut.engagement(), grid);
    roundingM = cutter.roundingM();
    steps = grid.steps();
    allocate(0);
    SliceForces slice = new SliceForces(grid, cutter.lagRadPerM());
    for (int k = 0; k < SLICES; k++) {
      allocate(k + 1);
      double kappa = (k + 0.5) * SLICE_RAD;
      double chipM = cut.feedPerToothM() * Math.sin(kappa);
      slice.integrate(middles, table, chipM);
      addMeans(k, kappa, cut, slice);
      if (helical) {
        slice.spread(heightM(k), heightM(k + 1));
      } else {
        slice.stand(ends, table, chipM);
      }
      addSlice(k, kappa, cut, slice);
    }
  }

  private void allocate(int level) {
    torque[level] = new double[steps + 1];
    feed[level] = new double[steps + 1];
    normal[level] = new double[steps + 1];
    push[level] = new double[steps + 1];
  }

  /** A slice is a short straight edge of its own κ, spread over the lag between its ends. */
  private void addSlice(int k, double kappa, MillingCut cut, SliceForces slice) {
    double width = roundingM * SLICE_RAD;
    double lateral = cut.radialRatio() * Math.sin(kappa);
    cumulate(torque, k, width * armM(kappa, cut), slice.tangential, 0, slice.tangential);
    cumulate(push, k, width * cut.radialRatio() * Math.cos(kappa), slice.tangential, 0, slice.sine);
    cumulate(feed, k, -width, slice.cosine, lateral, slice.sine);
    cumulate(normal, k, width, slice.sine, -lateral, slice.cosine);
  }

  private static void cumulate(
      double[][] table, int k, double factor, double[] first, double share, double[] second) {
    double[] below = table[k];
    double[] above = table[k + 1];
    for (int i = 0; i < above.length; i++) {
      above[i] = below[i] + factor * (first[i] + share * second[i]);
    }
  }

  private void addMeans(int k, double kappa, MillingCut cut, SliceForces slice) {
    double perPitch = roundingM * SLICE_RAD / cut.cutter().pitchRad();
    double lateral = cut.radialRatio() * Math.sin(kappa);
    double tangential = slice.tangentialGrowth;
    double along = -slice.cosineGrowth - lateral * slice.sineGrowth;
    torqueMean[k + 1] = torqueMean[k] + armM(kappa, cut) * perPitch * tangential;
    feedMean[k + 1] = feedMean[k] + perPitch * along;
  }

  private double armM(double kappa, MillingCut cut) {
    return cut.cutter().radiusM() - roundingM + roundingM * Math.sin(kappa);
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
    return roundingM * (1 - Math.cos(level * SLICE_RAD));
  }

  /** Forces at the steps of a pitch, at a depth between two levels. */
  double[] blend(double[][] table, Level level) {
    double[] low = table[level.below];
    double[] high = table[level.below + 1];
    double[] blend = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      blend[i] = low[i] + level.fraction * (high[i] - low[i]);
    }
    return blend;
  }

  /** Value of blended forces at any position, in steps. */
  double between(double[] blend, double position) {
    Shift shift = Shift.by(position, steps);
    double low = blend[shift.step()];
    return low + shift.fraction() * (blend[shift.step() + 1] - low);
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
    double of(double[] table) {
      return table[below] + fraction * (table[below + 1] - table[below]);
    }
  }
}
