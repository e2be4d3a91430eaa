package org.gaugeline.mechanics.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checked against the normal distribution of the Hipparchus library. */
class StandardNormalTest {
  private static final NormalDistribution REFERENCE = new NormalDistribution(0, 1);

  @Test
  void probabilityAgreesWithHipparchusOverTheWholeRange() {
    for (double z = -9; z <= 9; z += 0.0137) {
      assertThat(StandardNormal.probabilityAtMost(z))
          .as("z=%s", z)
          .isCloseTo(REFERENCE.cumulativeProbability(z), within(2e-14));
    }
  }

  @Test
  void quantileAgreesWithHipparchusInCentreAndFlank() {
    for (double exponent = -6; exponent < -0.31; exponent += 0.0731) {
      double p = Math.pow(10, exponent);
      double expected = REFERENCE.inverseCumulativeProbability(p);
      assertThat(StandardNormal.quantile(p)).as("p=%s", p).isCloseTo(expected, within(1e-9));
    }
    for (double p = 0.001; p < 1; p += 0.001) {
      double expected = REFERENCE.inverseCumulativeProbability(p);
      assertThat(StandardNormal.quantile(p)).as("p=%s", p).isCloseTo(expected, within(1e-9));
    }
  }

  /** Far tail, where the library's own inverse rounds off; values computed with SciPy's ndtri. */
  @ParameterizedTest
  @CsvSource({
    "1e-8, -5.612001244174789",
    "1e-10, -6.361340902404056",
    "1e-20, -9.262340089798408",
    "1e-100, -21.273453560965322"
  })
  void quantileInTheFarTail(double probability, double expected) {
    assertThat(StandardNormal.quantile(probability)).isCloseTo(expected, within(1e-12));
  }

  @Test
  void quantileUndoesProbability() {
    for (double z = -6; z <= 6; z += 0.05) {
      double p = StandardNormal.probabilityAtMost(z);
      assertThat(StandardNormal.quantile(p)).as("z=%s", z).isCloseTo(z, within(1e-6));
    }
  }

  @Test
  void endsAreInfiniteAndOutsideIsRejected() {
    assertThat(StandardNormal.quantile(0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(StandardNormal.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(StandardNormal.probabilityAtMost(Double.NEGATIVE_INFINITY)).isZero();
    assertThat(StandardNormal.probabilityAtMost(Double.POSITIVE_INFINITY)).isEqualTo(1);
    assertThat(StandardNormal.probabilityAtMost(Double.NaN)).isNaN();
    assertThatThrownBy(() -> StandardNormal.quantile(1.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("probability is 1.5 but must lie within 0.0 and 1.0");
  }

  @Test
  void ninetyFivePercentPointIsItsOwnQuantile() {
    assertThat(StandardNormal.quantile(0.95)).isCloseTo(StandardNormal.Z95, within(1e-14));
  }
}
