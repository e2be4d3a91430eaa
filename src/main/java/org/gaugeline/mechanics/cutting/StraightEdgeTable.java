package org.gaugeline.mechanics.cutting;

import java.util.Arrays;

/**
 * Forces on the straight part of a helical edge, all teeth summed.
 *
 * <p>A point at height z trails the tip by z·tan β/R, so with dz = R/tan β·dφ the force between two
 * heights is R/(tan β·sin κ) times the difference of one integral over φ at the two lag angles. The
 * integrals are tabulated once per cut; two-point Gauss quadrature per step.
 */
final class StraightEdgeTable {
  private static final double[] NONE = {};

  private final int steps;
  final PeriodicIntegral tangential;
  final PeriodicIntegral feed;
  final PeriodicIntegral normal;
  final double[] tangentialNow;
  final double[] feedNow;
  final double[] normalNow;

  StraightEdgeTable(MillingCut cut, RotationGrid grid, ChipForceTable table) {
    double sineOfLead = Math.sin(cut.cutter().leadRad());
    double chipM = cut.feedPerToothM() * sineOfLead;
    double lateral = cut.radialRatio() * sineOfLead;
    steps = grid.steps();
    ArcSums sums = new ArcSums(steps);
    sums.add(ArcPoints.gaussLow(cut.engagement(), grid), table, chipM);
    sums.add(ArcPoints.gaussHigh(cut.engagement(), grid), table, chipM);
    tangential = new PeriodicIntegral(sums.tangential);
    feed = new PeriodicIntegral(sums.feed(lateral));
    normal = new PeriodicIntegral(sums.normal(lateral));
    if (cut.cutter().helixRad() == 0) {
      sums.clear();
      sums.add(ArcPoints.ends(cut.engagement(), grid), table, chipM);
      tangentialNow = closed(sums.tangential);
      feedNow = closed(sums.feed(lateral));
      normalNow = closed(sums.normal(lateral));
    } else {
      tangentialNow = NONE;
      feedNow = NONE;
      normalNow = NONE;
    }
  }

  private static double[] closed(double[] overPitch) {
    double[] closed = Arrays.copyOf(overPitch, overPitch.length + 1);
    closed[overPitch.length] = overPitch[0];
    return closed;
  }

  /** Normal force per width of straight flutes at any position, in steps. */
  double normalNow(double position) {
    Shift shift = Shift.by(position, steps);
    double low = normalNow[shift.step()];
    return low + shift.fraction() * (normalNow[shift.step() + 1] - low);
  }
}
