package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reach, stiffness, spindle ends and money, as every shop knows them: common practice. */
class AccuracyFactsTest {
  private static final Intents JOB =
      Intents.of("side-milling", "end-mill", 12, "42CrMo4", "BT40")
          .with("/shop/colletCondition", "new");

  @ParameterizedTest
  @ValueSource(doubles = {6, 12, 20})
  void shrinkFitHasTheSlimmestNose(double boreMm) {
    double slimmest = nose("shrink-fit", boreMm);
    for (String family : List.of("er-collet", "hydraulic", "side-lock")) {
      assertThat(nose(family, boreMm))
          .as("nose of %s at Ø%.0f", family, boreMm)
          .isGreaterThan(slimmest);
    }
  }

  @Test
  void shrinkFitNeedsAHeatUnit() {
    Recommendation answer = Bench.ask(JOB.with("/shop/shrinkUnit", false));
    Recommendation.FamilyVerdict shrink = Bench.verdict(answer, "shrink-fit");
    assertThat(shrink.standing()).isEqualTo(Standing.UNAVAILABLE);
    assertThat(shrink.reasons().get(0).code()).isEqualTo("needs-shrink-unit");
  }

  @ParameterizedTest
  @ValueSource(strings = {"shrink-fit", "er-collet", "hydraulic"})
  void longReachCostsAccuracyAndStiffness(String family) {
    RankedAssembly near = weigh(JOB, Bench.holder("BT40", family, 12, 75, false));
    RankedAssembly far = weigh(JOB, Bench.holder("BT40", family, 12, 130, false));
    assertThat(far.predicted().runoutMedianM()).isGreaterThan(near.predicted().runoutMedianM());
    assertThat(far.predicted().tipComplianceMPerN())
        .isGreaterThan(near.predicted().tipComplianceMPerN());
    assertThat(far.scores().accuracy()).isLessThanOrEqualTo(near.scores().accuracy());
  }

  @Test
  void faceContactBeatsTheTaperAloneRadially() {
    RankedAssembly plain = weigh(JOB, Bench.holder("BT40", "shrink-fit", 12, 100, false));
    RankedAssembly face =
        weigh(
            JOB.with("/machine/faceContact", true),
            Bench.holder("BT40", "shrink-fit", 12, 100, true));
    assertThat(face.predicted().runoutMedianM()).isLessThan(plain.predicted().runoutMedianM());
    assertThat(face.predicted().tipComplianceMPerN())
        .isLessThan(plain.predicted().tipComplianceMPerN());
  }

  @Test
  void steepTaperAloneIsDrawnInAtSpeedAndFaceContactStopsIt() {
    Intents fast = JOB.atSpeedRpm(20_000).with("/machine/maxSpindleSpeedRpm", 24_000);
    RankedAssembly plain = weigh(fast, Bench.holder("BT40", "shrink-fit", 12, 75, false));
    RankedAssembly face =
        weigh(
            fast.with("/machine/faceContact", true),
            Bench.holder("BT40", "shrink-fit", 12, 75, true));
    assertThat(codes(plain)).contains("mouth-expansion");
    assertThat(codes(face)).doesNotContain("mouth-expansion");
  }

  @ParameterizedTest
  @CsvSource({"HSK-A63, BT50", "HSK-A63, SK50", "HSK-A63, CAT50", "HSK-A100, BT50"})
  void hollowTapersTurnFasterThanSizeFifty(String hollow, String steep) {
    assertThat(fastest(hollow)).isGreaterThan(fastest(steep));
  }

  @ParameterizedTest
  @ValueSource(strings = {"BT40", "HSK-A63", "PSC-C6"})
  void threeSurfaceContactIsStiffest(String other) {
    assertThat(complianceAtHundred("TS-63")).isLessThan(complianceAtHundred(other));
  }

  @Test
  void forAnEasyCutTheCheapHolderSufficesAndCostSaysSo() {
    Intents easy =
        Intents.of("side-milling", "end-mill", 12, "EN AW-6082", "BT40")
            .with("/operation/stage", "roughing")
            .with("/operation/axialDepthMm", 6)
            .with("/operation/radialDepthMm", 2)
            .with("/operation/feedPerToothMm", 0.1)
            .with("/operation/spindleSpeedRpm", 5000)
            .with("/tool/shank/form", "flat")
            .with("/operation/partsPerYear", 100)
            .with("/operation/minutesPerPart", 0.5)
            .with("/shop/colletCondition", "new")
            .with("/preferences/rankBy", "cost");
    RankedAssembly first = Bench.ask(easy).assemblies().get(0);
    assertThat(first.standing()).isEqualTo(Standing.SUITABLE);
    assertThat(first.assembly().holder().family().id()).isIn("er-collet", "side-lock");
  }

  private static double fastest(String spindle) {
    Intents job = Intents.of("side-milling", "end-mill", 12, "EN AW-6082", spindle);
    return weigh(job, Bench.holder(spindle, "shrink-fit", 12, 100, false))
        .limits()
        .spindleSpeedRadPerS()
        .value();
  }

  private static double complianceAtHundred(String spindle) {
    Intents job =
        Intents.of("side-milling", "end-mill", 20, "42CrMo4", spindle)
            .with("/machine/faceContact", true);
    return weigh(job, Bench.holder(spindle, "shrink-fit", 20, 100, true))
        .predicted()
        .tipComplianceMPerN();
  }

  /** The slimmest front face that a family offers for a bore. */
  private static double nose(String family, double boreMm) {
    return Bench.CATALOGUE.byRef().values().stream()
        .filter(holder -> holder.family().id().equals(family))
        .filter(holder -> holder.takes(boreMm / 1e3))
        .mapToDouble(holder -> holder.sections().get(holder.sections().size() - 1).endDiameterM())
        .min()
        .orElseThrow(() -> new AssertionError("no " + family + " of " + boreMm + " mm"));
  }

  private static RankedAssembly weigh(Intents job, HolderBody holder) {
    String form = holder.family().id().equals("side-lock") ? "flat" : "cylindrical";
    return Bench.weigh(job.with("/tool/shank/form", form), holder);
  }

  private static List<String> codes(RankedAssembly assembly) {
    return assembly.reasons().stream().map(reason -> reason.code()).toList();
  }
}
