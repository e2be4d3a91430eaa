package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What every shop knows of extensions, sleeves, adapters, locks and collets: common practice. */
class StackFactsTest {
  private static final Intents JOB =
      Intents.of("side-milling", "end-mill", 10, "42CrMo4", "HSK-A63")
          .with("/operation/axialDepthMm", 5)
          .with("/operation/radialDepthMm", 0.5)
          .with("/tool/overallLengthMm", 72)
          .with("/tool/fluteLengthMm", 22)
          .with("/tool/shank/diameterMm", 10);
  private static final List<Map<String, Double>> CLAMP =
      List.of(Map.of("heightMm", 110.0, "distanceMm", 18.0));
  private static final String PLAIN = "g-hsk-a63-hydraulic-20-p75";
  private static final String EXTENDED = PLAIN + "+x-shrink-fit-10-s20-l100";

  @Test
  void anExtensionCostsAccuracyAndStiffnessAndBuysReach() {
    RankedAssembly plain = of(JOB, "g-hsk-a63-shrink-fit-10-p75", "shrink-fit");
    RankedAssembly extended = of(JOB, EXTENDED, "shrink-fit");
    assertThat(extended.predicted().runoutMedianM())
        .isGreaterThan(plain.predicted().runoutMedianM());
    assertThat(extended.predicted().tipComplianceMPerN())
        .isGreaterThan(plain.predicted().tipComplianceMPerN());
    assertThat(extended.predicted().naturalFrequenciesHz().get(0))
        .isLessThan(plain.predicted().naturalFrequenciesHz().get(0));
    Intents beside = JOB.with("/feature/obstructions", CLAMP);
    assertThat(reaches(of(beside, "g-hsk-a63-shrink-fit-10-p75", "shrink-fit")))
        .as("the flange meets what stands beside the cut")
        .isFalse();
    assertThat(reaches(of(beside, EXTENDED, "shrink-fit"))).as("a slim nose passes it").isTrue();
  }

  @Test
  void anExtensionIsShorterAndSofterThanItsOwnJointCanBeStiff() {
    RankedAssembly extended = of(JOB, EXTENDED, "shrink-fit");
    RankedAssembly onePiece = of(JOB, "g-hsk-a63-shrink-fit-slim-10-p200", "shrink-fit");
    assertThat(extended.predicted().runoutMedianM())
        .as("one joint more than a holder of about that length in one piece")
        .isGreaterThan(onePiece.predicted().runoutMedianM());
  }

  @Test
  void whatStandsHighBesideTheCutIsAnsweredWithASlimLongStack() {
    Intents high =
        JOB.with("/feature/obstructions", List.of(Map.of("heightMm", 160.0, "distanceMm", 18.0)))
            .with("/feature/depthMm", 31)
            .with("/machine/toolChanger/maxLengthMm", 450);
    Recommendation answer = Bench.ask(high);
    assertThat(Bench.told(answer))
        .as("with %s", refs(answer))
        .anyMatch(a -> has(a, Role.EXTENSION) && reaches(a));
  }

  @ParameterizedTest
  @CsvSource({"6, milling-chuck", "5, high-torque-hydraulic"})
  void aReductionSleeveLendsAStrongChuckTheBoreThatItLacks(double shankMm, String family) {
    Intents small =
        Intents.of("side-milling", "end-mill", shankMm, "S275JR", "BT40")
            .with("/tool/shank/diameterMm", shankMm);
    RankedAssembly best = Bench.best(Bench.ask(small), family);
    assertThat(has(best, Role.SLEEVE)).as("%s", best.components()).isTrue();
  }

