package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.junit.jupiter.api.Test;

/**
 * Knobs, tubes, locks and screws that somebody names: each has its place, its effect, or a note.
 */
class GivenAccessoriesTest {
  private static final Intents FLOOD =
      Intents.of("side-milling", "end-mill", 16, "C45", "BT40")
          .with("/operation/coolant", "flood")
          .with("/tool/shank/diameterMm", 16)
          .with("/machine/throughCoolant", true);
  private static final Intents THROUGH = FLOOD.with("/operation/coolant", "through-tool");
  private static final HolderBody STEEP = Bench.holder("BT40", "shrink-fit", 16, 75, false);
  private static final HolderBody HOLLOW = Bench.holder("HSK-A63", "shrink-fit", 16, 75, true);

  private static List<Finding> findings(Scene scene) {
    return scene.judged().findings();
  }

  private static List<String> at(Scene scene, String code) {
    return findings(scene).stream()
        .filter(finding -> finding.code().equals(code))
        .map(Finding::pointer)
        .toList();
  }

  private static List<String> refs(Scene scene) {
    return scene.assessed().assembly().components().stream().map(Part::ref).toList();
  }

  @Test
  void aSolidKnobStopsTheCoolantThatAThroughKnobPasses() {
    Scene solid = Scene.of(THROUGH, "knob-bt40-solid", STEEP.ref());
    assertThat(at(solid, "coolant-holder")).containsExactly("/assembly/components/0");
    assertThat(solid.judged().verdict()).isEqualTo(Verdict.UNFIT);
    assertThat(solid.judged().appraisal().assembly().holder().origin())
        .as("a knob changes nothing else of the holder")
        .isEqualTo(STEEP.origin());
    Scene through = Scene.of(THROUGH, "knob-bt40-through", STEEP.ref());
    assertThat(at(through, "coolant-holder")).isEmpty();
    Scene flood = Scene.of(FLOOD, "knob-bt40-solid", STEEP.ref());
    assertThat(at(flood, "coolant-holder")).isEmpty();
    Scene byTheFlange =
        Scene.of(THROUGH)
            .plus(null, STEEP.ref(), InlineHolder.NONE)
            .plus(null, "knob-bt40-solid", InlineHolder.NONE)
            .knowing(Map.of("family", "shrink-fit", "throughCoolant", true));
    assertThat(at(byTheFlange, "coolant-holder")).isEmpty();
  }

  @Test
  void theNamedKnobIsTheOneThatIsListed() {
    assertThat(refs(Scene.of(FLOOD, STEEP))).startsWith("knob-bt40-solid");
    Scene through = Scene.of(FLOOD, STEEP.ref(), "knob-bt40-through");
    assertThat(refs(through)).startsWith("knob-bt40-through").doesNotContain("knob-bt40-solid");
    assertThat(at(through, "accessory-counted-anyway")).containsExactly("/assembly/components/1");
  }

  @Test
  void aKnobOfAnotherStandardDoesNotHold() {
    Scene other = Scene.of(FLOOD, "knob-cat40-solid", STEEP.ref());
    assertThat(findings(other))
        .anySatisfy(
            finding -> {
              assertThat(finding.code()).isEqualTo("accessory-and-place-differ");
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.pointer()).isEqualTo("/assembly/components/0");
            });
  }

  @Test
  void whatHasNoPlaceIsLeftOut() {
    Intents hollow = FLOOD.with("/machine/interface", "HSK-A63");
    assertThat(at(Scene.of(hollow, "knob-bt40-solid", HOLLOW.ref()), "component-not-used"))
        .containsExactly("/assembly/components/0");
    assertThat(at(Scene.of(FLOOD, STEEP.ref(), "tube-hsk-a63"), "component-not-used"))
        .containsExactly("/assembly/components/1");
    Scene unlocked = Scene.of(FLOOD, STEEP.ref(), "form-lock-16.00");
    assertThat(at(unlocked, "component-not-used")).containsExactly("/assembly/components/1");
    assertThat(refs(unlocked)).doesNotContain("form-lock-16.00");
  }

  /** A screw behind the shank is set as the steps say, and bears no more than it did unnamed. */
  @Test
  void aNamedScrewIsSetAndChangesNoNumber() {
    Scene without = Scene.of(FLOOD, STEEP);
    Scene with = Scene.of(FLOOD, STEEP.ref(), "back-stop-screw-16.00");
    RankedAssembly told = with.assessed().assembly();
    assertThat(refs(without)).doesNotContain("back-stop-screw-16.00");
    assertThat(refs(with)).contains("back-stop-screw-16.00");
    assertThat(told.setUp()).anyMatch(step -> step.code().equals("set-back-stop-screw"));
    assertThat(told.scores()).isEqualTo(without.assessed().assembly().scores());
    assertThat(told.limits()).isEqualTo(without.assessed().assembly().limits());
    assertThat(
            at(Scene.of(FLOOD, STEEP.ref(), "back-stop-screw-12.00"), "accessory-and-place-differ"))
        .containsExactly("/assembly/components/1");
  }

  @Test
  void aRoleAloneIsThePartThatGoesThere() {
    Scene tube =
        Scene.of(THROUGH.with("/machine/interface", "HSK-A63"), HOLLOW)
            .plus(Role.COOLANT_TUBE, null, InlineHolder.NONE);
    assertThat(refs(tube)).containsOnlyOnce("tube-hsk-a63");
    assertThat(at(tube, "accessory-counted-anyway")).containsExactly("/assembly/components/1");
  }

  /** Two described alike but for what was measured on them: each name is one of them. */
  @Test
  void aHolderThatTheStockDescribesIsKnownByItsName() {
    Map<String, Object> told = Map.of("family", "shrink-fit", "boreMm", 16, "projectionMm", 90);
    Map<String, Object> worse =
        Map.of(
            "family", "shrink-fit", "boreMm", 16, "projectionMm", 90, "runoutUm", 40, "count", 1);
    Intents owning = FLOOD.with("/shop/stock", List.of(counted(told), worse));
    double usual = runoutUm(Scene.of(owning, "own-shrink-fit-16.00-p90.00"));
    double measured = runoutUm(Scene.of(owning, "own-shrink-fit-16.00-p90.00-no2"));
    assertThat(measured).isGreaterThan(2 * usual);
    List<String> recommended =
        Bench.told(Bench.ask(owning.with("/shop/stockOnly", true))).stream()
            .map(assembly -> assembly.assembly().holder().ref())
            .toList();
    assertThat(recommended).contains("own-shrink-fit-16.00-p90.00");
  }

  private static Map<String, Object> counted(Map<String, Object> entry) {
    Map<String, Object> counted = new HashMap<>(entry);
    counted.put("count", 1);
    return counted;
  }

  private static double runoutUm(Scene scene) {
    Assessor.Judged judged = scene.judged();
    return judged.context().predicted(judged.appraisal()).runoutP95M() * 1e6;
  }
}
