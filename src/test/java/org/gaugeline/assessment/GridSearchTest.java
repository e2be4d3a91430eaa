package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A search ends on the step that looking at every step would have found. */
class GridSearchTest {
  private static final int STEPS = 2048;

  static Stream<Random> seeds() {
    return IntStream.range(0, 200).mapToObj(Random::new);
  }

  /** Demands that only rise: powers, the larger of two, with and without a jump. */
  private static DoubleUnaryOperator rising(Random random) {
    double crossing = random.nextDouble() * 1.2;
    double power = 0.3 + 3 * random.nextDouble();
    double other = crossing * (0.5 + random.nextDouble());
    double jumpAt = random.nextDouble();
    double jump = random.nextBoolean() ? 3 * random.nextDouble() : 0;
    return x -> {
      double smooth = Math.max(Math.pow(x / crossing, power), Math.pow(x / other, 2 * power));
      return smooth + (x >= jumpAt ? jump : 0);
    };
  }

  private static ForceRatio at(DoubleUnaryOperator demand, int step) {
    return new ForceRatio(1 / demand.applyAsDouble((double) step / STEPS), "slip");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsTheLastStepThatIsMet(Random random) {
    DoubleUnaryOperator demand = rising(random);
    ForceRatio atMost = at(demand, STEPS);
    if (atMost.isMet()) {
      return;
    }
    int last = 0;
    while (at(demand, last + 1).isMet()) {
      last++;
    }

    GridSearch search =
        GridSearch.between(0, Double.POSITIVE_INFINITY, STEPS, atMost).run(i -> at(demand, i));

    assertThat(search.met()).isEqualTo(last);
    assertThat(search.governedBy()).isEqualTo("slip");
  }

  /**
   * What falls again, as forces along a helix do, in waves longer than a sixteenth of the range.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void halvesToTheCrossingThatHalvingAloneFinds(Random random) {
    double height = random.nextDouble();
    double waves = 4 * random.nextDouble();
    double phase = 2 * Math.PI * random.nextDouble();
    double slope = 0.5 + 3 * random.nextDouble();
    DoubleUnaryOperator demand =
        x -> x * slope * (1 + height * Math.sin(2 * Math.PI * waves * x + phase));

    Limit found = LimitSolver.halve(1, "flute-length", x -> at(demand, (int) (x * STEPS)));

    assertThat(found.value() * STEPS).isEqualTo(byHalvingAlone(demand));
  }

  private static double byHalvingAlone(DoubleUnaryOperator demand) {
    if (at(demand, STEPS).isMet()) {
      return STEPS;
    }
    int met = 0;
    for (int step = STEPS / 2; step >= 1; step /= 2) {
      met += at(demand, met + step).isMet() ? step : 0;
    }
    return met;
  }
}
