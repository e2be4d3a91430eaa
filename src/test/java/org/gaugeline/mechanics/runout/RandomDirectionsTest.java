package org.gaugeline.mechanics.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RandomDirectionsTest {
  /** Second calculation by quadrature and by sampling: sizes 1, 2, 3 give P(R ≤ 3.5) = 0.4795. */
  @Test
  void threeVectors() {
    assertThat(RandomDirections.probabilityAtMost(new double[] {1, 2, 3}, 3.5))
        .isCloseTo(0.4795, within(0.00005));
  }

  @Test
  void orderDoesNotMatter() {
    double expected = RandomDirections.probabilityAtMost(new double[] {1, 2, 3}, 3.5);
    assertThat(RandomDirections.probabilityAtMost(new double[] {3, 1, 2}, 3.5))
        .isCloseTo(expected, within(2e-5));
    assertThat(RandomDirections.probabilityAtMost(new double[] {2, 3, 1}, 3.5))
        .isCloseTo(expected, within(2e-5));
  }

  /** Three equal vectors end within one length with probability 1/4 (Rayleigh's random walk). */
  @Test
  void threeEqualVectorsStayWithinOneLengthAQuarterOfTheTime() {
    assertThat(RandomDirections.probabilityAtMost(new double[] {1, 1, 1}, 1))
        .isCloseTo(0.25, within(2e-5));
  }

  /** Pearson's random walk: n unit steps end within one unit with probability 1/(n+1). */
  @Test
  void unitStepsEndWithinOneUnit() {
    for (int n = 4; n <= 7; n++) {
      double[] steps = new double[n];
      Arrays.fill(steps, 1);
      assertThat(RandomDirections.probabilityAtMost(steps, 1))
          .as("%s steps", n)
          .isCloseTo(1.0 / (n + 1), within(2e-3));
    }
  }

  @Test
  void twoVectorsInClosedForm() {
    assertThat(RandomDirections.probabilityAtMost(3, 4, 5)).isCloseTo(0.5, within(1e-12));
    assertThat(RandomDirections.probabilityAtMost(2, 2, 2 * Math.sqrt(2)))
        .isCloseTo(0.5, within(1e-12));
    assertThat(RandomDirections.probabilityAtMost(3, 4, 0.99)).isZero();
    assertThat(RandomDirections.probabilityAtMost(3, 4, 7)).isEqualTo(1);
    assertThat(RandomDirections.probabilityAtMost(0, 4, 4)).isEqualTo(1);
  }

  @Test
  void aFurtherVectorOfNoSizeChangesNothing() {
    assertThat(RandomDirections.probabilityAtMost(new double[] {3, 0, 4}, 5))
        .isCloseTo(RandomDirections.probabilityAtMost(3, 4, 5), within(1e-4));
  }

  /** Seeded sampling of five vectors; sampling error 0.0011, point-set error below 0.002. */
  @Test
  void fiveVectorsAgreeWithSampling() {
    double[] sizes = {1, 1.5, 2, 2.5, 4};
    SplittableRandom random = new SplittableRandom(83);
    int trials = 200_000;
    int inside = 0;
    for (int i = 0; i < trials; i++) {
      double x = 0;
      double y = 0;
      for (double size : sizes) {
        double angle = 2 * Math.PI * random.nextDouble();
        x += size * Math.cos(angle);
        y += size * Math.sin(angle);
      }
      inside += Math.hypot(x, y) <= 5 ? 1 : 0;
    }
    assertThat(RandomDirections.probabilityAtMost(sizes, 5))
        .as("seed 83")
        .isCloseTo((double) inside / trials, within(0.006));
  }

  @Test
  void squaresAdd() {
    assertThat(RandomDirections.rootMeanSquareM(new double[] {3, 4, 12})).isEqualTo(13);
  }

  @Test
  void noVectorIsRejected() {
    assertThatThrownBy(() -> RandomDirections.probabilityAtMost(new double[0], 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number of vectors is 0");
  }
}
