package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * Teeth that cut with their end edges while the cutter moves along its own axis into a straight
 * step of the work: plunging, and the downward part of a ramp.
 *
 * <p>Model: end edges square to the axis reach from its centre to the circumference, so every point
 * in contact cuts the chip that the tooth advances along the axis. With the step's edge at x0 = R −
 * ae from the axis and φ counted from the step's depth, a tooth is in contact from r = x0/cos φ to
 * R (beyond the centre, ae &gt; R, from 0 to R or to x0/cos φ). Per unit of force per width w =
 * kc·h its torque is (ro² − ri²)/2, so the mean torque is z·A·w/2π with A the area of the step
 * under the cutter: energy is conserved whatever the shape. The force normal to the edge acts along
 * the axis and pushes the cutter into its holder. Overlap with an earlier plunge beside it is left
 * out, which overstates. The corner is taken as sharp.
 *
 * <p>All loads are straight lines in w, so this is computed once for any feed.
 */
public final class EndCut {
  private static final int STEPS = 96;

  private final double diameterM;
  private final int teeth;
  private final double areaM2;
  private final double stepEdgeM;
  private double torquePeakM2;
  private double lateralPeakM;
  private double wallPeakM;
  private double widthLeastM = Double.POSITIVE_INFINITY;
  private double widthMostM;
  private double widthMeanM;

  /**
   * A cut into a straight step.
   *
   * @param diameterM cutting diameter D, m, &gt; 0
   * @param teeth number of teeth z that reach the step, &ge; 1
   * @param radialDepthM width ae of the step under the cutter, m, above 0 to D
   */
  public EndCut(double diameterM, int teeth, double radialDepthM) {
    this.diameterM = Require.positive("diameterM", diameterM);
    this.teeth = Require.atLeastOne("teeth", teeth);
    Require.positive("radialDepthM", radialDepthM);
    Require.within("radialDepthM", radialDepthM, 0, diameterM * (1 + 1e-9));
    double radius = diameterM / 2;
    this.stepEdgeM = Math.max(-radius, radius - radialDepthM);
    double half = Math.acos(stepEdgeM / radius);
    this.areaM2 = radius * radius * (half - Math.sin(half) * Math.cos(half));
    turn();
  }

  private void turn() {
    double pitch = 2 * Math.PI / teeth;
    for (int step = 0; step < STEPS; step++) {
      double torque = 0;
      double width = 0;
      double normal = 0;
      double along = 0;
      for (int tooth = 0; tooth < teeth; tooth++) {
        double phi = Math.IEEEremainder((tooth + (double) step / STEPS) * pitch, 2 * Math.PI);
        double inner = innerM(phi);
        double outer = outerM(phi);
        double b = outer - inner;
        torque += (outer * outer - inner * inner) / 2;
        width += b;
        normal += b * Math.sin(phi);
        along += b * Math.cos(phi);
      }
      torquePeakM2 = Math.max(torquePeakM2, torque);
      lateralPeakM = Math.max(lateralPeakM, Math.hypot(normal, along));
      wallPeakM = Math.max(wallPeakM, Math.abs(normal));
      widthLeastM = Math.min(widthLeastM, width);
      widthMostM = Math.max(widthMostM, width);
      widthMeanM += width / STEPS;
    }
  }

  private double innerM(double phi) {
    if (stepEdgeM <= 0) {
      return 0;
    }
    double radius = diameterM / 2;
    double cosine = Math.cos(phi);
    return cosine > 0 ? Math.min(radius, stepEdgeM / cosine) : radius;
  }

  private double outerM(double phi) {
    double radius = diameterM / 2;
    double cosine = Math.cos(phi);
    return stepEdgeM <= 0 && cosine < 0 ? Math.min(radius, stepEdgeM / cosine) : radius;
  }

  /** Area A of the step under the cutter, m². */
  public double areaM2() {
    return areaM2;
  }

  /** Mean torque, z·A·w/2π, N·m, at a force per width w = kc·h, N/m, of the axial chip h. */
  public double meanTorqueNm(double forcePerWidthNPerM) {
    return teeth * areaM2 / (2 * Math.PI) * forcePerWidthNPerM;
  }

  /** Largest torque over a revolution, N·m, at a force per width, N/m. */
  public double peakTorqueNm(double forcePerWidthNPerM) {
    return torquePeakM2 * forcePerWidthNPerM;
  }

  /** Largest lateral resultant of the tangential forces, N, at a force per width, N/m. */
  public double peakLateralForceN(double forcePerWidthNPerM) {
    return lateralPeakM * forcePerWidthNPerM;
  }

  /**
   * Largest lateral force normal to the step over a revolution, N, at a force per width, N/m: an
   * upper bound of what bends the cutter off its wall, which each tooth passes at φ = 0 where its
   * own tangential force runs along the wall.
   */
  public double peakWallForceN(double forcePerWidthNPerM) {
    return wallPeakM * forcePerWidthNPerM;
  }

  /** Least width of all edges in contact over a revolution, m. */
  public double leastWidthM() {
    return widthLeastM;
  }

  /** Mean width of all edges in contact, m. */
  public double meanWidthM() {
    return widthMeanM;
  }

  /** Largest width of all edges in contact over a revolution, m. */
  public double mostWidthM() {
    return widthMostM;
  }

  /**
   * Removal rate Q = A·vf.
   *
   * @param axialFeedRateMPerS feed rate along the axis, m/s, &gt; 0
   * @return Q, m³/s
   */
  public double removalRateM3PerS(double axialFeedRateMPerS) {
    return areaM2 * Require.positive("axialFeedRateMPerS", axialFeedRateMPerS);
  }
}
