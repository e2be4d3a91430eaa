package org.gaugeline.mechanics.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KnownRunoutTest {
  /** Integral of Rice's density, the Bessel function from its own integral, by Hipparchus. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 1, 3, 8, 19.9, 20.1, 60})
  void agreesWithTheIntegratedDensity(double known) {
    KnownRunout runout = new KnownRunout(known, 1);
    for (double limit = Math.max(0.2, known - 3.7); limit < known + 4; limit += 0.93) {
      assertThat(runout.probabilityAtMost(2 * limit))
          .as("ν/σ=%s r/σ=%s", known, limit)
          .isCloseTo(integratedDensity(known, limit), within(1e-11));
    }
  }

  @Test
  void withoutKnownPartItIsRayleigh() {
    KnownRunout runout = new KnownRunout(0, 2e-6);
    RunoutStack stack = new RunoutStack(2e-6);
    for (double p = 0.01; p < 1; p += 0.07) {
      assertThat(runout.quantileTirM(p)).isCloseTo(stack.quantileTirM(p), within(1e-14));
    }
  }

  @Test
  void withoutScatterItIsTheKnownPart() {
    KnownRunout runout = new KnownRunout(5e-6, 0);
    assertThat(runout.quantileTirM(0.95)).isEqualTo(10e-6);
    assertThat(runout.probabilityAtMost(9.9e-6)).isZero();
    assertThat(runout.probabilityAtMost(10e-6)).isEqualTo(1);
  }

  @Test
  void quantileUndoesProbabilityAndGrowsWithTheKnownPart() {
    SplittableRandom random = new SplittableRandom(71);
    for (int i = 0; i < 400; i++) {
      double sigma = Math.pow(10, random.nextDouble(-7, -4));
      double known = sigma * random.nextDouble(0, 40);
      double p = random.nextDouble(0.001, 0.999);
      KnownRunout runout = new KnownRunout(known, sigma);
      double tirM = runout.quantileTirM(p);
      assertThat(runout.probabilityAtMost(tirM))
          .as("seed 71, %s p=%s", runout, p)
          .isCloseTo(p, within(1e-9));
      assertThat(new KnownRunout(known + sigma, sigma).quantileTirM(p))
          .as("seed 71, %s p=%s", runout, p)
          .isGreaterThan(tirM);
    }
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new KnownRunout(1e-6, -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("sigmaM is -1.0");
    assertThatThrownBy(() -> new KnownRunout(1e-6, 1e-6).quantileTirM(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("probability is 0.0");
  }

  private static double integratedDensity(double known, double limit) {
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(20, 1e-11, 1e-13);
    double from = Math.max(0, known - 9);
    return integrator.integrate(
        1_000_000,
        r -> r * Math.exp(-(r - known) * (r - known) / 2) * scaledBessel(r * known),
        from,
        limit);
  }

  /** exp(−x)·I0(x) by the trapezoidal rule, which converges geometrically on a full period. */
  private static double scaledBessel(double x) {
    int points = 1200;
    double sum = 0;
    for (int i = 0; i < points; i++) {
      sum += Math.exp(x * (Math.cos(2 * Math.PI * i / points) - 1));
    }
    return sum / points;
  }
}
