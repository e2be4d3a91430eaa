package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.gaugeline.assessment.Standing;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a holder costs and saves: hand calculation, and what every shop knows (common practice). */
class EconomicsTest {
  private static final String OWNED = "g-hsk-a63-shrink-fit-20-p75";

  /** From 19 mm on runout costs no life by the rule, so that every number can be had by hand. */
  private static final Intents JOB =
      Intents.of("side-milling", "end-mill", 20, "EN AW-6082", "HSK-A63")
          .with("/preferences/stability", false)
          .with("/operation/axialDepthMm", 10)
          .with("/operation/radialDepthMm", 2)
          .with("/operation/minutesPerPart", 3)
          .with("/operation/partsPerYear", 1000)
          .with("/tool/shank/diameterMm", 20)
          .with("/tool/price", 100)
          .with("/tool/lifeMinutes", 60)
          .with("/shop/hourlyRate", 90)
          .with("/shop/presetter", false)
          .with("/shop/shrinkUnit", true)
          .with("/shop/stock", List.of(Map.of("ref", OWNED, "count", 1)));

  /**
   * By hand: 3 min of 60 min wear 0.05 edges a part, 0.05·100 = 5.00. Shrink-fit is changed in 120
   * s to fetch + 3 min to clamp + 180 s to measure = 480 s, at 90 an hour 12.00, times 0.05 = 0.60.
   * The hydraulic holder takes 120 + 30 + 180 = 330 s: 8.25, times 0.05 = 0.4125. It costs 334,
   * over 5 years of 1000 parts 0.0668 a part, and saves 0.60 - 0.4125 = 0.1875 a part: paid after
   * 334/0.1875 = 1781.3 parts, at 1000 a year 21.376 months.
   */
  @Test
  void agreesWithTheHandCalculation() {
    Recommendation answer = Bench.ask(JOB);
    Economics owned = economics(answer, OWNED);
    assertThat(owned.owned()).isTrue();
    assertThat(owned.purchase()).isZero();
    assertThat(owned.edgeCostPerPart()).isCloseTo(5.00, within(1e-9));
    assertThat(owned.changeOverCostPerPart()).isCloseTo(0.60, within(1e-9));
    assertThat(owned.costPerPart()).isCloseTo(5.60, within(1e-9));
    assertThat(owned.breakEven()).as("nothing to pay").isNull();
    Economics bought = economics(answer, "g-hsk-a63-hydraulic-20-p75");
    assertThat(bought.purchase()).isEqualTo(334);
    assertThat(bought.changeOverCostPerPart()).isCloseTo(0.4125, within(1e-9));
    assertThat(bought.holderCostPerPart()).isCloseTo(0.0668, within(1e-9));
    assertThat(bought.costPerPart()).isCloseTo(5.4793, within(1e-9));
    BreakEven paid = Objects.requireNonNull(bought.breakEven());
    assertThat(paid.parts()).isCloseTo(1781.3, within(0.1));
    assertThat(paid.months()).isCloseTo(21.376, within(0.001));
    assertThat(paid.against()).isEqualTo(OWNED);
  }

  @Test
  void nothingIsComparedWithNothing() {
    Recommendation answer = Bench.ask(JOB.without("/shop/stock"));
    assertThat(Bench.told(answer)).allMatch(a -> a.economics().breakEven() == null);
  }

  /** 10 parts a year for 5 years are 50: never the 1781 that it takes. */
  @Test
  void whatWearsOutBeforeItIsPaidNeverPays() {
    Recommendation answer = Bench.ask(JOB.with("/operation/partsPerYear", 10));
    assertThat(economics(answer, "g-hsk-a63-hydraulic-20-p75").breakEven()).isNull();
  }

  /** Half the life, twice the edges: the runout's share of the life divides. */
  @Test
  void runoutCostsEdges() {
    Intents small = JOB.with("/tool/diameterMm", 12).with("/tool/shank/diameterMm", 12);
    for (RankedAssembly assembly : Bench.told(Bench.ask(small.without("/shop/stock")))) {
      assertThat(assembly.economics().edgeCostPerPart())
          .as(assembly.assembly().holder().ref())
          .isCloseTo(5 / assembly.predicted().toolLifeFactor(), within(1e-9));
    }
  }

  /** Common practice: the length of a screw-on or exchangeable head repeats. */
  @ParameterizedTest
  @ValueSource(strings = {"shrink-fit", "hydraulic", "er-collet"})
  void anExchangeableHeadSavesTheMeasuring(String family) {
    RankedAssembly solid = Bench.best(Bench.ask(JOB), family);
    RankedAssembly head =
        Bench.weigh(JOB.with("/tool/exchangeableHead", true), solid.assembly().holder());
    // 90 s at 90 an hour are 2.25, times 0.05
    assertThat(head.economics().changeOverCostPerPart()).isCloseTo(0.1125, within(1e-9));
    assertThat(solid.economics().changeOverCostPerPart()).isGreaterThan(0.4);
  }

  /** Common practice: one joint more runs out more and gives way more. */
  @Test
  void anExchangeableHeadCostsRunoutAndStiffness() {
    RankedAssembly solid = Bench.best(Bench.ask(JOB), "shrink-fit");
    RankedAssembly head =
        Bench.weigh(JOB.with("/tool/exchangeableHead", true), solid.assembly().holder());
    assertThat(head.predicted().runoutMedianM()).isGreaterThan(solid.predicted().runoutMedianM());
    assertThat(head.predicted().tipComplianceMPerN())
        .isGreaterThan(solid.predicted().tipComplianceMPerN());
    assertThat(head.predicted().naturalFrequenciesHz().get(0))
        .isLessThan(solid.predicted().naturalFrequenciesHz().get(0));
  }

