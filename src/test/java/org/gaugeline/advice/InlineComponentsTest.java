package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.DerivationStep;
import org.gaugeline.assessment.Finding;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Components in the caller's own words: each is built, and what is said of it has its effect. */
class InlineComponentsTest {
  private static final Intents MILL =
      Intents.of("side-milling", "end-mill", 12, "C45", "HSK-A63")
          .with("/operation/axialDepthMm", 6)
          .with("/operation/radialDepthMm", 1)
          .with("/operation/spindleSpeedRpm", 4000)
          .with("/tool/shank/diameterMm", 12)
          .with("/tool/fluteLengthMm", 26)
          .with("/tool/overallLengthMm", 83);
  private static final Intents SHELL =
      Intents.of("face-milling", "shell-mill", 50, "C45", "HSK-A63")
          .with("/operation/spindleSpeedRpm", 1200);
  private static final double DEVIATIONS_OF_P95_TIR = 2 * Math.sqrt(2 * Math.log(20));

  private static Scene plus(Scene scene, @Nullable Role role, Map<String, Object> said) {
    return scene.plus(role, null, InlineHolder.NONE).knowing(said);
  }

  private static Scene holder(Map<String, Object> more) {
    return plus(Scene.of(MILL), Role.HOLDER, with("family", "shrink-fit", more)).standingOutMm(38);
  }

  private static Map<String, Object> with(String name, Object value, Map<String, Object> more) {
    Map<String, Object> all = new LinkedHashMap<>(more);
    all.put(name, value);
    return all;
  }

  /** The stack that has every role: adapter, holder with its collet. */
  private static Scene adapted(Role base, Map<String, Object> said) {
    Scene scene = plus(Scene.of(MILL), base, said);
    return plus(scene, Role.HOLDER, Map.of("family", "er-collet", "interface", "PSC-C5"))
        .standingOutMm(38);
  }

  private static Scene extended(Map<String, Object> said) {
    Scene host = plus(Scene.of(MILL), Role.HOLDER, Map.of("family", "hydraulic", "boreMm", 20));
    return plus(host, Role.EXTENSION, with("family", "shrink-fit", said)).standingOutMm(38);
  }

  private static Scene sleeved(Map<String, Object> said) {
    Scene host = plus(Scene.of(MILL), Role.HOLDER, Map.of("family", "hydraulic", "boreMm", 20));
    return plus(host, Role.SLEEVE, said).standingOutMm(38);
  }

  private static Scene colleted(Map<String, Object> said) {
    Scene chuck = plus(Scene.of(MILL), Role.HOLDER, Map.of("family", "er-collet"));
    return plus(chuck, Role.COLLET, said).standingOutMm(38);
  }

  private static Scene arbor(Map<String, Object> said) {
    return plus(Scene.of(SHELL), Role.ARBOR, said);
  }

  private static RankedAssembly told(Scene scene) {
    return scene.assessed().assembly();
  }

  private static List<Role> roles(Scene scene) {
    return told(scene).components().stream().map(Part::role).toList();
  }

  private static List<String> codes(Scene scene) {
    return scene.judged().findings().stream().map(Finding::code).toList();
  }

  @Test
  void everyRoleIsBuilt() {
    assertThat(roles(adapted(Role.ADAPTER, Map.of()))).contains(Role.ADAPTER, Role.COLLET);
    assertThat(roles(adapted(Role.DAMPED_BODY, Map.of()))).contains(Role.DAMPED_BODY);
    assertThat(roles(extended(Map.of()))).contains(Role.HOLDER, Role.EXTENSION);
    assertThat(roles(sleeved(Map.of()))).contains(Role.HOLDER, Role.SLEEVE);
    assertThat(told(arbor(Map.of())).assembly().holder().family().id())
        .isEqualTo("shell-mill-arbor");
    for (Scene scene :
        List.of(
            adapted(Role.ADAPTER, Map.of()),
            adapted(Role.DAMPED_BODY, Map.of()),
            extended(Map.of()),
            sleeved(Map.of()),
            colleted(Map.of("nutTorqueNm", 100)),
            arbor(Map.of()))) {
      assertThat(codes(scene)).doesNotContain("component-not-used", "property-not-applicable");
    }
  }

