package org.gaugeline.assembly;

import java.util.List;

/**
 * What was measured on a finished assembly; NaN stands for not measured. It replaces what is
 * predicted.
 *
 * @param runoutTirM runout at the tip, TIR
 * @param gaugeLengthM gauge plane to the tool's lowest point
 * @param massKg weighed mass, tool included
 * @param modes modes of the tip from a tap test; empty where there was none
 */
public record Measured(double runoutTirM, double gaugeLengthM, double massKg, List<Mode> modes) {
  private static final double N = Double.NaN;

  /** Nothing measured. */
  public static final Measured NONE = new Measured(N, N, N, List.of());

  /**
   * One mode of the tip.
   *
   * @param alongFeed whether along the feed (x) or normal to it (y)
   * @param frequencyRadPerS natural frequency
   * @param dampingRatio modal damping ratio
   * @param stiffnessNPerM modal stiffness at the tip
   */
  public record Mode(
      boolean alongFeed, double frequencyRadPerS, double dampingRatio, double stiffnessNPerM) {}

  /** Lowest measured frequency; NaN where there is none. */
  public double firstFrequencyRadPerS() {
    return modes.stream().mapToDouble(Mode::frequencyRadPerS).min().orElse(N);
  }
}
