package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Predicted;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can only get worse when one thing about a job gets worse. */
class MonotonyTest {
  private static final double ROUNDING = 1 + 1e-9;

  static Stream<Intents> jobs() {
    return RandomIntents.of(100);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void longerStickOutIsNeverStifferNorRunsOutLess(Intents intents) {
    Intents longer =
        intents
            .with("/tool/fluteLengthMm", intents.number("/tool/fluteLengthMm") + 12)
            .with("/tool/overallLengthMm", intents.number("/tool/overallLengthMm") + 12);
    for (RankedAssembly near : Bench.told(Bench.ask(intents))) {
      HolderBody holder = near.assembly().holder();
      RankedAssembly far = Bench.weigh(longer, holder);
      if (far.geometry().stickOutM() > near.geometry().stickOutM()) {
        assertThat(far.predicted().tipComplianceMPerN())
            .as("compliance of %s, longer than %s", holder.ref(), intents)
            .isGreaterThan(near.predicted().tipComplianceMPerN());
        assertThat(far.predicted().runoutMedianM())
            .as("runout of %s, longer than %s", holder.ref(), intents)
            .isGreaterThanOrEqualTo(near.predicted().runoutMedianM());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void moreSpeedNeverGripsMore(Intents intents) {
    Intents faster = intents.atSpeedRpm(1.5 * intents.number("/operation/spindleSpeedRpm"));
    for (RankedAssembly slow : Bench.told(Bench.ask(intents))) {
      HolderBody holder = slow.assembly().holder();
      assertGripsAtMost(
          "at 1.5 times the speed of " + intents + " in " + holder.ref(),
          Bench.weigh(faster, holder).predicted(),
          slow.predicted());
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void cleanerShankNeverGripsLess(Intents intents) {
    Intents clean = intents.with("/shop/shankCondition", "clean");
    for (RankedAssembly wiped : Bench.told(Bench.ask(clean))) {
      HolderBody holder = wiped.assembly().holder();
      Predicted unknown = grip(intents, "unknown", holder);
      Predicted oily = grip(intents, "oily", holder);
      String job = intents + " in " + holder.ref();
      assertGripsAtMost("unknown against clean for " + job, unknown, wiped.predicted());
      assertGripsAtMost("oily against unknown for " + job, oily, unknown);
    }
  }

  private static Predicted grip(Intents intents, String condition, HolderBody holder) {
    return Bench.weigh(intents.with("/shop/shankCondition", condition), holder).predicted();
  }

  private static void assertGripsAtMost(String what, Predicted worse, Predicted better) {
    assertThat(worse.gripTorqueMedianNm())
        .as("median torque %s", what)
        .isLessThanOrEqualTo(better.gripTorqueMedianNm() * ROUNDING);
    assertThat(worse.gripTorqueP05Nm())
        .as("certain torque %s", what)
        .isLessThanOrEqualTo(better.gripTorqueP05Nm() * ROUNDING);
    assertThat(worse.axialHoldMedianN())
        .as("median hold %s", what)
        .isLessThanOrEqualTo(better.axialHoldMedianN() * ROUNDING);
  }
}
