package org.gaugeline.mechanics.cutting;

/**
 * Forces on the straight part of a helical edge, all teeth summed.
 *
 * <p>A point at height z trails the tip by z·tan β/R, so with dz = R/tan β·dφ the force between two
 * heights is R/(tan β·sin κ) times the difference of one integral over φ at the two lag angles. The
 * integrals are tabulated once per cut; two-point Gauss quadrature per step.
 */
final class StraightEdgeTable {
  private static final double GAUSS_OFFSET = 0.5 / Math.sqrt(3);

  private final int steps;
  final PeriodicIntegral tangential;
  final PeriodicIntegral feed;
  final PeriodicIntegral normal;
  final double[] tangentialNow;
  final double[] feedNow;
  final double[] normalNow;

  StraightEdgeTable(MillingCut cut, RotationGrid grid, ForceLaw law, double sineOfLead) {
    MillingCutter cutter = cut.cutter();
    EdgeForce force = new EdgeForce(law, cut, sineOfLead);
    double[][] along = integrate(cut.engagement(), grid, force);
    steps = grid.steps();
    tangential = new PeriodicIntegral(along[0], grid);
    feed = new PeriodicIntegral(along[1], grid);
    normal = new PeriodicIntegral(along[2], grid);
    tangentialNow = new double[steps + 1];
    feedNow = new double[steps + 1];
    normalNow = new double[steps + 1];
    if (cutter.helixRad() == 0) {
      sumPoints(cut.engagement(), grid, force);
    }
  }

  private static double[][] integrate(
      MillingEngagement engagement, RotationGrid grid, EdgeForce force) {
    double[][] along = new double[3][grid.arcSteps() + 1];
    for (int i = 0; i < grid.arcSteps(); i++) {
      double low = Math.max(engagement.entryRad(), grid.startRad() + i * grid.stepRad());
      double high = Math.min(engagement.exitRad(), grid.startRad() + (i + 1) * grid.stepRad());
      double width = Math.max(0, high - low);
      double middle = (low + high) / 2;
      force.set(middle - GAUSS_OFFSET * width);
      double t = force.tangential;
      double x = force.feed;
      double y = force.normal;
      force.set(middle + GAUSS_OFFSET * width);
      along[0][i + 1] = along[0][i] + (t + force.tangential) * width / 2;
      along[1][i + 1] = along[1][i] + (x + force.feed) * width / 2;
      along[2][i + 1] = along[2][i] + (y + force.normal) * width / 2;
    }
    return along;
  }

  private void sumPoints(MillingEngagement engagement, RotationGrid grid, EdgeForce force) {
    // Where the arc is a whole number of pitches, one tooth leaves as the next one enters.
    boolean handsOver =
        grid.arcSteps() % steps == 0 && Math.abs(grid.startRad() - engagement.entryRad()) < 1e-9;
    int last = handsOver ? grid.arcSteps() - 1 : grid.arcSteps();
    for (int i = 0; i <= last; i++) {
      double angle = grid.startRad() + i * grid.stepRad();
      if (angle < engagement.entryRad() - 1e-9 || angle > engagement.exitRad() + 1e-9) {
        continue;
      }
      force.set(angle);
      int step = i % steps;
      tangentialNow[step] += force.tangential;
      feedNow[step] += force.feed;
      normalNow[step] += force.normal;
    }
    tangentialNow[steps] = tangentialNow[0];
    feedNow[steps] = feedNow[0];
    normalNow[steps] = normalNow[0];
  }

  /** Normal force per width of straight flutes at any position, in steps. */
  double normalNow(double position) {
    Shift shift = Shift.by(position, steps);
    double low = normalNow[shift.step()];
    return low + shift.fraction() * (normalNow[shift.step() + 1] - low);
  }
}
