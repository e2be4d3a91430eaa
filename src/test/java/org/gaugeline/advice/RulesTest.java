package org.gaugeline.advice;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.gaugeline.assembly.Extension;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.Sleeve;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Rule;
import org.gaugeline.assessment.Rules;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule, from where it is silent through each of its severities: a given assembly gets worse
 * in one respect, and the finding comes, never softens again, and is as hard as the catalogue says
 * it can be.
 */
public class RulesTest {
  /** Codes that nothing can raise yet. */
  public static final Map<String, String> NOT_YET =
      Map.of("stable-depth", "chatter is not weighed yet: no margin of that pair is made");

  private static final int STEPS = 240;

  private static final Intents MILL =
      Intents.of("side-milling", "end-mill", 16, "EN AW-6082", "HSK-A63")
          .with("/operation/stage", "roughing")
          .with("/operation/axialDepthMm", 12)
          .with("/operation/radialDepthMm", 2)
          .with("/operation/feedPerToothMm", 0.08)
          .with("/operation/spindleSpeedRpm", 8000)
          .with("/tool/shank/diameterMm", 16)
          .with("/tool/fluteLengthMm", 32)
          .with("/tool/overallLengthMm", 100)
          .with("/shop/shrinkUnit", true)
          .with("/shop/torqueWrench", true);
  private static final Intents STEEP = MILL.with("/machine/interface", "BT40");
  private static final Intents FLAT = MILL.with("/tool/shank/form", "flat");
  private static final Intents DRILL =
      Intents.of("drilling", "drill", 16, "42CrMo4", "HSK-A63")
          .with("/operation/spindleSpeedRpm", 1500)
          .with("/operation/feedPerToothMm", 0.1)
          .with("/tool/shank/diameterMm", 16);
  private static final Intents TAP =
      Intents.of("tapping", "tap", 12, "C45", "HSK-A63").with("/operation/spindleSpeedRpm", 300);

  private static final HolderBody SHRINK = holder("shrink-fit");
  private static final HolderBody COLLET = holder("er-collet");
  private static final HolderBody SIDE_LOCK = holder("side-lock");
  private static final HolderBody HYDRAULIC = Bench.holder("HSK-A63", "hydraulic", 20, 75, true);
  private static final HolderBody HEAD = Bench.holder("PSC-C5", "er-collet", 16, 100, true);
  private static final String ADAPTER = "m-hsk-a63-psc-c5-p75";

  /**
   * How a code comes up.
   *
   * @param scenes from silent to worst
   */
  public record Rise(String code, List<Scene> scenes) {
    @Override
    public String toString() {
      return code;
    }
  }

  private static HolderBody holder(String family) {
    return Bench.holder("HSK-A63", family, 16, 75, true);
  }

  private static Rise rise(String code, Scene... scenes) {
    return new Rise(code, List.of(scenes));
  }

