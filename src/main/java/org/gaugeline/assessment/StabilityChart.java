package org.gaugeline.assessment;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Depth limits of one cut with one assembly over the spindle speed, in SI.
 *
 * @param method how the boundary was found
 * @param immersion radial depth over diameter
 * @param floorError relative error of the method near the floors; NaN where it is not known
 * @param lobeError the same high on the lobes
 * @param ktPa tangential coefficient
 * @param krRatio radial over tangential coefficient, across the axis
 * @param ktSourceKey source of K_t
 * @param dampingWaveM length of a chatter wave at which flanks damp as strongly as the chip drives
 * @param measured whether the response of the tip was measured
 * @param boundary limits at the median, by rising speed
 * @param at limits at the asked speeds, in the order asked
 * @param guaranteed limit that holds at any speed
 * @param best speeds with the deepest stable cuts within the machine's range, deepest first
 * @param modes modes of the tip that were used; none for a sampled response
 * @param band spread of the boundary
 * @param cut the asked cut
 * @param damper what the tuned mass is worth; null without one, and where the tip was measured
 * @param overhangs how far out plain bars may stand for the asked cut
 * @param cautions what a person must know before trusting it
 */
public record StabilityChart(
    StabilityMethod method,
    double immersion,
    double floorError,
    double lobeError,
    double ktPa,
    double krRatio,
    String ktSourceKey,
    double dampingWaveM,
    boolean measured,
    List<Point> boundary,
    List<Point> at,
    Point guaranteed,
    List<Point> best,
    List<Mode> modes,
    Band band,
    Cut cut,
    @Nullable DamperTunings damper,
    Overhangs overhangs,
    List<Caution> cautions) {

  /**
   * A limit at a speed.
   *
   * @param depthM +∞ where no depth chatters
   * @param chatterHz NaN where none does
   */
  public record Point(double spindleRadPerS, double depthM, double chatterHz) {}

  /**
   * A mode of the tip.
   *
   * @param direction {@code x}, {@code y}, or {@code xy} for both alike
   */
  public record Mode(
      String direction, double frequencyHz, double dampingRatio, double stiffnessNPerM) {}

  /**
   * Percentiles of the zeroth-order boundary under the spread of joints, damping and force.
   *
   * @param draws how many joint draws they come from
   */
  public record Band(List<Point> p05, List<Point> p95, int draws) {}

  /**
   * The asked cut.
   *
   * @param limit its limit at the median
   * @param p05M depth limit undercut with 5 % probability
   * @param p95M the same with 95 %
   * @param probabilityStable share of the draws in which it is stable
   * @param narrowing what a single measurement would leave of the spread, the best first
   */
  public record Cut(
      double spindleRadPerS,
      double depthM,
      Point limit,
      double p05M,
      double p95M,
      double probabilityStable,
      List<Narrowing> narrowing) {}

  /**
   * What one measurement would do.
   *
   * @param measurement kebab word
   * @param pointer where in the request its result belongs
   * @param spreadRatio p95 over p05 of the depth limit that it would leave
   */
  public record Narrowing(String measurement, String pointer, double spreadRatio) {}
}