  /** What is not said is taken as it fits, and what would be another way is told from it. */
  @Test
  void whatIsNotSaidIsNoFault() {
    Scene chuck = plus(Scene.of(MILL), Role.HOLDER, Map.of());
    Scene stack = plus(chuck, Role.EXTENSION, Map.of());
    assertThat(codes(stack)).doesNotContain("extension-and-bore-differ");
    Scene loose = chuck.with("/operation/feedPerToothMm", 1);
    assertThat(loose.judged().verdict()).isEqualTo(Verdict.UNFIT);
    assertThat(loose.assessed().wouldFitIf()).allSatisfy(one -> assertThat(one.from()).isNotNull());
    assertThat(
            loose.assessed().wouldFitIf().stream()
                    .map(one -> one.pointer())
                    .toList()
                    .contains("/assembly/components/0/family")
                || loose.assessed().wontFitBy().contains("/assembly/components/0/family"))
        .isTrue();
  }

  @Test
  void lengthsAddUpOverTheStack() {
    double gauge =
        told(adapted(Role.ADAPTER, Map.of("projectionMm", 90))).geometry().gaugeLengthM();
    double longer =
        told(adapted(Role.ADAPTER, Map.of("projectionMm", 110))).geometry().gaugeLengthM();
    assertThat(longer - gauge).isCloseTo(0.02, within(1e-9));
    Scene two = plus(Scene.of(MILL), Role.ADAPTER, Map.of("projectionMm", 90));
    two = plus(two, Role.ADAPTER, Map.of("interface", "PSC-C6", "projectionMm", 50));
    two =
        plus(two, Role.HOLDER, Map.of("family", "er-collet", "interface", "PSC-C5"))
            .standingOutMm(38);
    assertThat(told(two).geometry().gaugeLengthM() - gauge).isCloseTo(0.05, within(1e-9));
  }

  @Test
  void ownDimensionsAreNotRememberedForTheNextRequest() {
    double soft = told(extended(Map.of("projectionMm", 140))).predicted().tipComplianceMPerN();
    double stiff = told(extended(Map.of("projectionMm", 60))).predicted().tipComplianceMPerN();
    assertThat(soft).isGreaterThan(1.5 * stiff);
    assertThat(told(extended(Map.of("projectionMm", 140))).predicted().tipComplianceMPerN())
        .isEqualTo(soft);
  }

  /** A spring in series: what is added to the compliance is what the springs differ by. */
  @Test
  void aMeasuredSpindleJointReplacesThePredictedOne() {
    Scene base =
        holder(Map.of("jointStiffness", Map.of("radialNPerM", 4e8, "rotationalNmPerRad", 4e6)));
    Scene soft =
        holder(Map.of("jointStiffness", Map.of("radialNPerM", 1e8, "rotationalNmPerRad", 1e6)));
    double arm = told(base).geometry().gaugeLengthM();
    double added = 1 / 1e8 - 1 / 4e8 + arm * arm * (1 / 1e6 - 1 / 4e6);
    assertThat(
            told(soft).predicted().tipComplianceMPerN()
                - told(base).predicted().tipComplianceMPerN())
        .isCloseTo(added, within(1e-6 * added));
    assertThat(told(soft).predicted().naturalFrequenciesHz().get(0))
        .isLessThan(told(base).predicted().naturalFrequenciesHz().get(0));
  }

  @ParameterizedTest
  @CsvSource({"adapter", "extension", "collet", "sleeve"})
  void aMeasuredJointOfAnyPartReplacesThePredictedOne(String role) {
    double arm =
        switch (role) {
          case "adapter" -> told(joined(role, 1e6)).geometry().gaugeLengthM() - 0.09;
          case "extension" -> told(joined(role, 1e6)).geometry().stickOutM() + 0.1;
          default -> told(joined(role, 1e6)).geometry().stickOutM();
        };
    double added = arm * arm * (1 / 1e5 - 1 / 1e6);
    double soft = told(joined(role, 1e5)).predicted().tipComplianceMPerN();
    double stiff = told(joined(role, 1e6)).predicted().tipComplianceMPerN();
    assertThat(soft - stiff).as(role).isCloseTo(added, within(1e-4 * added));
  }

