package org.gaugeline.mechanics.chatter;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.GoldenSection;
import org.gaugeline.mechanics.Require;

/** Search for the speeds at which the most depth is stable. */
public final class StablePockets {
  private StablePockets() {}

  /**
   * The best speeds of a range: local maxima of the limit, the range's ends included, deepest
   * first; those deepest among the samples are refined.
   *
   * @param lobes the prepared limits
   * @param lowRadPerS lowest Ω, rad/s, greater than 0
   * @param highRadPerS highest Ω, rad/s, above the lowest
   * @param samples speeds looked at, evenly in ln Ω, 3 to 100 000; pockets narrower than their
   *     distance may be missed
   * @param refinements steps of golden section by which each is narrowed down, 0 to 60
   * @param most how many to return at most
   * @return the pockets
   */
  public static List<StablePocket> best(
      StabilityLobes lobes,
      double lowRadPerS,
      double highRadPerS,
      int samples,
      int refinements,
      int most) {
    Require.positive("lowRadPerS", lowRadPerS);
    Require.positive("highRadPerS - lowRadPerS", highRadPerS - lowRadPerS);
    Require.within("samples", samples, 3, 100_000);
    Require.within("refinements", refinements, 0, 60);
    double[] speed = new double[samples];
    double[] depth = new double[samples];
    for (int i = 0; i < samples; i++) {
      double share = i / (samples - 1.0);
      speed[i] = lowRadPerS * Math.pow(highRadPerS / lowRadPerS, share);
      depth[i] = lobes.limitAt(speed[i]).depthM();
    }
    return IntStream.range(0, samples)
        .filter(i -> isPeak(depth, i))
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -depth[i]))
        .limit(most)
        .map(i -> pocket(lobes, speed, i, refinements))
        .sorted(Comparator.comparingDouble(StablePocket::depthM).reversed())
        .limit(most)
        .toList();
  }

  private static boolean isPeak(double[] depth, int i) {
    return (i == 0 || depth[i] > depth[i - 1])
        && (i == depth.length - 1 || depth[i] >= depth[i + 1]);
  }

  private static StablePocket pocket(StabilityLobes lobes, double[] speed, int i, int refinements) {
    double low = speed[Math.max(0, i - 1)];
    double high = speed[Math.min(speed.length - 1, i + 1)];
    double best = GoldenSection.peak(low, high, refinements, each -> lobes.limitAt(each).depthM());
    return new StablePocket(best, lobes.limitAt(best).depthM());
  }
}
