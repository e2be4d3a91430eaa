package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Making and finishing holes, as every shop knows it: common practice where nothing else is said.
 */
class HoleFactsTest {
  private static final Intents TAP = tended(Intents.of("tapping", "tap", 10, "C45", "BT40"));
  private static final Intents BORE =
      Intents.of("boring", "boring-tool", 50, "C45", "HSK-A63").with("/feature/depthMm", 60);
  private static final Intents REAM =
      tended(Intents.of("reaming", "reamer", 16, "C45", "BT40"))
          .with("/feature/toleranceGrade", "IT7")
          .with("/feature/depthMm", 24)
          .with("/operation/preDrilledDiameterMm", 15.8);

  @ParameterizedTest
  @CsvSource({"side-milling, end-mill", "slotting, end-mill", "boring, boring-tool"})
  void nothingThatGivesWayIsOfferedForSideLoad(String operation, String tool) {
    for (String form : List.of("cylindrical", "square-drive")) {
      Recommendation answer =
          Bench.ask(
              Intents.of(operation, tool, 12, "C45", "BT40")
                  .with("/tool/shank/diameterMm", 10)
                  .with("/tool/shank/form", form));
      assertThat(answer.assemblies())
          .extracting(a -> a.assembly().holder().family().id())
          .doesNotContain("drill-chuck", "tapping-chuck", "floating-reamer-holder");
      assertThat(codes(Bench.best(answer, "drill-chuck"))).contains("not-for-side-load");
    }
  }

