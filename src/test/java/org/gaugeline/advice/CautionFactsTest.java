package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each caution where it belongs and not elsewhere: common practice. */
class CautionFactsTest {
  private static final Intents JOB =
      Intents.of("side-milling", "end-mill", 12, "42CrMo4", "HSK-A63")
          .with("/operation/axialDepthMm", 10)
          .with("/operation/radialDepthMm", 1)
          .with("/operation/spindleSpeedRpm", 3500)
          .with("/tool/fluteLengthMm", 26)
          .with("/tool/overallLengthMm", 83)
          .with("/tool/shank/diameterMm", 12);

  @ParameterizedTest
  @CsvSource({
    "hot-holder, shrink-fit, hydraulic",
    "never-tighten-empty, er-collet, shrink-fit",
    "never-tighten-empty, hydraulic, shrink-fit",
    "never-tighten-empty, milling-chuck, shrink-fit",
  })
  void belongsToTheFamily(String code, String warned, String notWarned) {
    Recommendation answer = Bench.ask(JOB);
    assertThat(Bench.warns(Bench.best(answer, warned), code)).isTrue();
    assertThat(Bench.warns(Bench.best(answer, notWarned), code)).isFalse();
  }

  @Test
  void highSpeedSteelIsNoShankForShrinkFit() {
    RankedAssembly steel = Bench.best(Bench.ask(JOB.with("/tool/substrate", "hss")), "shrink-fit");
    RankedAssembly carbide =
        Bench.best(Bench.ask(JOB.with("/tool/substrate", "carbide")), "shrink-fit");
    assertThat(Bench.warns(steel, "hss-in-shrink")).isTrue();
    assertThat(Bench.warns(carbide, "hss-in-shrink")).isFalse();
  }

  @Test
  void aCutterThatIsNotHeldForSureCanBeThrown() {
    Intents heavy =
        JOB.with("/operation/axialDepthMm", 24)
            .with("/operation/radialDepthMm", 12)
            .with("/shop/shankCondition", "oily");
    assertThat(Bench.warns(Bench.best(Bench.ask(heavy), "er-collet"), "can-be-thrown")).isTrue();
    assertThat(Bench.warns(Bench.best(Bench.ask(JOB), "milling-chuck"), "can-be-thrown")).isFalse();
  }

  /** 3500 1/min against a marking: over it, nearer than a tenth, and well below. */
  @ParameterizedTest
  @CsvSource({"3000, true", "3800, true", "4500, false"})
  void aMarkedSpeedIsPointedOutFromNineTenthsOn(double markedRpm, boolean warned) {
    Map<String, Object> marked = new LinkedHashMap<>();
    marked.put("family", "hydraulic");
    marked.put("maxSpindleSpeedRpm", markedRpm);
    marked.put("count", 1);
    Intents holder = JOB.with("/shop/stock", List.of(marked)).with("/shop/stockOnly", true);
    assertThat(Bench.warns(Bench.best(Bench.ask(holder), "hydraulic"), "near-marked-speed"))
        .as("marked on the holder")
        .isEqualTo(warned);
    Intents cutter = JOB.with("/tool/maxSpindleSpeedRpm", markedRpm);
    assertThat(Bench.warns(Bench.best(Bench.ask(cutter), "hydraulic"), "near-marked-speed"))
        .as("marked on the cutter")
        .isEqualTo(warned);
  }

  @Test
  void aShortShankTemptsToClampOnTheFlutes() {
    Intents stubby = JOB.with("/tool/overallLengthMm", 56);
    assertThat(Bench.warns(Bench.best(Bench.ask(stubby), "hydraulic"), "never-clamp-on-flutes"))
        .isTrue();
    assertThat(Bench.warns(Bench.best(Bench.ask(JOB), "hydraulic"), "never-clamp-on-flutes"))
        .isFalse();
  }

  @ParameterizedTest
  @CsvSource({"110, true", "83, false"})
  void aLongOverhangNeedsGuardAndCare(double depthMm, boolean warned) {
    Intents reaching =
        warned
            ? JOB.with("/tool/overallLengthMm", 150).with("/feature/depthMm", 75)
            : JOB.with("/tool/overallLengthMm", depthMm);
    assertThat(Bench.warns(Bench.best(Bench.ask(reaching), "shrink-fit"), "long-overhang"))
        .isEqualTo(warned);
  }
}
