package org.gaugeline.mechanics.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.junit.jupiter.api.Test;

class QuantilesTest {
  private static final Quantiles SKEWED = new Quantiles(0.06, 0.12, 0.17);

  @Test
  void meetsItsThreePoints() {
    assertThat(SKEWED.quantile(0.05)).isCloseTo(0.06, within(1e-12));
    assertThat(SKEWED.quantile(0.5)).isCloseTo(0.12, within(1e-12));
    assertThat(SKEWED.quantile(0.95)).isCloseTo(0.17, within(1e-12));
    assertThat(SKEWED.probabilityAtMost(0.06)).isCloseTo(0.05, within(1e-12));
    assertThat(SKEWED.probabilityAtMost(0.12)).isEqualTo(0.5);
    assertThat(SKEWED.probabilityAtMost(0.17)).isCloseTo(0.95, within(1e-12));
    assertThat(SKEWED.probabilityAtLeast(0.17)).isCloseTo(0.05, within(1e-12));
  }

  /** With equal sides it is the log-normal distribution of the Hipparchus library. */
  @Test
  void symmetricSpreadIsLogNormal() {
    Quantiles spread = Quantiles.of(40, 1.5);
    LogNormalDistribution reference =
        new LogNormalDistribution(Math.log(40), Math.log(1.5) / StandardNormal.Z95);
    for (double x = 15; x < 120; x += 1.7) {
      assertThat(spread.probabilityAtMost(x))
          .as("x=%s", x)
          .isCloseTo(reference.cumulativeProbability(x), within(1e-12));
    }
  }

  @Test
  void quantileAndProbabilityAreInverse() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 500; i++) {
      double p = random.nextDouble(0.0005, 0.9995);
      double x = SKEWED.quantile(p);
      assertThat(SKEWED.probabilityAtMost(x)).as("seed 11, p=%s", p).isCloseTo(p, within(1e-10));
      assertThat(SKEWED.probabilityAtLeast(x))
          .as("seed 11, p=%s", p)
          .isCloseTo(1 - p, within(1e-10));
    }
  }

  @Test
  void productWidensAndDivisionSwapsSides() {
    Quantiles wide = new Quantiles(1, 2, 8);
    Quantiles narrow = new Quantiles(2, 3, 3.3);
    Quantiles product = wide.times(narrow);
    assertThat(product.median()).isCloseTo(6, within(1e-12));
    assertThat(Math.log(6 / product.p05()))
        .isCloseTo(Math.hypot(Math.log(2), Math.log(1.5)), within(1e-12));
    assertThat(Math.log(product.p95() / 6))
        .isCloseTo(Math.hypot(Math.log(4), Math.log(1.1)), within(1e-12));

    Quantiles quotient = Quantiles.exact(10).dividedBy(wide);
    assertThat(quotient.p05()).isCloseTo(10.0 / 8, within(1e-12));
    assertThat(quotient.median()).isCloseTo(5, within(1e-12));
    assertThat(quotient.p95()).isCloseTo(10, within(1e-12));
  }

  /** Seeded sampling of a symmetric product; sampling error of the 5 % point is below 1 %. */
  @Test
  void productAgreesWithSampling() {
    Quantiles first = Quantiles.of(3, 1.4);
    Quantiles second = Quantiles.of(5, 1.9);
    Quantiles product = first.times(second);
    SplittableRandom random = new SplittableRandom(23);
    int below = 0;
    int trials = 200_000;
    for (int i = 0; i < trials; i++) {
      double a = first.quantile(random.nextDouble(1e-9, 1));
      double b = second.quantile(random.nextDouble(1e-9, 1));
      below += a * b <= product.p05() ? 1 : 0;
    }
    assertThat((double) below / trials).as("seed 23").isCloseTo(0.05, within(0.002));
  }

  @Test
  void valueWithoutSpreadIsAStep() {
    Quantiles exact = Quantiles.exact(7);
    assertThat(exact.quantile(0.01)).isEqualTo(7);
    assertThat(exact.quantile(0.99)).isEqualTo(7);
    assertThat(exact.probabilityAtLeast(6.999)).isEqualTo(1);
    assertThat(exact.probabilityAtLeast(7)).isEqualTo(1);
    assertThat(exact.probabilityAtLeast(7.001)).isZero();
    assertThat(exact.probabilityAtMost(6.999)).isZero();
    assertThat(exact.probabilityAtMost(7)).isEqualTo(1);
    assertThat(exact.probabilityAtMost(7.001)).isEqualTo(1);
  }

  @Test
  void sideWithoutWidthHoldsHalfAtTheMedian() {
    Quantiles oneSided = new Quantiles(4, 4, 9);
    assertThat(oneSided.probabilityAtMost(3.99)).isZero();
    assertThat(oneSided.probabilityAtMost(4)).isEqualTo(0.5);
    assertThat(oneSided.probabilityAtLeast(4)).isEqualTo(1);
    assertThat(oneSided.probabilityAtMost(9)).isCloseTo(0.95, within(1e-12));
  }

  @Test
  void nothingLiesAtOrBelowZero() {
    assertThat(SKEWED.probabilityAtMost(0)).isZero();
    assertThat(SKEWED.probabilityAtLeast(-1)).isEqualTo(1);
    assertThat(SKEWED.probabilityAtLeast(Double.POSITIVE_INFINITY)).isZero();
  }

  @Test
  void scalingScalesEveryQuantile() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 200; i++) {
      double p = random.nextDouble(0.001, 0.999);
      double factor = random.nextDouble(0.01, 100);
      assertThat(SKEWED.scale(factor).quantile(p))
          .as("seed 5, p=%s factor=%s", p, factor)
          .isCloseTo(factor * SKEWED.quantile(p), withinPercentage(1e-9));
    }
  }

  @Test
  void disorderAndNonPositiveValuesAreRejected() {
    assertThatThrownBy(() -> new Quantiles(2, 1, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("median is 1.0");
    assertThatThrownBy(() -> new Quantiles(0, 1, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("p05 is 0.0");
    assertThatThrownBy(() -> new Quantiles(1, Double.NaN, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("median");
    assertThatThrownBy(() -> Quantiles.of(1, 0.9)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SKEWED.scale(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SKEWED.quantile(1)).isInstanceOf(IllegalArgumentException.class);
  }
}
