package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.gaugeline.quantity.SixDigits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is said of reach, held to plane geometry: clearance, tilt and draft worked by hand, and
 * common practice for how true outlines and stick-outs are.
 */
class ReachFactsTest {
  private static final double MM = 1e3;
  private static final Intents POCKET = Intents.demo("28-impeller-pocket-tilted");
  private static final Intents WALL =
      Intents.of("side-milling", "end-mill", 8, "C45", "HSK-A63")
          .with("/operation/axialDepthMm", 6)
          .with("/operation/radialDepthMm", 0.4)
          .with("/feature/depthMm", 24)
          .with("/feature/wallClearanceMm", 1)
          .with("/tool/fluteLengthMm", 18)
          .with("/tool/overallLengthMm", 80)
          .with("/preferences/stability", false);

  static Stream<Intents> jobs() {
    return Stream.concat(Intents.demoNames().stream().map(Intents::demo), RandomIntents.of(40));
  }

  private static Reason gap(RankedAssembly assembly) {
    return Bench.margin(assembly, Pair.GAP).orElseThrow();
  }

  private static Optional<Reason> tilt(RankedAssembly assembly) {
    return assembly.reasons().stream()
        .filter(reason -> reason.code().equals("tilt-that-clears"))
        .findFirst();
  }

  private static boolean rubs(Recommendation answer) {
    return answer.cautions().stream().anyMatch(c -> c.code().equals("shank-rubs-wall"));
  }

  /** A shank 2 mm thicker than the cutter stands 1 mm in the wall, whatever holds it. */
  @Test
  void thickerShankHitsTheWallAndNoHolderMendsIt() {
    Recommendation answer = Bench.ask(WALL.with("/tool/shank/diameterMm", 10));
    assertThat(answer.assemblies()).isEmpty();
    assertThat(answer.flagged()).isNotEmpty();
    for (RankedAssembly one : answer.flagged()) {
      Reason own = Bench.margin(one, Pair.TOOL_GAP).orElseThrow();
      assertThat(own.capacity()).isCloseTo(-0.001, within(1e-9));
      assertThat(one.limits().featureDepthM().value()).isLessThanOrEqualTo(0.018 + 1e-9);
      assertThat(one.limits().featureDepthM().governedBy()).isEqualTo("tool-gap");
    }
    assertThat(rubs(answer)).isFalse();
  }

  @Test
  void equalShankOnlyRubs() {
    Recommendation answer = Bench.ask(WALL.with("/tool/shank/diameterMm", 8));
    assertThat(rubs(answer)).isTrue();
    assertThat(answer.assemblies()).isNotEmpty();
    assertThat(Bench.told(answer)).noneMatch(a -> Bench.margin(a, Pair.TOOL_GAP).isPresent());
  }

  /** 1.5 mm of slope over 18 mm of flute: 1 mm more radius is free from atan(1/18) = 3.18°. */
  @Test
  void draftFreesTheThickerShank() {
    Intents thick = WALL.with("/tool/shank/diameterMm", 10);
    double free = Math.toDegrees(Math.atan(1.0 / 18));
    for (RankedAssembly one :
        Bench.told(Bench.ask(thick.with("/feature/wallDraftDeg", free + 0.1)))) {
      assertThat(Bench.margin(one, Pair.TOOL_GAP)).isEmpty();
    }
    for (RankedAssembly one :
        Bench.told(Bench.ask(thick.with("/feature/wallDraftDeg", free - 0.1)))) {
      assertThat(Bench.margin(one, Pair.TOOL_GAP)).isPresent();
    }
  }

  @Test
  void shankHitsAnObstruction() {
    Intents beside =
        WALL.with("/feature/obstructions", List.of(Map.of("heightMm", 30, "distanceMm", 4.5)));
    for (RankedAssembly one : Bench.told(Bench.ask(beside.with("/tool/shank/diameterMm", 10)))) {
      assertThat(Bench.margin(one, Pair.TOOL_GAP).orElseThrow().capacity())
          .isLessThanOrEqualTo(-0.0005 + 1e-9);
    }
    for (RankedAssembly one : Bench.told(Bench.ask(beside.with("/tool/shank/diameterMm", 8)))) {
      assertThat(Bench.margin(one, Pair.TOOL_GAP)).isEmpty();
    }
  }

