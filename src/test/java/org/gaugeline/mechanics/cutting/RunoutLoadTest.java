package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RunoutLoadTest {
  @Test
  void extraChipIsTheLargestDifferenceOfNeighboursOnAnOffsetCircle() {
    // Kline & DeVor 1983: radius of tooth i is e·cos(λ − 2πi/z); scan λ for the largest step.
    double tir = 10e-6;
    for (int teeth = 2; teeth <= 8; teeth++) {
      double largest = 0;
      for (int k = 0; k < 100_000; k++) {
        double lambda = 2 * Math.PI * k / 100_000;
        double step = Math.cos(lambda) - Math.cos(lambda + 2 * Math.PI / teeth);
        largest = Math.max(largest, tir / 2 * step);
      }
      assertThat(RunoutLoad.extraChipLoadM(tir, teeth)).isCloseTo(largest, within(1e-13));
    }
  }

  @Test
  void sharesOfTheIndicatorReadingByTeeth() {
    // sin(π/z): all of it on two teeth, 0.87 on three, 0.71 on four, half on six.
    assertThat(RunoutLoad.extraChipLoadM(1, 1)).isZero();
    assertThat(RunoutLoad.extraChipLoadM(1, 2)).isCloseTo(1, within(1e-12));
    assertThat(RunoutLoad.extraChipLoadM(1, 3)).isCloseTo(0.866, within(1e-3));
    assertThat(RunoutLoad.extraChipLoadM(1, 4)).isCloseTo(0.707, within(1e-3));
    assertThat(RunoutLoad.extraChipLoadM(1, 6)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void peakForceFollowsTheKienzleExponent() {
    assertThat(RunoutLoad.peakForceFactor(0, 4, 50e-6, 0.25)).isEqualTo(1);
    assertThat(RunoutLoad.peakForceFactor(50e-6, 2, 50e-6, 0.25))
        .isCloseTo(Math.pow(2, 0.75), within(1e-12));
    assertThat(RunoutLoad.peakForceFactor(20e-6, 2, 50e-6, 0)).isCloseTo(1.4, within(1e-12));
  }

  @Test
  void aToothStopsCuttingWhenItsNeighbourTakesTheWholeFeed() {
    assertThat(RunoutLoad.toothStopsCutting(49e-6, 2, 50e-6)).isFalse();
    assertThat(RunoutLoad.toothStopsCutting(51e-6, 2, 50e-6)).isTrue();
    assertThat(RunoutLoad.toothStopsCutting(60e-6, 4, 50e-6)).isFalse();
    assertThat(RunoutLoad.toothStopsCutting(1, 1, 50e-6)).isFalse();
  }

  @Test
  void refusesNegativeReading() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RunoutLoad.extraChipLoadM(-1e-6, 4))
        .withMessageContaining("tirM");
  }
}
