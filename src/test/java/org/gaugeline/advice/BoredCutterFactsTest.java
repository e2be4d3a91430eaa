package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.gaugeline.tables.CatalogueTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cutters with a bore and what carries them. All facts here: common practice. */
class BoredCutterFactsTest {
  private static Intents shellMill() {
    return Intents.of("face-milling", "shell-mill", 63, "EN-GJL-250", "BT40")
        .with("/machine/powerKw", 18)
        .with("/machine/torqueNm", 150);
  }

  private static void onlyOn(Intents intents, String family) {
    Recommendation answer = Bench.ask(intents.with("/preferences/stability", false));
    assertThat(answer.families())
        .allSatisfy(
            verdict ->
                assertThat(verdict.standing() == Standing.UNAVAILABLE)
                    .as(verdict.family().id())
                    .isEqualTo(!verdict.family().id().equals(family)));
    assertThat(Bench.best(answer, family).standing()).isEqualTo(Standing.SUITABLE);
  }

  @Test
  void aShellMillGoesOnAnArborAndNothingElse() {
    onlyOn(
        Intents.of("face-milling", "shell-mill", 63, "EN-GJL-250", "HSK-A100"), "shell-mill-arbor");
  }

  @Test
  void aFaceMillWithABoreGoesOnAnArborToo() {
    onlyOn(
        Intents.of("face-milling", "face-mill", 80, "EN-GJL-250", "HSK-A100")
            .with("/tool/shank/form", "pilot-bore"),
        "shell-mill-arbor");
  }

  @Test
  void aFaceMillWithAShankGoesOnNone() {
    Recommendation answer =
        Bench.ask(
            Intents.of("face-milling", "face-mill", 50, "EN-GJL-250", "HSK-A63")
                .with("/tool/shank/diameterMm", 25));
    for (String family : List.of("shell-mill-arbor", "disc-arbor")) {
      Recommendation.FamilyVerdict verdict = Bench.verdict(answer, family);
      assertThat(verdict.standing()).isEqualTo(Standing.UNAVAILABLE);
      assertThat(verdict.reasons().get(0).code()).isEqualTo("shank-form");
    }
    assertThat(Bench.verdict(answer, "milling-chuck").bestAssembly()).isNotNull();
  }

  @Test
  void aDiscGoesOnTheArborForDiscs() {
    Intents disc =
        Intents.of("slotting", "disc-cutter", 80, "C45", "HSK-A100")
            .with("/operation/radialDepthMm", 5)
            .with("/operation/feedPerToothMm", 0.08);
    onlyOn(disc, "disc-arbor");
    Recommendation.FamilyVerdict mills = Bench.verdict(Bench.ask(disc), "shell-mill-arbor");
    assertThat(mills.reasons().get(0).code()).isEqualTo("other-cutter");
  }

  @ParameterizedTest
  @CsvSource({"50, 22", "63, 22", "80, 27", "100, 32", "125, 40"})
  void aMissingBoreIsThatOfTheStandard(double cutterMm, double boreMm) {
    Recommendation answer =
        Bench.ask(Intents.of("face-milling", "shell-mill", cutterMm, "C45", "BT50"));
    assertThat(answer.job().tool().shankDiameterM() * 1e3).isCloseTo(boreMm, within(1e-9));
    assertThat(answer.job().assumptions())
        .anyMatch(
            a ->
                a.pointer().equals("/tool/shank/diameterMm")
                    && a.reason().equals("bore-of-cutter"));
  }

  @Test
  void whatStandsOutIsTheCutterItself() {
    RankedAssembly arbor =
        Bench.best(Bench.ask(shellMill().with("/tool/cutterBodyLengthMm", 45)), "shell-mill-arbor");
    assertThat(arbor.assembly().stickOutM()).isCloseTo(0.045, within(1e-12));
    assertThat(arbor.assembly().insertionM()).isCloseTo(0.019, within(1e-12));
    assertThat(Bench.margin(arbor, Pair.INSERTION)).isEmpty();
    assertThat(arbor.limits().stickOutM().governedBy()).isEqualTo("cutter-body-length");
    assertThat(arbor.setUp()).noneMatch(step -> step.code().equals("set-stick-out"));
  }

  @Test
  void theMassOfTheCutterCounts() {
    Intents mill = shellMill().with("/preferences/stability", false);
    Intents heavy = mill.with("/tool/massKg", 1.2);
    Intents light = mill.with("/tool/massKg", 0.4);
    double more = Bench.best(Bench.ask(heavy), "shell-mill-arbor").geometry().massKg();
    double less = Bench.best(Bench.ask(light), "shell-mill-arbor").geometry().massKg();
    assertThat(more - less).isCloseTo(0.8, within(1e-6));
  }