  @Test
  void aSleeveCostsRunoutAndGrip() {
    RankedAssembly plain = of(JOB, "g-hsk-a63-milling-chuck-20-p75", "milling-chuck", 20);
    RankedAssembly sleeved = of(JOB, "g-hsk-a63-milling-chuck-20-p75+s-20-10", "milling-chuck");
    assertThat(sleeved.predicted().gripTorqueP05Nm())
        .isLessThan(plain.predicted().gripTorqueP05Nm());
    assertThat(sleeved.predicted().runoutP95M())
        .isGreaterThan(of(JOB, "g-hsk-a63-hydraulic-10-p75", "hydraulic").predicted().runoutP95M());
  }

  @ParameterizedTest
  @CsvSource({"shrink-fit", "hydraulic", "milling-chuck"})
  void aFormLockedShankCannotBePulledOut(String family) {
    Intents pulling =
        Intents.of("slotting", "end-mill", 16, "Ti-6Al-4V", "HSK-A63")
            .with("/operation/axialDepthMm", 16)
            .with("/tool/helixDeg", 45)
            .with("/tool/shank/diameterMm", 16);
    RankedAssembly friction = Bench.best(Bench.ask(pulling), family);
    RankedAssembly locked =
        Bench.best(Bench.ask(pulling.with("/tool/shank/form", "form-locked")), family);
    assertThat(Bench.margin(friction, Pair.PULL_OUT)).isEmpty();
    assertThat(Bench.warns(friction, "pull-out-possible")).isTrue();
    assertThat(Bench.warns(locked, "pull-out-possible")).isFalse();
    assertThat(has(locked, Role.FORM_LOCK)).isTrue();
    assertThat(Bench.margin(locked, Pair.PULL_OUT))
        .hasValueSatisfying(pull -> assertThat(pull.capacity()).isGreaterThan(pull.demand()));
  }

  @Test
  void anAdapterLetsOneHeadServeAFiftyAndAHollowTaper() {
    String head = "g-psc-c5-shrink-fit-12-p100";
    for (String spindle : List.of("CAT50", "HSK-A63")) {
      Intents job =
          Intents.of("side-milling", "end-mill", 12, "GJL-250", spindle)
              .with("/operation/axialDepthMm", 6)
              .with("/operation/radialDepthMm", 1)
              .with("/machine/toolChanger/maxLengthMm", 450)
              .with("/shop/stock", List.of(Map.of("ref", head, "count", 1)));
      Recommendation answer = Bench.ask(job.with("/preferences/rankBy", "cost"));
      assertThat(answer.weighed().candidates()).isPositive();
      String adapter = "m-" + spindle.toLowerCase(Locale.ROOT) + "-psc-c5-p";
      RankedAssembly on =
          of(job, adapter + (spindle.equals("CAT50") ? 90 : 75) + "+" + head, "shrink-fit");
      assertThat(has(on, Role.ADAPTER)).isTrue();
      assertThat(on.standing()).as("%s", on.reasons()).isNotEqualTo(Standing.UNSUITABLE);
    }
  }

  @Test
  void aSmallCouplingOpensUnderAHeavyCut() {
    Intents heavy =
        Intents.of("slotting", "end-mill", 12, "42CrMo4", "HSK-A63")
            .with("/operation/axialDepthMm", 18)
            .with("/machine/toolChanger/maxLengthMm", 450);
    RankedAssembly on = of(heavy, "m-hsk-a63-psc-c4-p75+g-psc-c4-shrink-fit-12-p100", "shrink-fit");
    assertThat(on.reasons()).anyMatch(reason -> reason.code().equals("coupling-bending"));
  }

  @Test
  void aThroughCoolantDrillInAColletNeedsASealedOne() {
    Intents drilling =
        Intents.of("drilling", "drill", 8.5, "42CrMo4", "BT40")
            .with("/tool/throughCoolant", true)
            .with("/machine/throughCoolant", true)
            .with("/tool/shank/diameterMm", 10);
    RankedAssembly through =
        Bench.best(Bench.ask(drilling.with("/operation/coolant", "through-tool")), "er-collet");
    RankedAssembly flood =
        Bench.best(Bench.ask(drilling.with("/operation/coolant", "flood")), "er-collet");
    assertThat(has(through, Role.COOLANT_COLLET)).isTrue();
    assertThat(has(through, Role.COLLET)).isFalse();
    assertThat(has(flood, Role.COLLET)).isTrue();
    assertThat(through.setUp()).anyMatch(step -> step.code().equals("fit-sealed-collet"));
  }