  private static Scene joined(String role, double rotationalNmPerRad) {
    Map<String, Object> joint =
        Map.of(
            "jointStiffness", Map.of("radialNPerM", 1e8, "rotationalNmPerRad", rotationalNmPerRad));
    return switch (role) {
      case "adapter" -> {
        Scene scene = plus(Scene.of(MILL), Role.ADAPTER, Map.of("projectionMm", 90));
        yield plus(
                scene, Role.HOLDER, with("family", "er-collet", with("interface", "PSC-C5", joint)))
            .standingOutMm(38);
      }
      case "extension" -> extended(with("projectionMm", 100, joint));
      case "sleeve" -> sleeved(joint);
      default -> colleted(joint);
    };
  }

  /** Variances add: a face that runs out by f over d tilts by f/d, times the arm. */
  @Test
  void theFaceOfAnArborTiltsTheCutter() {
    double flat = tir95(arbor(Map.of("faceRunoutUm", 0, "faceDiameterMm", 40)));
    double tilted = tir95(arbor(Map.of("faceRunoutUm", 20, "faceDiameterMm", 40)));
    double arm = told(arbor(Map.of())).geometry().stickOutM();
    double shown = 2 * arm * 20e-6 / 0.04;
    assertThat(Math.sqrt(tilted * tilted - flat * flat)).isCloseTo(shown, within(1e-6 * shown));
  }

  @Test
  void theFaceOfAnAdapterTiltsAllInFrontOfIt() {
    Map<String, Object> length = Map.of("projectionMm", 90, "faceDiameterMm", 50);
    double flat = tir95(adapted(Role.ADAPTER, with("faceRunoutUm", 0, length)));
    Scene rough = adapted(Role.ADAPTER, with("faceRunoutUm", 5, length));
    double shown = 2 * (told(rough).geometry().gaugeLengthM() - 0.09) * 5e-6 / 0.05;
    double tilted = tir95(rough);
    assertThat(Math.sqrt(tilted * tilted - flat * flat)).isCloseTo(shown, within(1e-6 * shown));
  }

  @Test
  void theFlangeOfAHolderTiltsTheWholeAssembly() {
    double flat = tir95(holder(Map.of("faceRunoutUm", 0, "faceDiameterMm", 60)));
    Scene rough = holder(Map.of("faceRunoutUm", 3, "faceDiameterMm", 60));
    double shown = 2 * told(rough).geometry().gaugeLengthM() * 3e-6 / 0.06;
    double tilted = tir95(rough);
    assertThat(Math.sqrt(tilted * tilted - flat * flat)).isCloseTo(shown, within(1e-6 * shown));
  }

  private static double tir95(Scene scene) {
    double sigma =
        scene.judged().derivation().stream()
            .filter(step -> step.symbol().equals("sigma"))
            .mapToDouble(DerivationStep::value)
            .findFirst()
            .orElseThrow();
    return sigma * DEVIATIONS_OF_P95_TIR;
  }

  @Test
  void aMeasuredDampingRatioIsTold() {
    assertThat(told(holder(Map.of("dampingRatio", 0.071))).predicted().dampingRatio())
        .isEqualTo(0.071);
    assertThat(
            told(adapted(Role.DAMPED_BODY, Map.of("dampingRatio", 0.09)))
                .predicted()
                .dampingRatio())
        .isEqualTo(0.09);
  }

