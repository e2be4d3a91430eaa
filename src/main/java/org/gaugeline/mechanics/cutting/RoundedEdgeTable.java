package org.gaugeline.mechanics.cutting;

/**
 * Forces on the rounded part of an edge, all teeth summed, cumulated upwards over slices of equal
 * angle κ. A slice has its own radius R − r + r·sin κ, chip fz·sin κ·sin φ, edge length r·dκ and
 * lag. Values between two levels are linear in depth.
 */
final class RoundedEdgeTable {
  private static final int SLICES = 16;

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
      addSlice(k, kappa, cut, grid, new EdgeForce(law, cut, Math.sin(kappa)));
    }
  }

  private void allocate(int level) {
    torque[level] = new double[steps + 1];
    feed[level] = new double[steps + 1];
    normal[level] = new double[steps + 1];
    push[level] = new double[steps + 1];
  }

  private void addSlice(int k, double kappa, MillingCut cut, RotationGrid grid, EdgeForce force) {
    MillingCutter cutter = cut.cutter();
    double width = roundingM * Math.PI / 2 / SLICES;
    double armM = cutter.radiusM() - roundingM + roundingM * Math.sin(kappa);
    double lag = roundingM * (1 - Math.cos(kappa)) * cutter.lagRadPerM();
    double pushRatio = cut.radialRatio() * Math.cos(kappa);
    for (int i = 0; i < steps; i++) {
      double tip = grid.startRad() + i * grid.stepRad();
      double t = 0;
      double x = 0;
      double y = 0;
      double entry = cut.engagement().entryRad();
      double phi = firstImmersion(tip - lag, entry, cutter.pitchRad());
      // A tooth on the entry replaces one that stands on the exit at the same instant.
      double exit = cut.engagement().exitRad() + (phi == entry ? -1e-9 : 1e-9);
      for (; phi <= exit; phi += cutter.pitchRad()) {
        force.set(phi);
        t += force.tangential;
        x += force.feed;
        y += force.normal;
      }
      torque[k + 1][i] = torque[k][i] + armM * width * t;
      feed[k + 1][i] = feed[k][i] + width * x;
      normal[k + 1][i] = normal[k][i] + width * y;
      push[k + 1][i] = push[k][i] + pushRatio * width * t;
    }
    close(k + 1);
    addMeans(k, armM * width, width, cut, force);
  }

  private void close(int level) {
    torque[level][steps] = torque[level][0];
    feed[level][steps] = feed[level][0];
    normal[level][steps] = normal[level][0];
    push[level][steps] = push[level][0];
  }

  /** Means by integration along the arc, which the jumps at its ends do not disturb. */
  private void addMeans(int k, double moment, double width, MillingCut cut, EdgeForce force) {
    MillingEngagement arc = cut.engagement();
    double part = arc.arcRad() / SLICES;
    double t = 0;
    double x = 0;
    for (int i = 0; i < SLICES; i++) {
      force.set(arc.entryRad() + (i + 0.5) * part);
      t += force.tangential * part;
      x += force.feed * part;
    }
    double pitch = cut.cutter().pitchRad();
    torqueMean[k + 1] = torqueMean[k] + moment * t / pitch;
    feedMean[k + 1] = feedMean[k] + width * x / pitch;
  }

  /** First immersion at or after the entry that some tooth's point takes. */
  private static double firstImmersion(double angleRad, double entryRad, double pitchRad) {
    double beyond = angleRad - entryRad;
    double inPitch = beyond - Math.floor(beyond / pitchRad) * pitchRad;
    return pitchRad - inPitch < 1e-9 ? entryRad : entryRad + inPitch;
  }

  /** Depth as a level and a fraction to the next, e.g. 3.25; at most the number of slices. */
  double levelAt(double depthM) {
    double kappa = Math.acos(1 - Math.min(depthM, roundingM) / roundingM);
    int level = Math.min(SLICES - 1, (int) (kappa / (Math.PI / 2) * SLICES));
    double low = heightM(level);
    return level + Math.min(1, (depthM - low) / (heightM(level + 1) - low));
  }

  private double heightM(int level) {
    return roundingM * (1 - Math.cos(level * Math.PI / 2 / SLICES));
  }

  static double between(double[][] table, double level, int step) {
    int low = Math.min((int) level, SLICES - 1);
    double from = table[low][step];
    return from + (level - low) * (table[low + 1][step] - from);
  }

  double normalAt(double level, double position) {
    double inPitch = position - Math.floor(position / steps) * steps;
    int step = Math.min((int) inPitch, steps - 1);
    double low = between(normal, level, step);
    return low + (inPitch - step) * (between(normal, level, step + 1) - low);
  }

  double torqueMean(double level) {
    int low = Math.min((int) level, SLICES - 1);
    return torqueMean[low] + (level - low) * (torqueMean[low + 1] - torqueMean[low]);
  }

  double feedMean(double level) {
    int low = Math.min((int) level, SLICES - 1);
    return feedMean[low] + (level - low) * (feedMean[low + 1] - feedMean[low]);
  }
}