  @Test
  void keysCarryFarMoreThanTheFaceAndAScrewAsMarkedMoreThanByHand() {
    RankedAssembly byHand = arbor(shellMill().with("/shop/torqueWrench", false));
    RankedAssembly byWrench = arbor(shellMill().with("/shop/torqueWrench", true));
    assertThat(byWrench.predicted().axialHoldMedianN())
        .isGreaterThan(1.3 * byHand.predicted().axialHoldMedianN());
    assertThat(byWrench.predicted().gripTorqueMedianNm())
        .isGreaterThan(byHand.predicted().gripTorqueMedianNm());
    double face = 0.18 * byWrench.predicted().axialHoldMedianN() * 0.024;
    assertThat(byWrench.predicted().gripTorqueMedianNm()).isGreaterThan(3 * face);
  }

  @Test
  void aLargerArborCarriesMore() {
    double last = 0;
    for (double cutterMm : new double[] {40, 63, 80, 100, 125}) {
      double torque =
          arbor(
                  Intents.of("face-milling", "shell-mill", cutterMm, "C45", "BT50")
                      .with("/shop/torqueWrench", true))
              .predicted()
              .gripTorqueMedianNm();
      assertThat(torque).as("Ø%.0f", cutterMm).isGreaterThan(last);
      last = torque;
    }
  }

  /**
   * What is known of the caller's own arbor wins over the table: screw torque and marked torque.
   */
  @Test
  void ownRatingsWin() {
    RankedAssembly weak = own(Map.of("nutTorqueNm", 20));
    RankedAssembly strong = own(Map.of("nutTorqueNm", 60));
    assertThat(strong.predicted().axialHoldMedianN())
        .isCloseTo(3 * weak.predicted().axialHoldMedianN(), within(1.0));
    assertThat(strong.predicted().axialHoldP05N())
        .isCloseTo(strong.predicted().axialHoldMedianN(), within(1e-6));
  }

  private static RankedAssembly own(Map<String, Object> ratings) {
    Map<String, Object> holder = new java.util.TreeMap<>(ratings);
    holder.put("family", "shell-mill-arbor");
    holder.put("projectionMm", 60);
    return Bench.best(
        Bench.ask(shellMill().with("/shop/stock", List.of(holder)).with("/shop/stockOnly", true)),
        "shell-mill-arbor");
  }

  @Test
  void theShopsArborsTakePart() {
    Advisor advisor =
        new Advisor(Bench.DATA, CatalogueTables.load(Bench.DATA, Path.of("demo-data", "shop")));
    Recommendation answer = advisor.recommend(shellMill().with("/shop/stockOnly", true).intent());
    RankedAssembly owned = Bench.best(answer, "shell-mill-arbor");
    assertThat(owned.assembly().holder().ref()).isEqualTo("bt40-arbor-22");
    assertThat(owned.assembly().insertionM()).isCloseTo(0.019, within(1e-12));
    assertThat(owned.economics().owned()).isTrue();
  }

  @Test
  void nothingIsPushedIntoAnArborNorPulledFromItByFrictionAlone() {
    RankedAssembly pulled = arbor(shellMill().with("/tool/helixDeg", 10));
    assertThat(Bench.margin(pulled, Pair.PULL_OUT)).isPresent();
    assertThat(Bench.warns(pulled, "pull-out-possible")).isFalse();
    RankedAssembly pushed =
        arbor(shellMill().with("/tool/helixDeg", 10).with("/tool/helixHand", "left"));
    assertThat(Bench.margin(pushed, Pair.PUSH_IN)).isEmpty();
    assertThat(Bench.margin(pushed, Pair.PULL_OUT)).isEmpty();
  }

  @Test
  void wideCuttersNeedEmptyNeighbourPockets() {
    Recommendation answer =
        Bench.ask(
            Intents.of("face-milling", "shell-mill", 100, "C45", "BT40")
                .with("/machine/toolChanger/maxDiameterMm", 80)
                .with("/machine/toolChanger/maxDiameterNeighboursEmptyMm", 150));
    assertThat(Bench.best(answer, "shell-mill-arbor").reasons())
        .anyMatch(reason -> reason.code().equals("neighbour-pockets-empty"));
  }

