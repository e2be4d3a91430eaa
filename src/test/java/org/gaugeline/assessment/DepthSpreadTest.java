package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.spread.Quantiles;
import org.junit.jupiter.api.Test;

/** A stable depth as limits that the spread of the force spreads out. */
class DepthSpreadTest {
  private static final double[] PROBABILITIES = {0.01, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99};

  /** One limit has the spread of the force alone, upside down. */
  @Test
  void ofOneLimitTheForceIsTheWholeSpread() {
    Quantiles force = new Quantiles(0.7, 1, 1.6);
    DepthSpread one = DepthSpread.of(new double[] {2e-3}, force);
    for (double p : PROBABILITIES) {
      assertThat(one.quantileM(p) / 2e-3)
          .as("%s point", p)
          .isCloseTo(1 / force.quantile(1 - p), within(1e-8));
    }
    assertThat(one.probabilityAtLeast(2e-3)).isEqualTo(0.5);
  }

  /** Second route: the same limits with every one of 2000 equally likely forces, sorted. */
  @Test
  void isWhatManyForcesWouldGive() {
    SplittableRandom random = new SplittableRandom(91);
    for (int i = 0; i < 40; i++) {
      Quantiles force =
          new Quantiles(random.nextDouble(0.5, 0.9), 1, 1 / random.nextDouble(0.5, 0.9));
      double[] limits =
          IntStream.range(0, 11).mapToDouble(k -> Math.exp(random.nextDouble(-8, -3))).toArray();
      double[] all =
          Arrays.stream(limits)
              .flatMap(
                  limit ->
                      IntStream.range(0, 2000)
                          .mapToDouble(k -> limit / force.quantile((k + 0.5) / 2000)))
              .sorted()
              .toArray();
      DepthSpread spread = DepthSpread.of(limits, force);
      for (double p : PROBABILITIES) {
        double depth = spread.quantileM(p);
        assertThat(depth)
            .as("case %d, %s point", i, p)
            .isBetween(all[(int) (p * all.length) - 20], all[(int) (p * all.length) + 20]);
        assertThat(spread.probabilityAtLeast(depth)).isCloseTo(1 - p, within(1e-7));
      }
    }
  }

  /** A force that is known leaves the limits as they are. */
  @Test
  void withoutSpreadOfTheForceItIsSteps() {
    DepthSpread steps = DepthSpread.of(new double[] {4, 1, 3, 2}, Quantiles.exact(1));
    assertThat(steps.quantileM(0.05)).isCloseTo(1, within(1e-8));
    assertThat(steps.quantileM(0.3)).isCloseTo(2, within(1e-8));
    assertThat(steps.quantileM(0.95)).isCloseTo(4, within(1e-8));
    assertThat(steps.probabilityAtLeast(2.5)).isEqualTo(0.5);
  }

  @Test
  void whatNeverChattersHasNoLimit() {
    double never = Double.POSITIVE_INFINITY;
    DepthSpread half = DepthSpread.of(new double[] {never, 1, never, 2}, Quantiles.of(1, 1.5));
    assertThat(half.quantileM(0.05)).isBetween(0.5, 1.0);
    assertThat(half.quantileM(0.6)).isInfinite();
    assertThat(half.probabilityAtLeast(1000)).isCloseTo(0.5, within(1e-12));
    assertThat(DepthSpread.of(new double[] {never}, Quantiles.of(1, 2)).quantileM(0.5))
        .isInfinite();
  }

  /** Where limits just make up a probability and the rest is far, they say what they bear. */
  @Test
  void halfOfTheLimitsSayNoMoreThanTheyBear() {
    for (double factor : new double[] {1, 1.2, 1.5}) {
      Quantiles force = Quantiles.of(1, factor);
      for (double next : new double[] {1e6, Double.POSITIVE_INFINITY}) {
        assertThat(DepthSpread.of(new double[] {1, next, 2, next}, force).quantileM(0.5))
            .as("force %s, rest at %s", factor, next)
            .isBetween(2 - 1e-9, 2 / force.atStandardScore(-2) + 1e-9);
      }
      assertThat(DepthSpread.atBest(new double[] {1, 2}, 4, force).quantileM(0.5)).isInfinite();
    }
  }

  /** More limits can only lower what a few of them allow. */
  @Test
  void aFewLimitsBoundAll() {
    SplittableRandom random = new SplittableRandom(92);
    for (int i = 0; i < 200; i++) {
      Quantiles force = Quantiles.of(1, random.nextDouble(1, 2));
      double[] limits =
          IntStream.range(0, 12).mapToDouble(k -> Math.exp(random.nextDouble(-8, -3))).toArray();
      DepthSpread all = DepthSpread.of(limits, force);
      for (int known = 0; known < 12; known++) {
        DepthSpread some = DepthSpread.atBest(Arrays.copyOf(limits, known), 12, force);
        for (double p : PROBABILITIES) {
          assertThat(some.quantileM(p))
              .as("case %d, %s point of %d", i, p, known)
              .isGreaterThanOrEqualTo(all.quantileM(p) * (1 - 1e-8));
        }
      }
    }
  }
}