  /**
   * Quadrature by hand: 0.5 mm of generic outline and 0.1 mm of presetting are 0.51 mm at 95 %, and
   * bending and runout add micrometres to the 1 mm asked.
   */
  @Test
  void genericOutlineAsksMoreThanAGivenOne() {
    Intents preset = WALL.with("/shop/presetter", true).with("/preferences/confidence", 0.95);
    HolderBody holder = Bench.holder("HSK-A63", "shrink-fit", 8, 80, true);
    double generic = gap(Bench.weigh(preset, holder)).demand() * MM;
    assertThat(generic).isBetween(1.51, 1.56);
    Map<String, Object> own =
        Map.of(
            "family",
            "shrink-fit",
            "boreMm",
            8,
            "profile",
            List.of(Map.of("lengthMm", 80, "diameterMm", 21, "boreMm", 8)),
            "count",
            1);
    Intents given = preset.with("/shop/stock", List.of(own)).with("/shop/stockOnly", true);
    double drawn = gap(Bench.best(Bench.ask(given), "shrink-fit")).demand() * MM;
    assertThat(drawn).isBetween(1.14, 1.19);
    double even = gap(Bench.weigh(preset.with("/preferences/confidence", 0.5), holder)).demand();
    assertThat(even * MM).isBetween(1.0, 1.05);
  }

  /** Between the median and the asked confidence the gap is a matter of luck. */
  @Test
  void gapThatHoldsOnlyAsDrawnIsMarginal() {
    HolderBody holder = Bench.holder("HSK-A63", "shrink-fit", 8, 80, true);
    double longest = 0.080 - holder.minInsertionM();
    Intents tight = WALL.with("/tool/shank/diameterMm", 8);
    RankedAssembly between =
        Bench.weigh(tight.with("/feature/depthMm", longest * MM - 1.25), holder);
    assertThat(gap(between).capacity() * MM).isCloseTo(1.25, within(1e-6));
    assertThat(gap(between).demand()).isGreaterThan(gap(between).capacity());
    assertThat(between.standing()).isEqualTo(Standing.MARGINAL);
    assertThat(between.probability().reach()).isBetween(0.6, 0.95);
    RankedAssembly hit = Bench.weigh(tight.with("/feature/depthMm", longest * MM - 0.9), holder);
    assertThat(hit.standing()).isEqualTo(Standing.UNSUITABLE);
    assertThat(hit.probability().reach()).isLessThan(0.5);
  }

  /** Nothing but a ball cuts the same under tilt: for others it is said why none is told. */
  @Test
  void noTiltIsProposedForWhatIsNoBallAndThatIsSaid() {
    Intents square =
        POCKET
            .with("/tool/kind", "end-mill")
            .without("/tool/cornerRadiusMm")
            .with("/feature/tiltDeg", 0)
            .with("/machine/axes", 5);
    List<Reason> tilts = tilts(square, "tilt-not-proposed");
    assertThat(tilts).isNotEmpty();
    assertThat(tilts).allSatisfy(reason -> assertThat(reason.subject()).isEqualTo("end mill"));
    assertThat(tilts(square, "tilt-that-clears")).isEmpty();
    assertThat(tilts(square.with("/machine/axes", 3), "tilt-not-proposed")).isEmpty();
  }

  /** A far wall as near as the ball itself leaves no tilt. */
  @Test
  void whereNoTiltClearsThatIsSaid() {
    Intents narrow =
        POCKET
            .with("/feature/tiltDeg", 0)
            .with("/machine/axes", 5)
            .with("/feature/pocketWidthMm", 1.05 * POCKET.number("/tool/diameterMm"));
    assertThat(tilts(narrow, "no-tilt-clears")).isNotEmpty();
    assertThat(tilts(narrow, "tilt-that-clears")).isEmpty();
  }

  private static List<Reason> tilts(Intents intents, String code) {
    return Bench.told(Bench.ask(intents)).stream()
        .flatMap(assembly -> assembly.reasons().stream())
        .filter(reason -> reason.code().equals(code))
        .toList();
  }

