package org.gaugeline.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class FalsePositionTest {
  private static double zero(double low, double high, int steps, DoubleUnaryOperator f) {
    FalsePosition bracket =
        new FalsePosition(low, f.applyAsDouble(low), high, f.applyAsDouble(high));
    double x = low;
    for (int i = 0; i < steps; i++) {
      x = bracket.next();
      assertThat(x).isBetween(low, high);
      bracket.narrow(x, f.applyAsDouble(x));
    }
    return x;
  }

  /** cos x = x has its zero at 0.7390851332 (any table). */
  @Test
  void findsAZeroInAFewSteps() {
    assertThat(zero(0, 1.5, 8, x -> Math.cos(x) - x)).isCloseTo(0.7390851332, within(1e-9));
    assertThat(zero(0, 1.5, 8, x -> x - Math.cos(x))).isCloseTo(0.7390851332, within(1e-9));
  }

  /** Plain false position creeps along a curve like x¹⁰ − 1; an end that counts half does not. */
  @Test
  void doesNotStall() {
    assertThat(zero(0, 1.3, 16, x -> Math.pow(x, 10) - 1)).isCloseTo(1, within(1e-6));
  }

  @Test
  void halvesBesideAPole() {
    assertThat(zero(0, 4, 20, x -> x == 0 ? Double.POSITIVE_INFINITY : 1 / x - 2))
        .isCloseTo(0.5, within(1e-6));
  }
}
