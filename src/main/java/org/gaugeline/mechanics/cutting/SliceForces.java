package org.gaugeline.mechanics.cutting;

/**
 * Force per width of one slice of a rounded edge at each step of a pitch, all teeth summed:
 * tangential, along the feed and towards φ = 0. One instance serves all slices in turn.
 */
final class SliceForces {
  private final int steps;
  private final double stepRad;
  private final double lagRadPerM;
  private final ArcSums sums;
  private final double[] tangential;
  private final double[] feed;
  private final double[] normal;
  private Shift upper = Shift.NONE;
  private Shift lower = Shift.NONE;
  private double scale;

  SliceForces(RotationGrid grid, double lagRadPerM) {
    this.steps = grid.steps();
    this.stepRad = grid.stepRad();
    this.lagRadPerM = lagRadPerM;
    sums = new ArcSums(steps);
    tangential = new double[2 * steps + 1];
    feed = new double[2 * steps + 1];
    normal = new double[2 * steps + 1];
  }

  /** Integrates over the arc: the arrays hold integrals from the first step on. */
  void integrate(ArcPoints points, ChipForceTable table, double chipAtNinetyM, double lateral) {
    sums.set(points, table, chipAtNinetyM);
    // One pass for all three: each sum waits for its last addition, but not for the others'.
    double t = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < steps; i++) {
      tangential[i] = t;
      feed[i] = x;
      normal[i] = y;
      t += sums.tangential[i];
      x -= sums.cosine[i] + lateral * sums.sine[i];
      y += sums.sine[i] - lateral * sums.cosine[i];
    }
    secondPitch(tangential, t);
    secondPitch(feed, x);
    secondPitch(normal, y);
  }

  private void secondPitch(double[] upTo, double growth) {
    for (int i = 0; i < steps; i++) {
      upTo[steps + i] = upTo[i] + growth;
    }
    upTo[2 * steps] = 2 * growth;
  }

  double tangentialGrowth() {
    return tangential[steps];
  }

  double feedGrowth() {
    return feed[steps];
  }

  /** Takes the integrals over the lag between two heights from now on. */
  void spread(double lowM, double highM) {
    upper = Shift.by(-lowM * lagRadPerM / stepRad, steps);
    lower = Shift.by(-highM * lagRadPerM / stepRad, steps);
    scale = 1 / ((highM - lowM) * lagRadPerM);
  }

  /** Takes the forces of straight flutes at the steps themselves from now on. */
  void stand(ArcPoints ends, ChipForceTable table, double chipAtNinetyM, double lateral) {
    sums.set(ends, table, chipAtNinetyM);
    for (int i = 0; i <= steps; i++) {
      int at = i == steps ? 0 : i;
      tangential[i] = sums.tangential[at];
      feed[i] = -sums.cosine[at] - lateral * sums.sine[at];
      normal[i] = sums.sine[at] - lateral * sums.cosine[at];
    }
  }

  /** Adds the tangential force twice, each time with a factor of its own. */
  void addTangential(
      double factor,
      double[] below,
      double[] above,
      double otherFactor,
      double[] otherBelow,
      double[] otherAbove) {
    if (lagRadPerM == 0) {
      add(tangential, factor, below, above);
      add(tangential, otherFactor, otherBelow, otherAbove);
      return;
    }
    int high = upper.step();
    int low = lower.step();
    double inHigh = scale * upper.fraction();
    double inLow = scale * lower.fraction();
    double outHigh = scale - inHigh;
    double outLow = scale - inLow;
    double whole = scale * (upper.pitches() - lower.pitches()) * tangential[steps];
    for (int i = 0; i < steps; i++) {
      double force =
          whole
              + outHigh * tangential[high + i]
              + inHigh * tangential[high + i + 1]
              - outLow * tangential[low + i]
              - inLow * tangential[low + i + 1];
      above[i] = below[i] + factor * force;
      otherAbove[i] = otherBelow[i] + otherFactor * force;
    }
    above[steps] = above[0];
    otherAbove[steps] = otherAbove[0];
  }

  void addFeed(double factor, double[] below, double[] above) {
    add(feed, factor, below, above);
  }

  void addNormal(double factor, double[] below, double[] above) {
    add(normal, factor, below, above);
  }

  private void add(double[] force, double factor, double[] below, double[] above) {
    if (lagRadPerM == 0) {
      for (int i = 0; i <= steps; i++) {
        above[i] = below[i] + factor * force[i];
      }
      return;
    }
    int high = upper.step();
    int low = lower.step();
    double perStep = factor * scale;
    double inHigh = perStep * upper.fraction();
    double inLow = perStep * lower.fraction();
    double outHigh = perStep - inHigh;
    double outLow = perStep - inLow;
    double whole = perStep * (upper.pitches() - lower.pitches()) * force[steps];
    for (int i = 0; i < steps; i++) {
      above[i] =
          below[i]
              + whole
              + outHigh * force[high + i]
              + inHigh * force[high + i + 1]
              - outLow * force[low + i]
              - inLow * force[low + i + 1];
    }
    above[steps] = above[0];
  }
}