  /** The told tilts clear when they are asked for; a degree less does not. */
  @Test
  void tiltThatIsToldClears() {
    int told = 0;
    for (RankedAssembly upright : Bench.told(Bench.ask(POCKET))) {
      Optional<Reason> range = tilt(upright);
      if (range.isEmpty()) {
        continue;
      }
      told++;
      HolderBody holder = upright.assembly().holder();
      double least = Math.toDegrees(range.orElseThrow().demand());
      double largest = Math.toDegrees(range.orElseThrow().capacity());
      assertThat(least).isLessThanOrEqualTo(largest);
      for (double degrees : List.of(SixDigits.round(least), SixDigits.round(largest))) {
        Reason gap = gap(Bench.weigh(POCKET.with("/feature/tiltDeg", degrees), holder));
        assertThat(gap.capacity())
            .as("%s at %s", holder.ref(), degrees)
            .isGreaterThanOrEqualTo(gap.demand());
      }
      Reason less = gap(Bench.weigh(POCKET.with("/feature/tiltDeg", least - 1), holder));
      assertThat(less.capacity()).as(holder.ref()).isLessThan(less.demand());
    }
    assertThat(told).isGreaterThan(2);
    RankedAssembly best = Bench.ask(POCKET.with("/feature/tiltDeg", 20)).assemblies().get(0);
    assertThat(best.standing()).isEqualTo(Standing.SUITABLE);
  }

  /** From 20° on the far wall comes nearer; at 40° nothing clears it. */
  @Test
  void tooMuchTiltHitsTheFarWall() {
    assertThat(Bench.ask(POCKET.with("/feature/tiltDeg", 40)).assemblies()).isEmpty();
    Intents open = POCKET.without("/feature/pocketWidthMm");
    assertThat(Bench.ask(open.with("/feature/tiltDeg", 40)).assemblies()).isNotEmpty();
  }

  @Test
  void threeAxesAreToldNoTilt() {
    assertThat(Bench.told(Bench.ask(POCKET.with("/machine/axes", 3))))
        .allMatch(assembly -> tilt(assembly).isEmpty());
    assertThat(Bench.told(Bench.ask(POCKET.with("/feature/tiltDeg", 15))))
        .allMatch(assembly -> tilt(assembly).isEmpty());
  }

  /**
   * Sphere geometry: a ball of 10 mm dipped 0.5 mm and tilted 15° cuts at up to 10·sin(15° +
   * acos(0.9)) = 6.549 mm.
   */
  @Test
  void tiltedBallCutsWider() {
    Recommendation answer = Bench.ask(Intents.demo("05-impeller-vane-profiling"));
    double expected = 10 * Math.sin(Math.toRadians(15) + Math.acos(0.9));
    assertThat(expected).isCloseTo(6.54, within(0.01));
    assertThat(answer.cautions())
        .filteredOn(caution -> caution.code().equals("tilted-ball-cuts-at"))
        .singleElement()
        .satisfies(c -> assertThat(c.value() * MM).isCloseTo(expected, within(1e-9)));
  }

  /** A told depth is met when asked; where the stick-out stays, more than that is not. */
  @ParameterizedTest
  @MethodSource("jobs")
  void featureDepthHolds(Intents intents) {
    for (RankedAssembly told : Bench.ask(intents).assemblies()) {
      Limit limit = told.limits().featureDepthM();
      HolderBody holder = told.assembly().holder();
      boolean solved =
          limit.value() > 0
              && limit.value() < told.geometry().gaugeLengthM()
              && limit.governedBy().equals("gap");
      if (!solved || holder.origin() == HolderBody.Origin.REQUEST) {
        continue;
      }
      double depth = SixDigits.roundDown(limit.value() * MM);
      RankedAssembly at = Bench.weigh(intents.with("/feature/depthMm", depth), holder);
      assertThat(gap(at).capacity())
          .as("%s of %s for %s", limit, holder.ref(), intents)
          .isGreaterThanOrEqualTo(gap(at).demand());
      double step = told.geometry().gaugeLengthM() * MM / 1000;
      RankedAssembly beyond = Bench.weigh(intents.with("/feature/depthMm", depth + step), holder);
      if (beyond.geometry().stickOutM() <= told.geometry().stickOutM()) {
        assertThat(gap(beyond).capacity())
            .as("beyond %s of %s for %s", limit, holder.ref(), intents)
            .isLessThan(gap(beyond).demand());
      }
    }
  }
}
