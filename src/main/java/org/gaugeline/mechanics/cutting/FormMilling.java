package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * Loads of a cutter that leaves its own shape, summed over its slices and teeth through a pitch.
 *
 * <p>Model: rigid tool without runout, straight flutes, chip fz·sin κ·sin θ, tangential force kc·h
 * per width, force normal to the edge a fixed share of it. A helix would spread the peaks: they are
 * an upper bound. The force normal to the wall is the largest over the revolution, an upper bound
 * of what bends the cutter off.
 *
 * @param meanTorqueNm mean torque, N·m
 * @param peakTorqueNm largest torque, N·m
 * @param peakLateralForceN largest lateral resultant, N
 * @param peakWallForceN largest force normal to the wall, N
 * @param meanFeedForceN mean lateral force against the feed, N; negative where the work drags the
 *     cutter along
 * @param peakPushN largest push of inclined edges into the holder, N
 * @param meanChipThicknessM mean chip thickness over edge and arc, m
 */
public record FormMilling(
    double meanTorqueNm,
    double peakTorqueNm,
    double peakLateralForceN,
    double peakWallForceN,
    double meanFeedForceN,
    double peakPushN,
    double meanChipThicknessM) {
  private static final int STEPS_A_TURN = 720;
  private static final int LEAST_STEPS = 120;
  private static final int MOST_STEPS = 240;

  /**
   * Loads of a cut.
   *
   * @param edge edge of one tooth
   * @param teeth number of teeth z, &ge; 1
   * @param feedPerToothM feed per tooth fz of the cutter's centre, m, &gt; 0
   * @param force specific cutting force
   * @param radialRatio force normal to the edge over tangential force, 0 to 2
   * @param down whether the chip ends at the wall (down-milling) or begins there
   * @return the loads
   */
  public static FormMilling of(
      FormEdge edge,
      int teeth,
      double feedPerToothM,
      SpecificForce force,
      double radialRatio,
      boolean down) {
    Require.atLeastOne("teeth", teeth);
    Require.positive("feedPerToothM", feedPerToothM);
    Require.within("radialRatio", radialRatio, 0, 2);
    double longest = 0;
    for (FormEdge.Slice slice : edge.slices()) {
      longest = Math.max(longest, slice.arcRad());
    }
    Sums sums = new Sums(edge, feedPerToothM, force.law(), radialRatio, down ? 1 : -1);
    double pitch = 2 * Math.PI / teeth;
    double span = Math.min(pitch, longest);
    int steps =
        (int) Math.max(LEAST_STEPS, Math.min(MOST_STEPS, STEPS_A_TURN * span / (2 * Math.PI)));
    for (int i = 0; i < steps; i++) {
      double first = span * (i + 0.5) / steps;
      sums.clear();
      for (double theta = first; theta < longest; theta += pitch) {
        sums.add(theta);
      }
      sums.take(span / steps / pitch);
    }
    return sums.loads();
  }

  private static final class Sums {
    private final FormEdge edge;
    private final double feedM;
    private final ForceLaw law;
    private final double ratio;
    private final double sense;
    private double torque;
    private double normal;
    private double along;
    private double push;
    private double meanTorque;
    private double peakTorque;
    private double peakLateral;
    private double peakWall;
    private double peakPush;
    private double meanAlong;
    private double chipSum;
    private double edgeSum;

    Sums(FormEdge edge, double feedM, ForceLaw law, double ratio, double sense) {
      this.edge = edge;
      this.feedM = feedM;
      this.law = law;
      this.ratio = ratio;
      this.sense = sense;
    }

    void clear() {
      torque = 0;
      normal = 0;
      along = 0;
      push = 0;
    }

    void add(double theta) {
      double sine = Math.sin(theta);
      double cosine = Math.cos(theta);
      double lead = -1;
      double perWidth = 0;
      for (FormEdge.Slice slice : edge.slices()) {
        if (theta > slice.arcRad()) {
          continue;
        }
        double chip = feedM * slice.leadSine() * sine;
        if (slice.leadSine() != lead) {
          lead = slice.leadSine();
          perWidth = law.forcePerWidth(chip);
        }
        double tangential = slice.lengthM() * perWidth;
        double radial = ratio * lead * tangential;
        torque += tangential * slice.radiusM();
        normal += sense * tangential * sine + radial * cosine;
        along += sense * tangential * cosine - radial * sine;
        push += ratio * slice.axialCosine() * tangential;
        chipSum += chip * slice.lengthM();
        edgeSum += slice.lengthM();
      }
    }

    void take(double share) {
      meanTorque += torque * share;
      meanAlong += along * share;
      peakTorque = Math.max(peakTorque, torque);
      peakLateral = Math.max(peakLateral, Math.hypot(normal, along));
      peakWall = Math.max(peakWall, Math.abs(normal));
      peakPush = Math.max(peakPush, push);
    }

    FormMilling loads() {
      return new FormMilling(
          meanTorque, peakTorque, peakLateral, peakWall, -meanAlong, peakPush, chipSum / edgeSum);
    }
  }
}