  /**
   * Hung in rubber it weighs and does not stiffen; its tuning has no effect yet, and that is told.
   */
  @Test
  void aTunedMassWeighs() {
    Scene light = adapted(Role.DAMPED_BODY, Map.of("damper", Map.of("massKg", 0.2)));
    Scene heavy = adapted(Role.DAMPED_BODY, Map.of("damper", Map.of("massKg", 0.7)));
    assertThat(told(heavy).geometry().massKg() - told(light).geometry().massKg())
        .isCloseTo(0.5, within(1e-6));
    double soft = told(heavy).predicted().tipComplianceMPerN();
    assertThat(told(light).predicted().tipComplianceMPerN()).isCloseTo(soft, within(1e-6 * soft));
    Scene tuned =
        adapted(Role.DAMPED_BODY, Map.of("damper", Map.of("massKg", 0.7, "frequencyHz", 300)));
    assertThat(told(tuned).geometry()).isEqualTo(told(heavy).geometry());
    assertThat(codes(tuned)).contains("damper-tuning-for-chatter");
    Scene inHolder = holder(Map.of("projectionMm", 160, "damper", Map.of("massKg", 0.3)));
    Scene heavier = holder(Map.of("projectionMm", 160, "damper", Map.of("massKg", 0.4)));
    assertThat(told(heavier).geometry().massKg() - told(inHolder).geometry().massKg())
        .isCloseTo(0.1, within(1e-6));
  }