  /** IT7 at 16 is 18 µm; a quarter of it is less than the taper's own seat may run out. */
  @Test
  void reamingToSevenOnATaperIsForTheFloatingHolder() {
    Recommendation answer = Bench.ask(REAM);
    assertThat(answer.assemblies())
        .filteredOn(a -> a.standing() == Standing.SUITABLE)
        .isNotEmpty()
        .allMatch(a -> a.assembly().holder().family().id().equals("floating-reamer-holder"));
    RankedAssembly floating = Bench.best(answer, "floating-reamer-holder");
    assertThat(Bench.warns(floating, "float-follows-bore")).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"drilling, drill", "boring, boring-tool"})
  void aFloatingHolderOnlyFollows(String operation, String tool) {
    Recommendation answer = Bench.ask(Intents.of(operation, tool, 12, "C45", "BT40"));
    assertThat(codes(Bench.best(answer, "floating-reamer-holder"))).contains("gives-way");
  }

  /** The shop formula with kc 1.4 times kc1.1 (common practice): kc·P²·D/8. */
  @Test
  void torqueOfATapIsThatOfTheShopFormula() {
    Recommendation answer =
        Bench.ask(TAP.with("/workpiece/kc11NPerMm2", 2500 / 1.4).with("/workpiece/mc", 0.2));
    assertThat(answer.loads().torqueNm()).isCloseTo(7.03, within(0.005));
    assertThat(answer.loads().peakTorqueNm()).isCloseTo(2 * 7.03, within(0.01));
  }

  @Test
  void aFormTapTakesTwiceTheTorqueAndMakesNoChip() {
    Recommendation cut = Bench.ask(TAP);
    Recommendation form = Bench.ask(TAP.with("/tool/tapForm", "form"));
    assertThat(form.loads().torqueNm())
        .isCloseTo(2 * cut.loads().torqueNm(), Percentage.withPercentage(1e-9));
    assertThat(form.loads().removalRateM3PerS()).isZero();
    assertThat(cautions(cut)).contains("blind-hole-chips");
    assertThat(cautions(form)).doesNotContain("blind-hole-chips");
    assertThat(cautions(Bench.ask(TAP.with("/operation/hole", "through"))))
        .doesNotContain("blind-hole-chips");
  }

  @ParameterizedTest
  @CsvSource({"EN-GJL-250, true", "hardened-steel, true", "C45, false", "EN AW-6082, false"})
  void aFormTapWantsADuctileMaterial(String material, boolean warned) {
    Recommendation answer =
        Bench.ask(Intents.of("tapping", "tap", 10, material, "BT40").with("/tool/tapForm", "form"));
    assertThat(cautions(answer).contains("form-tap-brittle")).isEqualTo(warned);
  }

  /** Without coupling only a chuck that gives length saves the tap; with it a collet is enough. */
  @Test
  void anUncoupledSpindleNeedsATappingChuck() {
    Intents small = TAP.with("/tool/diameterMm", 5);
    Recommendation coupled = Bench.ask(small.with("/operation/tapping", "synchronous"));
    Recommendation free = Bench.ask(small.with("/operation/tapping", "floating"));
    assertThat(Bench.verdict(coupled, "er-collet").standing()).isEqualTo(Standing.SUITABLE);
    assertThat(Bench.verdict(free, "er-collet").standing()).isEqualTo(Standing.UNSUITABLE);
    assertThat(codes(Bench.best(free, "er-collet"))).contains("no-length-compensation");
    assertThat(Bench.verdict(coupled, "tapping-chuck").standing()).isEqualTo(Standing.SUITABLE);
    assertThat(Bench.verdict(free, "tapping-chuck").standing()).isEqualTo(Standing.SUITABLE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 6, 10, 16, 24})
  void theSquareCarriesTheTapAndTheColletHoldsItIn(double diameterMm) {
    RankedAssembly chuck =
        Bench.best(
            Bench.ask(Intents.of("tapping", "tap", diameterMm, "C45", "BT50")), "tapping-chuck");
    assertThat(Bench.margin(chuck, Pair.STOP_TORQUE)).isPresent();
    assertThat(Bench.margin(chuck, Pair.PULL_OUT)).isPresent();
    assertThat(Bench.margin(chuck, Pair.SLIP)).isEmpty();
    assertThat(chuck.setUp()).extracting(step -> step.code()).contains("seat-square");
    assertThat(chuck.limits().feedPerToothM().governedBy()).isEqualTo("thread-pitch");
  }

  @Test
  void aTapWithAPlainShankGoesIntoHydraulicAndShrink() {
    Recommendation answer = Bench.ask(TAP.with("/tool/shank/form", "cylindrical"));
    for (String family : List.of("hydraulic", "shrink-fit", "er-collet")) {
      assertThat(Bench.verdict(answer, family).standing())
          .as(family)
          .isNotEqualTo(Standing.UNAVAILABLE);
    }
    assertThat(Bench.verdict(answer, "tapping-chuck").standing()).isEqualTo(Standing.UNAVAILABLE);
  }

  @Test
  void aTapFeedsItsPitch() {
    Intents odd = Intents.of("tapping", "tap", 11, "C45", "BT40");
    assertThat(Bench.ask(odd.with("/operation/feedPerRevMm", 1)).job().tool().pitchM())
        .isCloseTo(1e-3, within(1e-12));
  }

  /** Bars stay quiet to about four diameters in steel and six to eight in carbide. */
  @ParameterizedTest
  @CsvSource({"steel, 120, false", "steel, 180, true", "carbide, 180, false", "carbide, 280, true"})
  void aLongBarIsWarnedOfAndStillJudgedByItsNumbers(
      String substrate, double depthMm, boolean warned) {
    Recommendation answer =
        Bench.ask(
            Intents.of("boring", "boring-tool", 50, "C45", "HSK-A100")
                .with("/tool/shank/diameterMm", 32)
                .with("/tool/overallLengthMm", depthMm + 50)
                .with("/tool/substrate", substrate)
                .with("/feature/depthMm", depthMm * 0.8));
    assertThat(Bench.warns(Bench.best(answer, "hydraulic"), "long-bar")).isEqualTo(warned);
  }

  @Test
  void aStifferBarBendsLess() {
    RankedAssembly steel = Bench.best(Bench.ask(BORE), "hydraulic");
    RankedAssembly carbide =
        Bench.best(Bench.ask(BORE.with("/tool/substrate", "carbide")), "hydraulic");
    RankedAssembly thin =
        Bench.best(Bench.ask(BORE.with("/tool/shank/diameterMm", 20)), "hydraulic");
    assertThat(carbide.predicted().deflectionM()).isLessThan(steel.predicted().deflectionM());
    assertThat(thin.predicted().deflectionM()).isGreaterThan(steel.predicted().deflectionM());
  }

  /** Ra = f²/(31.2·rε): 0.125 mm with 0.4 mm leaves 1.25 µm (textbook geometry). */
  @Test
  void feedMarksDecideTheRoughnessOfABore() {
    Intents fed = BORE.with("/operation/feedPerRevMm", 0.125).with("/tool/cornerRadiusMm", 0.4);
    RankedAssembly coarse = Bench.best(Bench.ask(fed.with("/feature/raUm", 0.8)), "hydraulic");
    Reason reason = Bench.margin(coarse, Pair.ROUGHNESS).orElseThrow();
    assertThat(reason.demand() * 1e6).isCloseTo(1.252, within(1e-3));
    assertThat(coarse.standing()).isEqualTo(Standing.UNSUITABLE);
    assertThat(coarse.limits().feedPerToothM().value() * 1e3)
        .isCloseTo(Math.sqrt(31.2 * 0.4 * 0.8e-3), Percentage.withPercentage(1));
  }

  /** What matters most to the operation weighs more, unless the asker weighs it himself. */
  @Test
  void weightsFollowTheOperationUntilTheyAreGiven() {
    Recommendation usual = Bench.ask(TAP);
    assertThat(usual.job().preferences().gripWeight()).isEqualTo(2);
    assertThat(usual.job().assumptions())
        .extracting(a -> a.pointer())
        .contains("/preferences/weights/grip", "/preferences/weights/accuracy");
    Recommendation own = Bench.ask(TAP.with("/preferences/weights/reach", 3));
    assertThat(own.job().preferences().gripWeight()).isEqualTo(1);
    assertThat(own.job().preferences().reachWeight()).isEqualTo(3);
    assertThat(own.job().assumptions())
        .extracting(a -> a.pointer())
        .noneMatch(pointer -> pointer.startsWith("/preferences"));
  }

  /** With clean shanks, new collets and a torque wrench. */
  private static Intents tended(Intents intents) {
    return intents
        .with("/shop/shankCondition", "clean")
        .with("/shop/colletCondition", "new")
        .with("/shop/torqueWrench", true);
  }

  private static List<String> codes(RankedAssembly assembly) {
    return assembly.reasons().stream().map(Reason::code).toList();
  }

  private static List<String> cautions(Recommendation answer) {
    return answer.cautions().stream().map(caution -> caution.code()).toList();
  }
}