  private static Rise rise(String code, double from, double to, DoubleFunction<Scene> scene) {
    List<Scene> scenes = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      scenes.add(scene.apply(from * Math.pow(to / from, (double) i / STEPS)));
    }
    return new Rise(code, scenes);
  }

  private static Rise rise(String code, Scene scene, String pointer, double from, double to) {
    return rise(code, from, to, value -> scene.with(pointer, value));
  }

  private static Rise faster(String code, Scene scene) {
    return rise(code, 500, 90_000, scene::atSpeedRpm);
  }

  public static Stream<Rise> rises() {
    return Stream.of(fits(), reach(), grip(), accuracy(), speed(), gates(), told())
        .flatMap(List::stream);
  }

  private static List<Rise> fits() {
    Scene shrink = Scene.of(MILL, SHRINK);
    Scene collet = Scene.of(MILL, COLLET);
    HolderBody plain = Bench.holder("BT40", "shrink-fit", 16, 75, false);
    HolderBody faced = Bench.holder("BT40", "shrink-fit", 16, 75, true);
    Intents face = STEEP.with("/machine/faceContact", true);
    return List.of(
        rise("interface-mismatch", shrink, shrink.with("/machine/interface", "BT40")),
        rise(
            "interface-form-mismatch",
            Scene.of(STEEP, plain),
            Scene.of(STEEP.with("/machine/interface", "CAT40"), plain)),
        rise(
            "face-contact-unused",
            Scene.of(face, faced),
            Scene.of(STEEP.with("/machine/faceContact", false), faced)),
        rise("face-contact-missing", Scene.of(face, faced), Scene.of(face, plain)),
        rise("shank-form", Scene.of(FLAT, SIDE_LOCK), Scene.of(MILL, SIDE_LOCK)),
        rise("bore-and-shank-differ", shrink, shrink.with("/tool/shank/diameterMm", 15.875)),
        rise(
            "collet-and-chuck-differ",
            Scene.of(MILL, COLLET.ref(), Objects.requireNonNull(COLLET.colletSize()).id()),
            Scene.of(MILL, COLLET.ref(), "ER16")),
        rise(
            "accessory-and-place-differ",
            Scene.of(STEEP, "knob-bt40-solid", plain.ref()),
            Scene.of(STEEP, "knob-cat40-solid", plain.ref())),
        rise(
            "accessory-counted-anyway",
            Scene.of(STEEP, plain),
            Scene.of(STEEP, "knob-bt40-solid", plain.ref())),
        rise("collet-range", collet, collet.with("/tool/shank/diameterMm", 25)),
        rise("collet-below-nominal", collet, collet.with("/tool/shank/diameterMm", 15.2)),
        rise(
            "stacking-depth",
            Scene.of(MILL, ADAPTER, HEAD.ref()),
            Scene.of(MILL, ADAPTER, HEAD.ref(), extension(16), sleeve())),
        rise(
            "extension-and-bore-differ",
            Scene.of(MILL, HYDRAULIC.ref(), extension(20)),
            Scene.of(MILL, HYDRAULIC.ref(), extension(16))),
        rise(
            "sleeve-not-gripped",
            Scene.of(MILL, HYDRAULIC.ref(), sleeve(20)),
            Scene.of(MILL, COLLET.ref(), sleeve(20))),
        rise(
            "sleeve-and-bore-differ",
            Scene.of(MILL, HYDRAULIC.ref(), sleeve(20)),
            Scene.of(MILL, HYDRAULIC.ref(), sleeve(32))),
        rise(
            "equipment-missing",
            collet,
            collet.with("/shop/torqueWrench", false),
            shrink.with("/shop/shrinkUnit", false)));
  }

  private static String extension(double shankMm) {
    return Bench.CATALOGUE.attachments().extensions().stream()
        .filter(one -> Math.abs(one.shankDiameterM() - shankMm / 1e3) < 1e-9)
        .map(Extension::ref)
        .findFirst()
        .orElseThrow();
  }

  private static String sleeve(double outerMm) {
    return Bench.CATALOGUE.attachments().sleeves().stream()
        .filter(one -> Math.abs(one.outerDiameterM() - outerMm / 1e3) < 1e-9)
        .map(Sleeve::ref)
        .findFirst()
        .orElseThrow();
  }

  private static String sleeve() {
    return Bench.CATALOGUE.attachments().sleeves().stream()
        .map(Sleeve::ref)
        .findFirst()
        .orElseThrow();
  }

  private static List<Rise> reach() {
    Scene shrink = Scene.of(MILL, SHRINK).standingOutMm(40);
    Scene stack = Scene.of(MILL, ADAPTER, HEAD.ref()).standingOutMm(40);
    Scene flange = Scene.of(MILL, SIDE_LOCK).standingOutMm(40);
    return List.of(
        rise(
            "nose-collides",
            shrink.with("/feature/depthMm", 30),
            shrink.with("/feature/depthMm", 45)),
        rise("body-collides", stack.with("/feature/depthMm", 30), beside(stack, 20, 150)),
        rise("flange-collides", shrink.with("/feature/depthMm", 30), beside(shrink, 20, 105)),
        rise("host-collides", stack.with("/feature/depthMm", 30), beside(stack, 27, 230)),
        rise("tool-gap", shrink.with("/feature/depthMm", 30), beside(shrink, 7, 10)),
        rise("gap", flange.with("/feature/depthMm", 38), "/feature/wallClearanceMm", 0.5, 20),
        rise("insertion", 40, 99, out -> Scene.of(MILL, SHRINK).standingOutMm(out)),
        rise("flutes-clamped", 40, 20, out -> Scene.of(MILL, COLLET).standingOutMm(out)),
        rise(
            "stick-out-longer-than-needed",
            33,
            60,
            out -> Scene.of(MILL, SHRINK).standingOutMm(out)));
  }

  /** With a step that only a thick part meets. */
  private static Scene beside(Scene scene, double distanceMm, double heightMm) {
    return scene
        .with("/feature/depthMm", 30)
        .with(
            "/feature/obstructions",
            List.of(Map.of("heightMm", heightMm, "distanceMm", distanceMm)));
  }

  private static List<Rise> grip() {
    Scene shrink = Scene.of(MILL, SHRINK);
    Scene collet = Scene.of(MILL, COLLET);
    String feed = "/operation/feedPerToothMm";
    Scene locked =
        Scene.of(
            FLAT.with("/tool/helixDeg", 45)
                .with("/tool/diameterMm", 60)
                .with("/operation/axialDepthMm", 30)
                .with("/operation/radialDepthMm", 30)
                .with("/workpiece/material", "42CrMo4")
                .with("/operation/spindleSpeedRpm", 600),
            SIDE_LOCK);
    return List.of(
        rise("slip", collet, feed, 0.01, 10),
        rise("stop-torque", locked, feed, 0.001, 5),
        rise("pull-out", locked, feed, 0.001, 5),
        rise("push-in", Scene.of(DRILL, COLLET), feed, 0.02, 20),
        rise(
            "marked-torque-exceeded",
            500,
            0.5,
            marked -> shrink.knowing(Map.of("family", "shrink-fit", "clampingTorqueNm", marked))),
        rise(
            "marked-axial-exceeded",
            50_000,
            5,
            marked -> shrink.knowing(Map.of("family", "shrink-fit", "axialHoldN", marked))),
        rise("shank-tolerance", shrink, shrink.with("/tool/shank/tolerance", "h9")),
        rise("shank-substrate", shrink, shrink.with("/tool/substrate", "hss")),
        rise("nut-torque-missing", nut(200), collet),
        rise("nut-torque-low", 200, 5, RulesTest::nut),
        faster("grip-lost-at-speed", shrink));
  }

  private static Scene nut(double torqueNm) {
    return Scene.of(MILL, COLLET).knowing(Map.of("family", "er-collet", "nutTorqueNm", torqueNm));
  }

  private static List<Rise> accuracy() {
    Scene shrink = Scene.of(MILL, SHRINK);
    Scene collet = Scene.of(MILL.with("/shop/colletCondition", "used"), COLLET);
    String feed = "/operation/feedPerToothMm";
    Scene finishing =
        shrink.with("/operation/stage", "finishing").with("/feature/toleranceGrade", "IT9");
    return List.of(
        rise("runout", collet, feed, 0.5, 0.002),
        rise("size-error", finishing, "/operation/radialDepthMm", 0.01, 16),
        rise("roughness", shrink.with(feed, 0.3), "/feature/raUm", 20, 0.01),
        rise("tooth-does-not-cut", collet, feed, 0.5, 0.002),
        rise("uneven-tooth-load", collet, feed, 0.5, 0.002),
        rise(
            "measured-runout-worse",
            1,
            100,
            um -> shrink.measured(new Measured(um * 1e-6, NONE, NONE, List.of()))),
        rise(
            "measured-length-differs",
            1,
            1.2,
            share -> shrink.measured(new Measured(NONE, share * length(shrink), NONE, List.of()))),
        rise(
            "measured-mass-differs",
            1,
            3,
            share -> shrink.measured(new Measured(NONE, NONE, share * mass(shrink), List.of()))));
  }

  private static final double NONE = Double.NaN;

  private static double length(Scene scene) {
    return scene.judged().appraisal().geometry().gaugeLengthM();
  }

  private static double mass(Scene scene) {
    return scene.judged().appraisal().geometry().massKg();
  }

  private static List<Rise> speed() {
    Scene shrink = Scene.of(MILL, SHRINK);
    Scene marked = shrink.knowing(Map.of("family", "shrink-fit", "maxSpindleSpeedRpm", 12_000));
    Scene slender = Scene.of(MILL.with("/tool/overallLengthMm", 260), SHRINK).standingOutMm(215);
    return List.of(
        rise("machine-speed", shrink, "/machine/maxSpindleSpeedRpm", 20_000, 2_000),
        faster("interface-speed", shrink),
        faster("holder-speed", shrink),
        faster("marked-speed", marked),
        faster("collet-speed", Scene.of(MILL, COLLET)),
        faster("coupling-speed", Scene.of(MILL, ADAPTER, HEAD.ref())),
        rise("cutter-speed", shrink, "/tool/maxSpindleSpeedRpm", 20_000, 2_000),
        faster("bending-frequency", slender),
        faster("unbalance-force", Scene.of(MILL, COLLET)),
        faster("balance-grade-coarse", Scene.of(MILL, COLLET)),
        faster("grade-not-attainable", Scene.of(STEEP, "g-bt40-shrink-fit-16-p75")));
  }

  private static List<Rise> gates() {
    Scene shrink = Scene.of(MILL, SHRINK);
    String changer = "/machine/toolChanger/";
    Scene through = shrink.with("/operation/coolant", "through-tool");
    Scene open = through.with("/machine/throughCoolant", true);
    Scene stack = Scene.of(MILL, ADAPTER, HEAD.ref());
    Intents apart = TAP.with("/operation/tapping", "floating");
    return List.of(
        rise("interface-bending", shrink, "/machine/clampingForceKn", 40, 0.005),
        rise("coupling-bending", stack, "/operation/feedPerToothMm", 0.01, 100),
        rise("arbor-face-bending", 200, 0.05, RulesTest::screwed),
        faster("mouth-expansion", Scene.of(STEEP, "g-bt40-shrink-fit-16-p75")),
        rise("spindle-torque", shrink, "/machine/torqueNm", 90, 0.05),
        rise("spindle-power", shrink, "/machine/powerKw", 25, 0.02),
        rise("changer-mass", shrink, changer + "maxMassKg", 8, 0.2),
        rise("changer-length", shrink, changer + "maxLengthMm", 300, 50),
        rise("changer-moment", shrink, changer + "maxMomentNm", 10, 0.1),
        rise("changer-diameter", shrink, changer + "maxDiameterNeighboursEmptyMm", 150, 20),
        rise("neighbour-pockets-empty", shrink, changer + "maxDiameterMm", 80, 20),
        rise("coolant-machine", open, through.with("/machine/throughCoolant", false)),
        rise(
            "coolant-holder",
            open,
            open.knowing(Map.of("family", "shrink-fit", "throughCoolant", false))),
        rise("not-for-side-load", shrink, inline("drill-chuck")),
        rise("gives-way", shrink, inline("floating-reamer-holder")),
        rise(
            "no-length-compensation",
            Scene.of(apart).plus(null, null, family("tapping-chuck")),
            Scene.of(apart).plus(null, null, family("er-collet"))));
  }

  /** A shell mill on an arbor of which the screw is tightened so far. */
  private static Scene screwed(double torqueNm) {
    Intents mill =
        Intents.of("face-milling", "shell-mill", 63, "C45", "HSK-A63")
            .with("/operation/stage", "roughing");
    return Scene.of(mill, Bench.holder("HSK-A63", "shell-mill-arbor", 22, 75, true))
        .knowing(Map.of("family", "shell-mill-arbor", "nutTorqueNm", torqueNm));
  }

  private static Scene inline(String family) {
    return Scene.of(MILL).plus(null, null, family(family));
  }

  private static InlineHolder family(String family) {
    return InlineHolder.NONE.withFamily(family);
  }

  private static List<Rise> told() {
    Scene shrink = Scene.of(MILL, SHRINK);
    return List.of(
        rise(
            "component-not-used",
            Scene.of(MILL, COLLET).plus(Role.COLLET, null, InlineHolder.NONE),
            shrink.plus(Role.COLLET, null, InlineHolder.NONE)),
        rise(
            "damper-tuning-for-chatter",
            shrink.knowing(Map.of("family", "shrink-fit", "damper", Map.of("massKg", 0.2))),
            shrink.knowing(
                Map.of(
                    "family", "shrink-fit", "damper", Map.of("massKg", 0.2, "frequencyHz", 800)))),
        rise(
            "property-not-applicable",
            nut(150),
            shrink.knowing(
                Map.ofEntries(entry("family", "shrink-fit"), entry("nutTorqueNm", 150)))));
  }

  @ParameterizedTest
  @MethodSource("rises")
  void comesNeverSoftensAndReachesEachSeverity(Rise rise) {
    Set<Severity> seen = EnumSet.noneOf(Severity.class);
    Severity before = null;
    for (Scene scene : rise.scenes()) {
      Severity now = severity(scene, rise.code());
      if (scene.equals(rise.scenes().get(0))) {
        assertThat(now).as("%s is silent at first: %s", rise, scene).isNull();
      }
      assertThat(rank(now)).as("%s softens: %s", rise, scene).isGreaterThanOrEqualTo(rank(before));
      before = now;
      if (now != null) {
        seen.add(now);
      }
    }
    assertThat(seen)
        .as(rise.code())
        .containsExactlyInAnyOrderElementsOf(rule(rise.code()).severities(rise.code()));
  }

  private static int rank(@Nullable Severity severity) {
    return severity == null ? -1 : severity.ordinal();
  }

  /** How hard the hardest finding of a code is; null where there is none. */
  public static @Nullable Severity severity(Scene scene, String code) {
    Severity hardest = null;
    for (Finding finding : scene.judged().findings()) {
      if (finding.code().equals(code) && finding.severity().ordinal() > rank(hardest)) {
        hardest = finding.severity();
      }
    }
    return hardest;
  }

  private static Rule rule(String code) {
    return Rules.ALL.stream().filter(rule -> rule.codes().contains(code)).findFirst().orElseThrow();
  }

  @Test
  void everyCodeIsExercisedOrItIsSaidWhyNot() {
    List<String> codes = Rules.ALL.stream().flatMap(rule -> rule.codes().stream()).toList();
    assertThat(codes).doesNotHaveDuplicates();
    Set<String> exercised = new HashSet<>(NOT_YET.keySet());
    rises().forEach(rise -> assertThat(exercised.add(rise.code())).as(rise.code()).isTrue());
    assertThat(exercised).containsExactlyInAnyOrderElementsOf(codes);
  }

  @Test
  void everySourceOfARuleIsKnown() {
    for (Rule rule : Rules.ALL) {
      assertThat(rule.sources())
          .as(rule.toString())
          .isNotEmpty()
          .allSatisfy(key -> assertThat(Bench.DATA.sources()).containsKey(key));
      assertThat(rule.codes())
          .allSatisfy(
              code ->
                  assertThat(rule.severities(code))
                      .isNotEmpty()
                      .isSortedAccordingTo(Comparator.reverseOrder()));
    }
  }
}