  @Test
  void aWeighedPartCountsAtItsWeight() {
    Scene light = adapted(Role.ADAPTER, Map.of("massKg", 1.1));
    Scene heavy = adapted(Role.ADAPTER, Map.of("massKg", 1.6));
    assertThat(told(heavy).geometry().massKg() - told(light).geometry().massKg())
        .isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aBodyOfHeavyMetalIsStiffer() {
    assertThat(told(extended(Map.of("material", "heavy-metal"))).predicted().tipComplianceMPerN())
        .isLessThan(told(extended(Map.of())).predicted().tipComplianceMPerN());
  }

  @Test
  void aMarkedSpeedOfAnyPartCounts() {
    Map<String, Object> marked = Map.of("maxSpindleSpeedRpm", 3000);
    for (Scene scene :
        List.of(
            adapted(Role.ADAPTER, marked), extended(marked), sleeved(marked), colleted(marked))) {
      assertThat(codes(scene)).contains("marked-speed");
    }
  }

  @Test
  void theCalledColletClosesOnlySoFar() {
    assertThat(codes(colleted(Map.of("boreMm", 12)))).doesNotContain("collet-range");
    assertThat(codes(colleted(Map.of("boreMm", 10)))).contains("collet-range");
    assertThat(codes(colleted(Map.of("boreMm", 14)))).contains("collet-range");
    assertThat(codes(colleted(Map.of("boreMm", 12.8)))).contains("collet-below-nominal");
  }

  @Test
  void anAdapterTakesOnlyItsOwnEnd() {
    Scene odd =
        Scene.of(MILL, "m-hsk-a63-psc-c5-p75", "g-hsk-a63-shrink-fit-12-p75").standingOutMm(38);
    List<Finding> findings = odd.judged().findings();
    assertThat(findings)
        .anySatisfy(
            finding -> {
              assertThat(finding.code()).isEqualTo("interface-mismatch");
              assertThat(finding.pointer()).isEqualTo("/assembly/components/1");
            });
  }

  /** The part that stops the coolant is named, wherever in the stack it is. */
  @Test
  void coolantIsJudgedByTheWholeStack() {
    Map<String, Object> dry = Map.of("throughCoolant", false);
    Map<Scene, String> stacks = new LinkedHashMap<>();
    stacks.put(adapted(Role.ADAPTER, dry), "/assembly/components/0");
    stacks.put(extended(dry), "/assembly/components/1");
    stacks.put(sleeved(dry), "/assembly/components/1");
    stacks.put(colleted(dry), "/assembly/components/1");
    stacks.put(holder(dry), "/assembly/components/0");
    stacks.forEach(
        (dryStack, pointer) -> {
          Scene asked =
              dryStack
                  .with("/operation/coolant", "through-tool")
                  .with("/machine/throughCoolant", true);
          assertThat(asked.judged().findings())
              .as(pointer)
              .anySatisfy(
                  finding -> {
                    assertThat(finding.code()).isEqualTo("coolant-holder");
                    assertThat(finding.pointer()).isEqualTo(pointer + "/throughCoolant");
                  });
        });
  }

  @Test
  void whatIsLeftOutIsListed() {
    List<String> assumed =
        adapted(Role.ADAPTER, Map.of("projectionMm", 90)).assessed().assumptions().stream()
            .map(one -> one.pointer())
            .toList();
    assertThat(assumed)
        .contains(
            "/assembly/components/0/interface",
            "/assembly/components/0/profile",
            "/assembly/components/1/boreMm",
            "/assembly/components/1/runoutUm",
            "/assembly/components/1/nutTorqueNm",
            "/assembly/components/1/jointStiffness/rotationalNmPerRad")
        .doesNotContain("/assembly/components/0/projectionMm", "/assembly/components/1/interface")
        .doesNotHaveDuplicates();
    assertThat(
            Scene.of(MILL, "g-hsk-a63-shrink-fit-12-p75")
                .standingOutMm(38)
                .assessed()
                .assumptions())
        .as("a catalogue part is known")
        .isEmpty();
  }

  /** Any subset of properties of any role: it is built, with finite numbers. */
  @Test
  void anySubsetOfPropertiesWillDo() {
    List<String> broken = new ArrayList<>();
    for (long seed = 0; seed < 600; seed++) {
      Scene scene = random(new SplittableRandom(seed));
      Appraisal appraisal = scene.judged().appraisal();
      RankedAssembly told = told(scene);
      boolean sound =
          told.geometry().massKg() > 0
              && told.geometry().gaugeLengthM() > told.geometry().stickOutM()
              && told.predicted().tipComplianceMPerN() > 0
              && told.predicted().naturalFrequenciesHz().stream().allMatch(f -> f > 0)
              && appraisal.margins().stream().noneMatch(m -> Double.isNaN(m.ratio()));
      if (!sound || codes(scene).contains("component-not-used")) {
        broken.add("seed " + seed + ": " + scene.given());
      }
    }
    assertThat(broken).isEmpty();
  }

  private static Scene random(SplittableRandom random) {
    Map<String, Object> all = new LinkedHashMap<>();
    maybe(all, random, "projectionMm", random.nextDouble(40, 200));
    maybe(all, random, "massKg", random.nextDouble(0.5, 3));
    maybe(all, random, "material", random.nextBoolean() ? "steel" : "heavy-metal");
    maybe(all, random, "throughCoolant", random.nextBoolean());
    maybe(all, random, "faceContact", random.nextBoolean());
    maybe(all, random, "maxSpindleSpeedRpm", random.nextDouble(3000, 30000));
    maybe(all, random, "residualUnbalanceGmm", random.nextDouble(0, 20));
    maybe(all, random, "runoutUm", random.nextDouble(0, 20));
    maybe(all, random, "faceRunoutUm", random.nextDouble(0, 10));
    maybe(all, random, "faceDiameterMm", random.nextDouble(40, 80));
    maybe(all, random, "nutTorqueNm", random.nextDouble(10, 200));
    maybe(all, random, "frictionCoefficient", random.nextDouble(0.05, 0.3));
    maybe(all, random, "interferenceUm", random.nextDouble(1, 40));
    maybe(all, random, "clampingTorqueNm", random.nextDouble(5, 300));
    maybe(all, random, "axialHoldN", random.nextDouble(100, 20000));
    maybe(all, random, "dampingRatio", random.nextDouble(0.01, 0.1));
    maybe(all, random, "damper", Map.of("massKg", random.nextDouble(0.05, 0.4)));
    maybe(all, random, "jointStiffness", Map.of("radialNPerM", random.nextDouble(1e7, 1e9)));
    return switch (random.nextInt(7)) {
      case 0 -> adapted(Role.ADAPTER, all);
      case 1 -> adapted(Role.DAMPED_BODY, all);
      case 2 -> extended(all);
      case 3 -> sleeved(all);
      case 4 -> colleted(all);
      case 5 -> arbor(all);
      default -> holder(all);
    };
  }

  private static void maybe(
      Map<String, Object> all, SplittableRandom random, String name, Object value) {
    if (random.nextInt(3) == 0) {
      all.put(name, value);
    }
  }
}
