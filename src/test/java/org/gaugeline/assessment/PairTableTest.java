package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of pairs as the contract prints it, and how a margin becomes a score. */
class PairTableTest {
  @ParameterizedTest
  @CsvSource({
    "RUNOUT,          runout,          ACCURACY, 2",
    "SIZE_ERROR,      size-error,      ACCURACY, 2",
    "ROUGHNESS,       roughness,       ACCURACY, 1.5",
    "SLIP,            slip,            GRIP,     2",
    "PULL_OUT,        pull-out,        GRIP,     2",
    "STOP_TORQUE,     stop-torque,     GRIP,     2",
    "PUSH_IN,         push-in,         GRIP,     2",
    "GAP,             gap,             REACH,    2",
    "TOOL_GAP,        tool-gap,        REACH,    2",
    "INSERTION,       insertion,       REACH,    1.2",
    "STABLE_DEPTH,    stable-depth,    REACH,    2",
    "SPINDLE_SPEED,   spindle-speed,   SPEED,    1.25",
    "UNBALANCE_FORCE, unbalance-force, SPEED,    2",
  })
  void pairAsTabled(Pair pair, String id, Criterion criterion, double fullRatio) {
    assertThat(pair.id()).isEqualTo(id);
    assertThat(pair.criterion()).isEqualTo(criterion);
    assertThat(pair.fullRatio()).isEqualTo(fullRatio);
  }

  @Test
  void nothingBesideTheTable() {
    assertThat(Pair.values()).hasSize(13);
    assertThat(Arrays.stream(Pair.values()).map(Pair::id)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(Pair.class)
  void fiftyWhereJustMetHundredAtTheRatioZeroAtItsInverse(Pair pair) {
    double full = pair.fullRatio();
    assertThat(margin(pair, 1, 1).score()).isEqualTo(50, within(1e-9));
    assertThat(margin(pair, 1, full).score()).isEqualTo(100);
    assertThat(margin(pair, full, 1).score()).isEqualTo(0, within(1e-9));
    assertThat(margin(pair, 1, Double.POSITIVE_INFINITY).score()).isEqualTo(100);
    assertThat(margin(pair, 0, 1).score()).as("no demand").isEqualTo(100);
    assertThat(margin(pair, 1, 0).score()).as("no capacity").isZero();
    assertThat(margin(pair, 0, 0).score()).as("no capacity, even for no demand").isZero();
  }

  @ParameterizedTest
  @EnumSource(Pair.class)
  void scoreRisesWithTheMarginWithoutStepOrKink(Pair pair) {
    double full = pair.fullRatio();
    double step = Math.log(full) / 500;
    double before = Double.NaN;
    double slopeBefore = Double.NaN;
    for (int i = -600; i <= 600; i++) {
      double score = Score.of(Math.exp(i * step), full);
      assertThat(score).isBetween(0.0, 100.0);
      if (i > -600) {
        double slope = score - before;
        assertThat(slope).as("slope of %s at step %d", pair, i).isNotNegative().isLessThan(0.16);
        if (i > -599) {
          assertThat(slope - slopeBefore)
              .as("kink of %s at step %d", pair, i)
              .isBetween(-1e-3, 1e-3);
        }
        slopeBefore = slope;
      }
      before = score;
    }
  }

  @Test
  void standingsRankBestFirst() {
    assertThat(Standing.values())
        .containsExactly(
            Standing.SUITABLE, Standing.MARGINAL, Standing.UNSUITABLE, Standing.UNAVAILABLE);
  }

  private static Margin margin(Pair pair, double demand, double capacity) {
    return new Margin(pair, demand, demand, capacity, capacity, () -> 1, List.of("given"));
  }
}
