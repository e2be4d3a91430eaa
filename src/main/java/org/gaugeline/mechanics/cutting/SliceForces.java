package org.gaugeline.mechanics.cutting;

/**
 * Force per width of one slice of a rounded edge at each step of a pitch, all teeth summed, and its
 * products with sine and cosine of the immersion. One instance serves all slices in turn.
 */
final class SliceForces {
  private final int steps;
  private final double stepRad;
  private final double lagRadPerM;
  private final ArcSums sums;
  private final double[] tangentialUpTo;
  private final double[] sineUpTo;
  private final double[] cosineUpTo;
  final double[] tangential;
  final double[] sine;
  final double[] cosine;
  double tangentialGrowth;
  double sineGrowth;
  double cosineGrowth;

  SliceForces(RotationGrid grid, double lagRadPerM) {
    this.steps = grid.steps();
    this.stepRad = grid.stepRad();
    this.lagRadPerM = lagRadPerM;
    sums = new ArcSums(steps);
    tangentialUpTo = new double[2 * steps + 1];
    sineUpTo = new double[2 * steps + 1];
    cosineUpTo = new double[2 * steps + 1];
    tangential = new double[steps + 1];
    sine = new double[steps + 1];
    cosine = new double[steps + 1];
  }

  /** Integrates over the arc. */
  void integrate(ArcPoints points, ChipForceTable table, double chipAtNinetyM) {
    sums.clear();
    sums.add(points, table, chipAtNinetyM);
    // One pass for all three: each sum waits for its last addition, but not for the others'.
    double t = 0;
    double s = 0;
    double c = 0;
    for (int i = 0; i < steps; i++) {
      tangentialUpTo[i] = t;
      sineUpTo[i] = s;
      cosineUpTo[i] = c;
      t += sums.tangential[i];
      s += sums.sine[i];
      c += sums.cosine[i];
    }
    tangentialGrowth = t;
    sineGrowth = s;
    cosineGrowth = c;
  }

  /** Spreads the integrals over the lag between two heights. */
  void spread(double lowM, double highM) {
    Shift upper = Shift.by(-lowM * lagRadPerM / stepRad, steps);
    Shift lower = Shift.by(-highM * lagRadPerM / stepRad, steps);
    double scale = 1 / ((highM - lowM) * lagRadPerM);
    spread(tangentialUpTo, tangentialGrowth, upper, lower, scale, tangential);
    spread(sineUpTo, sineGrowth, upper, lower, scale, sine);
    spread(cosineUpTo, cosineGrowth, upper, lower, scale, cosine);
  }

  private void spread(
      double[] upTo, double growth, Shift upper, Shift lower, double scale, double[] forces) {
    for (int i = 0; i < steps; i++) {
      upTo[steps + i] = upTo[i] + growth;
    }
    upTo[2 * steps] = 2 * growth;
    int high = upper.step();
    int low = lower.step();
    double inHigh = scale * upper.fraction();
    double inLow = scale * lower.fraction();
    double whole = scale * (upper.pitches() - lower.pitches()) * growth;
    for (int i = 0; i < steps; i++) {
      forces[i] =
          whole
              + (scale - inHigh) * upTo[high + i]
              + inHigh * upTo[high + i + 1]
              - (scale - inLow) * upTo[low + i]
              - inLow * upTo[low + i + 1];
    }
    forces[steps] = forces[0];
  }

  /** Takes the forces of straight flutes at the steps themselves. */
  void stand(ArcPoints ends, ChipForceTable table, double chipAtNinetyM) {
    sums.clear();
    sums.add(ends, table, chipAtNinetyM);
    close(sums.tangential, tangential);
    close(sums.sine, sine);
    close(sums.cosine, cosine);
  }

  private static void close(double[] overPitch, double[] forces) {
    System.arraycopy(overPitch, 0, forces, 0, overPitch.length);
    forces[overPitch.length] = overPitch[0];
  }
}