  /**
   * The lateral force in the middle of the cut over the kern of the annulus 48 × 22 mm, by hand:
   * the screw's 2 N·m leave so little that the face lifts.
   */
  @Test
  void aFaceThatTheScrewHardlyPressesOpensUnderSideLoad() {
    RankedAssembly loose = own(Map.of("nutTorqueNm", 2));
    Reason lifts =
        loose.reasons().stream()
            .filter(reason -> reason.code().equals("arbor-face-bending"))
            .findFirst()
            .orElseThrow();
    Recommendation answer = Bench.ask(shellMill());
    double arm = answer.job().tool().overallLengthM() - answer.job().operation().axialDepthM() / 2;
    assertThat(lifts.demand())
        .isCloseTo(answer.loads().peakRadialForceN() * arm, Percentage.withPercentage(0.01));
    double pressed = loose.predicted().axialHoldMedianN() - answer.loads().axialPullN();
    double kern = (0.048 * 0.048 + 0.022 * 0.022) / (8 * 0.048);
    assertThat(lifts.capacity()).isCloseTo(pressed * kern, Percentage.withPercentage(0.01));
    assertThat(own(Map.of("nutTorqueNm", 48)).reasons())
        .noneMatch(reason -> reason.code().equals("arbor-face-bending"));
  }

  /** Feed and depth stay where the face holds, so that following the limits holds. */
  @Test
  void theFaceLimitsFeedAndDepth() {
    RankedAssembly loose = own(Map.of("nutTorqueNm", 4));
    RankedAssembly tight = own(Map.of("nutTorqueNm", 48));
    assertThat(loose.limits().feedPerToothM().value())
        .isLessThan(tight.limits().feedPerToothM().value());
  }

  /** ISO 6462, recalled: cutters of 180 mm have a bore of 50, larger ones four screws around 60. */
  @ParameterizedTest
  @CsvSource({"180, 50, 1", "200, 60, 4", "250, 60, 4"})
  void largeShellMillsHaveArborsOfLargeSpindles(double cutterMm, double boreMm, int screws) {
    Recommendation answer =
        Bench.ask(
            Intents.of("face-milling", "shell-mill", cutterMm, "EN-GJL-250", "BT50")
                .with("/machine/toolChanger/maxDiameterNeighboursEmptyMm", 320)
                .with("/machine/toolChanger/maxMassKg", 40)
                .with("/machine/toolChanger/maxMomentNm", 80));
    assertThat(answer.job().tool().shankDiameterM() * 1e3).isCloseTo(boreMm, within(1e-9));
    RankedAssembly arbor = Bench.best(answer, "shell-mill-arbor");
    assertThat(arbor.assembly().holder().boreM() * 1e3).isCloseTo(boreMm, within(1e-9));
    assertThat(
            Objects.requireNonNull(Bench.DATA.arborOfBore(boreMm / 1e3, cutterMm / 1e3)).screws())
        .isEqualTo(screws);
  }

  /**
   * A tilt θ swings the rim of a disc by θ·D at the indicator, so a larger disc on the same arbor
   * reads more, and a slot comes out wider by the reading: that is what its width is held to.
   */
  @Test
  void sideRunoutOfADiscGrowsWithItsDiameterAndMakesTheSlotWider() {
    RankedAssembly small = disc(80);
    RankedAssembly large = disc(125);
    assertThat(large.predicted().sideRunoutMedianM())
        .isGreaterThan(small.predicted().sideRunoutMedianM());
    assertThat(small.predicted().sideRunoutP95M())
        .isGreaterThan(small.predicted().sideRunoutMedianM());
    Reason width = Bench.margin(large, Pair.SIZE_ERROR).orElseThrow();
    assertThat(width.demand()).isCloseTo(large.predicted().sideRunoutP95M(), within(1e-12));
    assertThat(Bench.warns(large, "disc-runs-out-sideways")).isTrue();
    RankedAssembly mill = arbor(shellMill());
    assertThat(mill.predicted().sideRunoutMedianM()).isNaN();
    assertThat(Bench.warns(mill, "disc-runs-out-sideways")).isFalse();
  }

  private static RankedAssembly disc(double diameterMm) {
    return Bench.best(
        Bench.ask(
            Intents.of("slotting", "disc-cutter", diameterMm, "C45", "HSK-A100")
                .with("/tool/shank/diameterMm", 27)
                .with("/operation/radialDepthMm", 5)),
        "disc-arbor");
  }

  private static RankedAssembly arbor(Intents intents) {
    return Bench.best(Bench.ask(intents), "shell-mill-arbor");
  }
}
