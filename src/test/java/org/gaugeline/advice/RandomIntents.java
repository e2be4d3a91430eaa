package org.gaugeline.advice;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** Realistic jobs drawn from a seed: the same seed gives the same job. */
public final class RandomIntents {
  private static final List<String> MATERIALS =
      List.of(
          "C45", "42CrMo4", "X5CrNi18-10", "EN-GJL-250", "EN AW-6082", "Ti-6Al-4V", "alloy-718");
  private static final List<String> SPINDLES =
      List.of("BT30", "BT40", "CAT40", "SK50", "BT50", "HSK-A63", "HSK-A100", "PSC-C6", "TS-63");
  private static final List<String> MILLING =
      List.of("side-milling", "slotting", "high-efficiency-milling", "profiling");
  private static final List<String> HOLES = List.of("drilling", "reaming", "boring", "tapping");
  private static final List<String> STAGES = List.of("roughing", "semi-finishing", "finishing");
  private static final List<Double> DIAMETERS = List.of(6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0);

  private final SplittableRandom random;

  private RandomIntents(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** That many jobs; the seed is the label of each. */
  public static Stream<Intents> of(int count) {
    return LongStream.range(0, count).mapToObj(RandomIntents::ofSeed);
  }

  /** The milling jobs among them. */
  public static Stream<Intents> milling(int count) {
    return LongStream.range(0, count).mapToObj(seed -> new RandomIntents(seed).milling(seed));
  }

  static Intents ofSeed(long seed) {
    RandomIntents draw = new RandomIntents(seed);
    return draw.random.nextInt(4) == 0 ? draw.hole(seed) : draw.milling(seed);
  }

  private Intents milling(long seed) {
    String operation = any(MILLING);
    double d = any(DIAMETERS);
    double radial =
        switch (operation) {
          case "slotting" -> d;
          case "high-efficiency-milling" -> d * between(0.05, 0.12);
          case "profiling" -> d * between(0.02, 0.08);
          default -> d * between(0.05, 0.5);
        };
    return base(seed, operation, operation.equals("profiling") ? "ball-end-mill" : "end-mill", d)
        .with("/operation/stage", any(STAGES))
        .with("/operation/radialDepthMm", radial)
        .with("/operation/axialDepthMm", d * between(0.1, operation.equals("slotting") ? 1 : 1.6))
        .with("/operation/feedPerToothMm", d * between(0.003, 0.008))
        .with("/tool/helixDeg", between(25, 48))
        .with("/tool/fluteLengthMm", 2.2 * d)
        .with("/tool/overallLengthMm", 2.2 * d + 60)
        .with("/feature/depthMm", d * between(0.5, 3));
  }

  private Intents hole(long seed) {
    String operation = any(HOLES);
    double d = any(DIAMETERS);
    Intents base = base(seed, operation, holeTool(operation), d);
    return (operation.equals("tapping") ? base.with("/tool/pitchMm", 0.15 * d) : base)
        .with("/tool/fluteLengthMm", 4.5 * d)
        .with("/tool/overallLengthMm", 4.5 * d + 60)
        .with("/feature/depthMm", d * between(1, 4));
  }

  private static String holeTool(String operation) {
    return switch (operation) {
      case "drilling" -> "drill";
      case "reaming" -> "reamer";
      case "boring" -> "boring-tool";
      default -> "tap";
    };
  }

  private Intents base(long seed, String operation, String tool, double diameterMm) {
    String spindle = any(SPINDLES);
    Intents intents =
        Intents.of(operation, tool, diameterMm, any(MATERIALS), spindle)
            .with("/label", "seed " + seed)
            .with("/operation/spindleSpeedRpm", between(10_000, 50_000) / diameterMm)
            .with("/tool/shank/diameterMm", diameterMm)
            .with("/tool/shank/form", random.nextBoolean() ? "cylindrical" : "flat")
            .with("/shop/torqueWrench", random.nextBoolean())
            .with("/shop/balancer", random.nextBoolean())
            .with("/shop/colletCondition", random.nextBoolean() ? "new" : "used");
    return random.nextBoolean() ? intents.with("/machine/faceContact", true) : intents;
  }

  private double between(double least, double most) {
    return random.nextDouble(least, most);
  }

  private <T> T any(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
