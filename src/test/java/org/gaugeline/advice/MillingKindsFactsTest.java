package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Loads;
import org.gaugeline.assessment.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plunging, ramps, chamfers and milled threads as the trade knows them: common practice. */
class MillingKindsFactsTest {
  private static Intents end(String operation, double diameterMm) {
    return Intents.of(operation, "end-mill", diameterMm, "42CrMo4", "HSK-A63")
        .with("/tool/overallLengthMm", 100)
        .with("/operation/radialDepthMm", diameterMm / 4)
        .with("/operation/feedPerToothMm", 0.06);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plunge-milling", "ramping", "chamfering", "thread-milling"})
  void everyKindIsComputedEndToEnd(String operation) {
    String tool =
        switch (operation) {
          case "chamfering" -> "chamfer-mill";
          case "thread-milling" -> "thread-mill";
          default -> "end-mill";
        };
    Recommendation answer = Bench.ask(Intents.of(operation, tool, 12, "C45", "HSK-A63"));
    assertThat(answer.assemblies()).as(operation).isNotEmpty();
    Loads loads = answer.loads();
    assertThat(loads.powerW())
        .isCloseTo(loads.torqueNm() * loads.spindleSpeedRadPerS(), within(1e-6));
    assertThat(loads.peakTorqueNm()).isGreaterThanOrEqualTo(loads.torqueNm());
    assertThat(loads.removalRateM3PerS()).isPositive();
  }

  /** Conservation of energy: power over removal rate is near the specific force of the chip. */
  @ParameterizedTest
  @CsvSource({"plunge-milling, end-mill", "ramping, end-mill", "chamfering, chamfer-mill"})
  void powerFollowsTheRemovalRate(String operation, String tool) {
    Loads loads =
        Bench.ask(
                Intents.of(operation, tool, 12, "C45", "HSK-A63")
                    .with("/workpiece/kc11NPerMm2", 2000)
                    .with("/workpiece/mc", 0))
            .loads();
    assertThat(loads.powerW() / loads.removalRateM3PerS()).isCloseTo(2e9, within(0.01e9));
  }

  @Test
  void plungingPushesIntoTheHolderAndHardlyOffTheWall() {
    Loads plunge = Bench.ask(end("plunge-milling", 16)).loads();
    assertThat(plunge.axialPullN()).isZero();
    assertThat(plunge.axialPushN()).isPositive();
    assertThat(plunge.peakWallNormalForceN()).isLessThan(0.6 * plunge.peakRadialForceN());
    Loads side = Bench.ask(end("side-milling", 16).with("/operation/axialDepthMm", 24)).loads();
    assertThat(plunge.peakWallNormalForceN()).isLessThan(side.peakWallNormalForceN());
  }

  /** What plunging is for: a long slim stack loses less by it than by side milling. */
  @Test
  void plungingSuitsALongSlimHolder() {
    HolderBody shortOne = Bench.holder("HSK-A63", "shrink-fit", 16, 75, true);
    HolderBody longOne = Bench.holder("HSK-A63", "shrink-fit", 16, 200, true);
    Intents side =
        end("side-milling", 16)
            .with("/operation/axialDepthMm", 24)
            .with("/feature/toleranceBandUm", 200);
    Intents plunge = end("plunge-milling", 16).with("/feature/toleranceBandUm", 200);
    double lostBySide = sizeError(side, longOne) - sizeError(side, shortOne);
    double lostByPlunge = sizeError(plunge, longOne) - sizeError(plunge, shortOne);
    assertThat(lostByPlunge).isPositive().isLessThan(0.6 * lostBySide);
    assertThat(Bench.weigh(plunge, longOne).scores().accuracy())
        .isGreaterThan(Bench.weigh(side, longOne).scores().accuracy());
    assertThat(Bench.weigh(plunge, longOne).predicted().bendingMomentUse())
        .isLessThan(Bench.weigh(side, longOne).predicted().bendingMomentUse());
  }

  private static double sizeError(Intents intents, HolderBody holder) {
    return Bench.margin(Bench.weigh(intents, holder), Pair.SIZE_ERROR).orElseThrow().demand();
  }

  @Test
  void aPlungeDoesNotGrowHeavierWithItsDepth() {
    RankedAssembly best = Bench.ask(end("plunge-milling", 16)).assemblies().get(0);
    assertThat(best.limits().axialDepthM().value()).isInfinite();
    Loads deep = Bench.ask(end("plunge-milling", 16).with("/operation/axialDepthMm", 30)).loads();
    Loads flat = Bench.ask(end("plunge-milling", 16).with("/operation/axialDepthMm", 3)).loads();
    assertThat(deep.torqueNm()).isEqualTo(flat.torqueNm());
  }

  @Test
  void aSteeperRampLoadsTheEndMore() {
    Intents ramp = end("ramping", 12).with("/operation/radialDepthMm", 12);
    Recommendation flat = Bench.ask(ramp.with("/operation/rampAngleDeg", 1));
    Recommendation steep = Bench.ask(ramp.with("/operation/rampAngleDeg", 8));
    assertThat(steep.loads().axialPushN()).isGreaterThan(flat.loads().axialPushN());
    assertThat(steep.loads().axialPullN()).isLessThan(flat.loads().axialPullN());
    assertThat(steep.loads().torqueNm()).isGreaterThan(flat.loads().torqueNm());
    assertThat(steep.cautions()).anyMatch(caution -> caution.code().equals("steep-ramp"));
    assertThat(flat.cautions()).noneMatch(caution -> caution.code().equals("steep-ramp"));
  }

  /** A turn in a Ø30 hole with a Ø16 mill at 2°: π·14·tan 2° = 1.536 mm (geometry). */
  @Test
  void aHelicalRampGoesDownByItsPitch() {
    Recommendation answer =
        Bench.ask(
            Intents.of("ramping", "end-mill", 16, "C45", "HSK-A63")
                .with("/operation/rampAngleDeg", 2)
                .with("/feature/nominalSizeMm", 30));
    assertThat(answer.job().operation().axialDepthM() * 1e3).isCloseTo(1.536, within(1e-3));
  }

  /** A cone of 90° leaves as wide as high, one of 60° narrower (geometry). */
  @Test
  void aChamferFollowsItsCone() {
    Intents chamfer =
        Intents.of("chamfering", "chamfer-mill", 12, "C45", "HSK-A63")
            .with("/operation/axialDepthMm", 1.5);
    assertThat(Bench.ask(chamfer).job().operation().radialDepthM() * 1e3)
        .isCloseTo(1.5, within(1e-4));
    assertThat(
            Bench.ask(chamfer.with("/tool/pointAngleDeg", 60)).job().operation().radialDepthM()
                * 1e3)
        .isCloseTo(0.866, within(1e-3));
    Loads loads = Bench.ask(chamfer).loads();
    assertThat(loads.axialPushN()).isPositive();
    assertThat(loads.axialPullN()).isZero();
  }

  /** Thread mills are slim and bend: a longer engagement at once bends them more. */
  @Test
  void aLongerThreadAtOnceBendsAThreadMillMore() {
    Intents thread =
        Intents.of("thread-milling", "thread-mill", 8, "C45", "HSK-A63")
            .with("/tool/pitchMm", 1.5)
            .with("/feature/nominalSizeMm", 12)
            .with("/tool/fluteLengthMm", 24);
    HolderBody holder = Bench.holder("HSK-A63", "shrink-fit", 8, 100, true);
    RankedAssembly brief = Bench.weigh(thread.with("/operation/axialDepthMm", 3), holder);
    RankedAssembly whole = Bench.weigh(thread.with("/operation/axialDepthMm", 24), holder);
    assertThat(whole.predicted().deflectionM()).isGreaterThan(2 * brief.predicted().deflectionM());
    assertThat(Bench.ask(thread).cautions())
        .anyMatch(caution -> caution.code().equals("thread-gauge"));
  }

  /** Opposite hands push in (contract of the field `helixHand`). */
  @ParameterizedTest
  @ValueSource(strings = {"side-milling", "ramping", "thread-milling"})
  void aLeftHandHelixPushesIn(String operation) {
    boolean thread = operation.equals("thread-milling");
    Intents intents =
        Intents.of(operation, thread ? "thread-mill" : "end-mill", 12, "C45", "HSK-A63")
            .with("/tool/helixDeg", 25);
    Loads right = Bench.ask(intents).loads();
    Loads left = Bench.ask(intents.with("/tool/helixHand", "left")).loads();
    assertThat(right.axialPullN()).isPositive();
    assertThat(left.axialPullN()).isZero();
    assertThat(left.axialPushN()).isPositive();
  }

  /**
   * The sloping flat draws the shank onto its stop: no creep, no push-in, and a little more hold.
   */
  @ParameterizedTest
  @ValueSource(doubles = {12, 20})
  void anInclinedFlatDrawsTheShankBack(double diameterMm) {
    Intents left = end("side-milling", diameterMm).with("/tool/helixHand", "left");
    RankedAssembly flat = Bench.best(Bench.ask(left.with("/tool/shank/form", "flat")), "side-lock");
    RankedAssembly inclined =
        Bench.best(Bench.ask(left.with("/tool/shank/form", "inclined-flat")), "inclined-side-lock");
    assertThat(Bench.margin(flat, Pair.PUSH_IN)).isPresent();
    assertThat(Bench.margin(inclined, Pair.PUSH_IN)).isEmpty();
    assertThat(inclined.predicted().axialHoldP05N())
        .isGreaterThan(flat.predicted().axialHoldP05N());
    assertThat(inclined.setUp()).anyMatch(step -> step.code().equals("draw-against-stop"));
  }
}
