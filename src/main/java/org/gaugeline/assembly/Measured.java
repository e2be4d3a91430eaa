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
 * @param response samples of the tip's response from a tap test, ascending in each direction; empty
 *     where there was none
 */
public record Measured(
    double runoutTirM,
    double gaugeLengthM,
    double massKg,
    List<Mode> modes,
    List<Sample> response) {
  private static final double N = Double.NaN;

  /** Without a sampled response. */
  public Measured(double runoutTirM, double gaugeLengthM, double massKg, List<Mode> modes) {
    this(runoutTirM, gaugeLengthM, massKg, modes, List.of());
  }

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

  /**
   * The response x/f of the tip at one frequency.
   *
   * @param alongFeed whether along the feed (x) or normal to it (y)
   * @param frequencyRadPerS frequency
   * @param realMPerN real part
   * @param imaginaryMPerN imaginary part
   */
  public record Sample(
      boolean alongFeed, double frequencyRadPerS, double realMPerN, double imaginaryMPerN) {}

  /** Whether the dynamics of the tip were measured. */
  public boolean hasDynamics() {
    return !modes.isEmpty() || !response.isEmpty();
  }

  /** Lowest measured frequency; NaN where there is none. */
  public double firstFrequencyRadPerS() {
    return modes.stream().mapToDouble(Mode::frequencyRadPerS).min().orElse(N);
  }
}