  @Test
  void aSteepTaperHangsOnItsKnob() {
    assertThat(has(of(JOB, EXTENDED, "shrink-fit"), Role.RETENTION_KNOB)).isFalse();
    Intents steep = Intents.of("side-milling", "end-mill", 10, "42CrMo4", "BT40");
    assertThat(Bench.ask(steep).assemblies()).allMatch(a -> has(a, Role.RETENTION_KNOB));
  }

  @Test
  void aFaceContactHolderInAPlainSpindleIsAPlainTaper() {
    Intents plainSpindle =
        Intents.of("side-milling", "end-mill", 12, "42CrMo4", "BT40")
            .with("/machine/faceContact", false);
    RankedAssembly face =
        of(
            plainSpindle,
            Map.of("family", "shrink-fit", "faceContact", true, "projectionMm", 100),
            "shrink-fit");
    RankedAssembly plain = of(plainSpindle, "g-bt40-shrink-fit-12-p100", "shrink-fit");
    assertThat(Bench.warns(face, "face-contact-unused")).isTrue();
    assertThat(face.predicted().runoutMedianM()).isEqualTo(plain.predicted().runoutMedianM());
    RankedAssembly missed =
        of(
            plainSpindle.with("/machine/faceContact", true),
            "g-bt40-shrink-fit-12-p100",
            "shrink-fit");
    assertThat(Bench.warns(missed, "face-contact-missing")).isTrue();
  }

  @Test
  void aVeryDeepReachIsAlsoOfferedADampedBody() {
    Intents deep =
        Intents.of("side-milling", "end-mill", 20, "GJL-250", "HSK-A100")
            .with("/operation/axialDepthMm", 10)
            .with("/operation/radialDepthMm", 1)
            .with("/tool/overallLengthMm", 150)
            .with("/feature/depthMm", 85)
            .with("/feature/obstructions", List.of(Map.of("heightMm", 330.0, "distanceMm", 45.0)))
            .with("/machine/toolChanger/maxLengthMm", 600)
            .with("/machine/toolChanger/maxMassKg", 25)
            .with("/machine/toolChanger/maxMomentNm", 60);
    Recommendation answer = Bench.ask(deep);
    assertThat(Bench.told(answer))
        .as("with %s", refs(answer))
        .anyMatch(a -> has(a, Role.DAMPED_BODY) && Bench.warns(a, "damper-needs-tuning"));
  }

  private static List<String> refs(Recommendation answer) {
    return Bench.told(answer).stream()
        .map(a -> a.assembly().holder().ref() + " " + a.standing())
        .toList();
  }

  private static boolean reaches(RankedAssembly assembly) {
    return Bench.margin(assembly, Pair.GAP)
        .filter(gap -> gap.capacity() >= gap.demand())
        .isPresent();
  }

  private static boolean has(RankedAssembly assembly, Role role) {
    return assembly.components().stream().map(Part::role).anyMatch(role::equals);
  }

  private static RankedAssembly of(Intents job, String ref, String family) {
    return of(job, Map.of("ref", ref), family);
  }

  private static RankedAssembly of(Intents job, String ref, String family, double shankMm) {
    return of(job.with("/tool/shank/diameterMm", shankMm), ref, family);
  }

  private static RankedAssembly of(Intents job, Map<String, ?> entry, String family) {
    Map<String, Object> counted = new LinkedHashMap<>(entry);
    counted.put("count", 1);
    Intents only = job.with("/shop/stock", List.of(counted)).with("/shop/stockOnly", true);
    return Bench.best(Bench.ask(only), family);
  }
}
