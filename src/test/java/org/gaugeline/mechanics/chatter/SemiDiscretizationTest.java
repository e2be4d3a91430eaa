package org.gaugeline.mechanics.chatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.gaugeline.mechanics.chatter.Benchmarks.radPerS;

import java.util.List;
import java.util.SplittableRandom;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipModel;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class SemiDiscretizationTest {
  private static final ModalResponse RIGID = ModalResponse.of();

  /**
   * One-mode benchmark, slotting at 5000 rpm: reference values of Ding et al. 2010 (memory), of
   * this method with 200 steps and converged by collocation (both computed by a second route).
   */
  @Test
  void multipliersOfTheBenchmark() {
    SemiDiscretization fine = benchmark(MillingEngagement.slot(), 200);
    double[] depthMm = {0.2, 0.5, 0.7, 1.0};
    double[] ding = {0.8192, 1.0726, 1.2197, 1.4040};
    double[] method = {0.8193, 1.0727, 1.2199, 1.4042};
    double[] converged = {0.81974, 1.07398, 1.22156, 1.40647};
    for (int i = 0; i < depthMm.length; i++) {
      double size = fine.multiplier(radPerS(5000), depthMm[i] * 1e-3).size();
      assertThat(size).as("%s mm", depthMm[i]).isCloseTo(method[i], within(6e-5));
      assertThat(size).isCloseTo(ding[i], within(3e-4));
      assertThat(size).isCloseTo(converged[i], withinPercentage(0.2));
    }
  }

  /** Limits of the same benchmark converged by collocation (computed); 160 steps within 1.5 %. */
  @Test
  void convergedLimitsOfTheBenchmark() {
    double[] rpm = {5000, 8000, 12_000, 16_000, 20_000};
    check(MillingEngagement.slot(), rpm, 0.409, 0.676, 2.149, 0.319, 1.418);
    check(MillingEngagement.down(0.1, 1), rpm, 1.296, 1.220, 0.943, 3.116, 1.222);
    check(MillingEngagement.up(0.05, 1), rpm, 2.146, 3.496, 6.233, 1.600, 3.774);
    check(MillingEngagement.down(0.05, 1), rpm, 2.207, 2.163, 1.681, 5.518, 2.299);
  }

  private static void check(MillingEngagement arc, double[] rpm, double... depthMm) {
    SemiDiscretization cut = benchmark(arc, 160);
    for (int i = 0; i < rpm.length; i++) {
      SemiDiscreteLimit limit = cut.limit(radPerS(rpm[i]), 0.1e-3, 10e-3);
      assertThat(limit.isReached()).isTrue();
      assertThat(limit.depthM() * 1e3)
          .as("%s at %s rpm", arc, rpm[i])
          .isCloseTo(depthMm[i], withinPercentage(1.5));
    }
  }

  /**
   * At low immersion the cut doubles its period, where the mean factors see three times the depth.
   */
  @Test
  void periodDoublingAtLowImmersion() {
    MillingEngagement arc = MillingEngagement.up(0.05, 1);
    double speed = radPerS(19_000);
    SemiDiscreteLimit limit = benchmark(arc, 80).limit(speed, 0.1e-3, 20e-3);
    double mean =
        StabilityLobes.milling(
                Benchmarks.benchmarkCut(arc), new TipModel(Benchmarks.BENCHMARK_X, RIGID))
            .limitAt(speed)
            .depthM();
    assertThat(limit.multiplier().doublesPeriod()).isTrue();
    assertThat(limit.multiplier().re()).isCloseTo(-1, within(2e-3));
    assertThat(limit.depthM()).isLessThan(mean / 3);
    SemiDiscreteLimit other = benchmark(arc, 80).limit(radPerS(16_000), 0.1e-3, 20e-3);
    assertThat(other.multiplier().doublesPeriod()).isFalse();
  }

  /** Four modes of Altintas 2012, p. 162: 0.974 mm at 9500 and 5.73 at 14 000 rpm (computed). */
  @Test
  void bookExampleWithFourModes() {
    SemiDiscretization cut =
        new SemiDiscretization(
            Benchmarks.BOOK_CUT,
            Benchmarks.BOOK_X,
            Benchmarks.BOOK_Y,
            SemiDiscretization.DEFAULT_STEPS);
    assertThat(cut.limit(radPerS(9500), 0.5e-3, 2e-3).depthM())
        .isCloseTo(0.974e-3, withinPercentage(1));
    assertThat(cut.limit(radPerS(14_000), 2e-3, 10e-3).depthM())
        .isCloseTo(5.73e-3, withinPercentage(1));
  }

  /** Quarter immersion, symmetric: 1.45/2.79/1.48 mm (computed by a second route). */
  @Test
  void symmetricTipAtQuarterImmersion() {
    SemiDiscretization cut =
        new SemiDiscretization(
            Benchmarks.QUARTER_UP, Benchmarks.SYMMETRIC, Benchmarks.SYMMETRIC, 120);
    double[] rpm = {3000, 4000, 5000};
    double[] depthMm = {1.45, 2.79, 1.48};
    for (int i = 0; i < rpm.length; i++) {
      assertThat(cut.limit(radPerS(rpm[i]), 0.5e-3, 10e-3).depthM() * 1e3)
          .isCloseTo(depthMm[i], within(0.01));
    }
  }

  /** Without a cut the multiplier is the decay e^(−ζωτ) of the slowest mode. */
  @Test
  void idleSpindleOnlyDecays() {
    double zetaOmega = 0.011 * Benchmarks.TWO_PI * 922;
    double period = 60 / (2 * 6000.0);
    FloquetMultiplier idle = benchmark(MillingEngagement.slot(), 80).multiplier(radPerS(6000), 0);
    assertThat(idle.size()).isCloseTo(Math.exp(-zetaOmega * period), within(1e-9));
    assertThat(idle.isStable()).isTrue();
  }

  /** The whole period map as a matrix and Gelfand's formula, ρ = lim ‖Φⁿ‖^(1/n). */
  @Test
  void dominantMultiplierIsTheLargestEigenvalueOfTheWholeMatrix() {
    List<SemiDiscretization> cuts =
        List.of(
            benchmark(MillingEngagement.slot(), 40),
            benchmark(MillingEngagement.up(0.05, 1), 40),
            new SemiDiscretization(Benchmarks.BOOK_CUT, Benchmarks.BOOK_X, Benchmarks.BOOK_Y, 40));
    for (SemiDiscretization cut : cuts) {
      for (double rpm : new double[] {2000, 9500, 19_000}) {
        PeriodMap map = cut.map(radPerS(rpm), 1e-3);
        double largest = spectralRadius(matrix(map));
        assertThat(cut.multiplier(radPerS(rpm), 1e-3).size())
            .as("%s rpm", rpm)
            .isCloseTo(largest, withinPercentage(1e-3));
      }
    }
  }

  private static double spectralRadius(double[][] matrix) {
    RealMatrix power = new Array2DRowRealMatrix(matrix);
    double logarithm = 0;
    double exponent = 1;
    for (int squaring = 0; squaring < 24; squaring++) {
      double size = power.getFrobeniusNorm();
      logarithm += Math.log(size) / exponent;
      power = power.scalarMultiply(1 / size);
      power = power.multiply(power);
      exponent *= 2;
    }
    return Math.exp(logarithm);
  }

  private static double[][] matrix(PeriodMap map) {
    int n = map.length();
    double[][] matrix = new double[n][n];
    double[] to = new double[n];
    for (int j = 0; j < n; j++) {
      double[] unit = new double[n];
      unit[j] = 1;
      map.apply(unit, to);
      for (int i = 0; i < n; i++) {
        matrix[i][j] = to[i];
      }
    }
    return matrix;
  }

  @Test
  void qrFindsTheEigenvaluesOfHessenbergMatrices() {
    long seed = 83;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 100; run++) {
      int n = random.nextInt(1, 25);
      double[][] h = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = Math.max(0, i - 1); j < n; j++) {
          h[i][j] = random.nextInt(6) == 0 ? 0 : random.nextDouble() - 0.5;
        }
      }
      double[] ours = HessenbergEigenvalues.of(n, h);
      Complex[] expected =
          new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(h)).getEigenvalues();
      for (Complex value : expected) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
          nearest =
              Math.min(nearest, value.subtract(new Complex(ours[2 * i], ours[2 * i + 1])).norm());
        }
        assertThat(nearest).as("seed %s run %s order %s", seed, run, n).isLessThan(1e-6);
      }
    }
  }

  /** A damped rotation has its exponential in closed form. */
  @Test
  void exponentialOfADampedRotation() {
    double[] matrix = {-0.3, 7, -7, -0.3};
    double decay = Math.exp(-0.3);
    double[] e = MatrixExponential.of(matrix, 2);
    assertThat(e[0]).isCloseTo(decay * Math.cos(7), within(1e-13));
    assertThat(e[1]).isCloseTo(decay * Math.sin(7), within(1e-13));
    assertThat(e[2]).isCloseTo(-decay * Math.sin(7), within(1e-13));
    assertThat(e[3]).isCloseTo(decay * Math.cos(7), within(1e-13));
  }

  @Test
  void saysWhenTheWholeRangeIsStableOrNone() {
    SemiDiscretization cut = benchmark(MillingEngagement.slot(), 80);
    SemiDiscreteLimit stable = cut.limit(radPerS(12_000), 0.1e-3, 1e-3);
    assertThat(stable.isReached()).isFalse();
    assertThat(stable.depthM()).isEqualTo(1e-3);
    SemiDiscreteLimit unstable = cut.limit(radPerS(5000), 1e-3, 2e-3);
    assertThat(unstable.isReached()).isTrue();
    assertThat(unstable.depthM()).isEqualTo(1e-3);
    assertThatThrownBy(() -> cut.limit(radPerS(5000), 1e-3, 1e-3))
        .hasMessageContaining("highM - lowM");
    assertThatThrownBy(() -> new SemiDiscretization(Benchmarks.BOOK_CUT, RIGID, RIGID, 80))
        .hasMessageContaining("number of modes is 0");
  }

  private static SemiDiscretization benchmark(MillingEngagement arc, int steps) {
    return new SemiDiscretization(
        Benchmarks.benchmarkCut(arc), Benchmarks.BENCHMARK_X, RIGID, steps);
  }
}
