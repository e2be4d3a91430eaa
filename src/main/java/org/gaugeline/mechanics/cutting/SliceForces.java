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
  private final double[] integral;
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
    integral = new double[2 * steps + 1];
    tangential = new double[steps + 1];
    sine = new double[steps + 1];
    cosine = new double[steps + 1];
  }

  /** Integrates over the arc. */
  void integrate(ArcPoints points, ChipForceTable table, double chipAtNinetyM) {
    sums.clear();
    sums.add(points, table, chipAtNinetyM);
    tangentialGrowth = sum(sums.tangential);
    sineGrowth = sum(sums.sine);
    cosineGrowth = sum(sums.cosine);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** Spreads the integrals over the lag between two heights. */
  void spread(double lowM, double highM) {
    Shift upper = Shift.by(-lowM * lagRadPerM / stepRad, steps);
    Shift lower = Shift.by(-highM * lagRadPerM / stepRad, steps);
    double scale = 1 / ((highM - lowM) * lagRadPerM);
    spread(sums.tangential, upper, lower, scale, tangential);
    spread(sums.sine, upper, lower, scale, sine);
    spread(sums.cosine, upper, lower, scale, cosine);
  }

  private void spread(double[] overSteps, Shift upper, Shift lower, double scale, double[] forces) {
    double growth = PeriodicIntegral.cumulate(overSteps, integral);
    double whole = (upper.pitches() - lower.pitches()) * growth;
    int high = upper.step();
    int low = lower.step();
    for (int i = 0; i < forces.length - 1; i++) {
      double above = integral[high + i];
      double below = integral[low + i];
      double up = above + upper.fraction() * (integral[high + i + 1] - above);
      double down = below + lower.fraction() * (integral[low + i + 1] - below);
      forces[i] = scale * (whole + up - down);
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