  @Test
  void aPresetterShortensTheChange() {
    Recommendation measured = Bench.ask(JOB);
    Recommendation preset = Bench.ask(JOB.with("/shop/presetter", true));
    assertThat(economics(preset, OWNED).changeOverCostPerPart())
        .isLessThan(economics(measured, OWNED).changeOverCostPerPart());
  }

  static Stream<Intents> jobs() {
    return RandomIntents.of(40);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void costsRiseWithHourlyRateAndPriceOfTheTool(Intents intents) {
    Intents cheap = intents.with("/shop/hourlyRate", 50).with("/tool/price", 40);
    for (RankedAssembly assembly : Bench.told(Bench.ask(cheap))) {
      Economics before = assembly.economics();
      var holder = assembly.assembly().holder();
      Economics dearHour = Bench.weigh(cheap.with("/shop/hourlyRate", 120), holder).economics();
      Economics dearTool = Bench.weigh(cheap.with("/tool/price", 90), holder).economics();
      assertThat(dearHour.changeOverCostPerPart())
          .as("hourly rate of %s for %s", holder.ref(), intents)
          .isCloseTo(before.changeOverCostPerPart() * 120 / 50, within(1e-9));
      assertThat(dearHour.runningCostPerPart()).isGreaterThan(before.runningCostPerPart());
      assertThat(dearTool.runningCostPerPart())
          .as("price of the tool in %s for %s", holder.ref(), intents)
          .isGreaterThan(before.runningCostPerPart());
    }
  }

  @Test
  void aDearerHourPaysTheQuickerHolderSooner() {
    BreakEven slow = paid(JOB);
    BreakEven fast = paid(JOB.with("/shop/hourlyRate", 180));
    // twice the rate, half the parts
    assertThat(fast.parts()).isCloseTo(slow.parts() / 2, within(1e-6));
  }

  private static BreakEven paid(Intents intents) {
    return Objects.requireNonNull(
        economics(Bench.ask(intents), "g-hsk-a63-hydraulic-20-p75").breakEven());
  }

  private static final Intents NO_UNIT =
      Intents.of("side-milling", "end-mill", 8, "42CrMo4", "HSK-A63")
          .with("/preferences/stability", false)
          .with("/operation/stage", "roughing")
          .with("/operation/axialDepthMm", 4)
          .with("/operation/radialDepthMm", 0.1)
          .with("/operation/minutesPerPart", 8)
          .with("/operation/partsPerYear", 20_000)
          .with("/tool/shank/diameterMm", 8)
          .with("/tool/price", 150)
          .with("/shop/shrinkUnit", false)
          .with("/shop/torqueWrench", true)
          .with("/shop/colletCondition", "new")
          .with(
              "/shop/excludedFamilies",
              List.of("hydraulic", "high-torque-hydraulic", "precision-collet", "milling-chuck"));

  @Test
  void aHeatUnitIsPaidByTheEdgesThatShrinkFitSaves() {
    Recommendation without = Bench.ask(NO_UNIT);
    Recommendation.Equipment unit = Objects.requireNonNull(unit(without));
    assertThat(unit.price()).isEqualTo(12_000); // practice.csv, invented guide price
    assertThat(without.cautions()).anyMatch(c -> c.code().equals("heat-unit-pays-back"));
    Recommendation with =
        Bench.ask(NO_UNIT.with("/shop/shrinkUnit", true).with("/preferences/rankBy", "cost"));
    double saved =
        cheapest(Bench.ask(NO_UNIT.with("/preferences/rankBy", "cost"))) - cheapest(with);
    assertThat(unit.breakEven().parts()).isCloseTo(12_000 / saved, within(1e-6));
    assertThat(unit.breakEven().months())
        .isCloseTo(unit.breakEven().parts() / 20_000 * 12, within(1e-9));
  }

  @Test
  void aHeatUnitIsNotPaidByAFewParts() {
    Recommendation few = Bench.ask(NO_UNIT.with("/operation/partsPerYear", 10));
    assertThat(unit(few)).isNull();
    assertThat(few.cautions()).noneMatch(c -> c.code().equals("heat-unit-pays-back"));
    Recommendation has = Bench.ask(NO_UNIT.with("/shop/shrinkUnit", true));
    assertThat(has.cautions()).noneMatch(c -> c.code().equals("heat-unit-pays-back"));
  }

  private static Recommendation.@Nullable Equipment unit(Recommendation answer) {
    return answer.ruledOut().stream()
        .filter(out -> out.reason().code().equals("needs-shrink-unit"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("shrink-fit is not ruled out"))
        .equipment();
  }

  private static double cheapest(Recommendation answer) {
    RankedAssembly best = answer.assemblies().get(0);
    assertThat(best.standing()).isEqualTo(Standing.SUITABLE);
    return best.economics().costPerPart();
  }

  private static Economics economics(Recommendation answer, String ref) {
    return Bench.told(answer).stream()
        .filter(a -> a.assembly().holder().ref().equals(ref))
        .map(RankedAssembly::economics)
        .findFirst()
        .orElseThrow(() -> new AssertionError(ref + " is not told"));
  }
}
