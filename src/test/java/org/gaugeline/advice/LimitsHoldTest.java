package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Reason;
import org.gaugeline.quantity.SixDigits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A limit that was told holds when it is asked for, and what was named breaks beyond it. */
class LimitsHoldTest {
  private static final double RPM = 60 / (2 * Math.PI);
  private static final double MM = 1e3;

  /** Search grid of the solver: a limit is met to within its share of the range. */
  private static final double GRID = 1.0 / 2000;

  private static final double BEYOND = 1.02;
  private static final double STEP_M = 0.5e-3;
  private static final Offset<Double> NEAR = Offset.offset(1e-6);
  private static final Set<String> OF_LENGTH = Set.of("size-error", "runout");
  private static final Set<String> RANGES =
      Set.of("flute-length", "feed-range", "thread-pitch", "assumed-feature-depth", "");
  private static final Set<String> OF_FORCE =
      Set.of("slip", "pull-out", "stop-torque", "push-in", "spindle-power", "spindle-torque");
  private static final Set<String> OF_SPEED =
      Set.of("spindle-speed", "unbalance-force", "spindle-power", "spindle-torque");

  /** Codes that name why the rated speed is what it is, all of the pair of speeds. */
  private static final Set<String> RATINGS =
      Set.of(
          "machine-speed",
          "interface-speed",
          "holder-speed",
          "collet-speed",
          "marked-speed",
          "cutter-speed",
          "bending-frequency");

  static Stream<Intents> jobs() {
    return Stream.concat(Intents.demoNames().stream().map(Intents::demo), RandomIntents.of(40));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void spindleSpeed(Intents intents) {
    Recommendation answer = Bench.ask(intents);
    double asked = answer.job().operation().spindleSpeedRadPerS();
    for (RankedAssembly told : shown(intents)) {
      Limit limit = told.limits().spindleSpeedRadPerS();
      double rpm = limit.value() * RPM;
      double top = answer.job().machine().maxSpindleSpeedRadPerS() * RPM;
      if (rpm > 1) {
        RankedAssembly at = again(intents.atSpeedRpm(SixDigits.roundDown(rpm)), told);
        assertMet(intents, told, limit, at, OF_SPEED);
        // force falls with speed, and the solver counts on none of that above the asked speed
        boolean onTheSafeSide = OF_FORCE.contains(limit.governedBy()) && limit.value() > asked;
        if (!onTheSafeSide) {
          RankedAssembly beyond = again(intents.atSpeedRpm(BEYOND * rpm + GRID * top), told);
          assertBroken(intents, told, limit, beyond);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void axialDepth(Intents intents) {
    double flute = Bench.ask(intents).job().tool().fluteLengthM() * MM;
    for (RankedAssembly told : shown(intents)) {
      Limit limit = told.limits().axialDepthM();
      String pointer = "/operation/axialDepthMm";
      sizeAndForce(intents, told, limit, pointer, limit.value() * MM, GRID * flute);
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void feedPerTooth(Intents intents) {
    double range = Bench.DATA.practice("feedRangePerDiameter") * MM;
    double diameter = Bench.ask(intents).job().tool().diameterM();
    Intents without = intents.without("/operation/feedPerRevMm");
    for (RankedAssembly told : shown(intents)) {
      Limit limit = told.limits().feedPerToothM();
      String pointer = "/operation/feedPerToothMm";
      sizeAndForce(without, told, limit, pointer, limit.value() * MM, GRID * range * diameter);
    }
  }

  private static void sizeAndForce(
      Intents intents, RankedAssembly told, Limit limit, String pointer, double most, double step) {
    if (!(most > 0) || Double.isInfinite(most)) {
      return;
    }
    RankedAssembly at = again(intents.with(pointer, SixDigits.roundDown(most)), told);
    assertMet(intents, told, limit, at, OF_FORCE);
    assertMet(intents, told, limit, at, Set.of("size-error", "roughness"));
    if (!fails(told, "gap")) {
      assertMet(intents, told, limit, at, Set.of("gap"));
    }
    if (!RANGES.contains(limit.governedBy())) {
      RankedAssembly beyond = again(intents.with(pointer, BEYOND * most + step), told);
      assertBroken(intents, told, limit, beyond);
    }
  }

  /**
   * The tool is made so long that the holder's deepest insertion leaves that stick-out, in the
   * steps in which stick-outs are set.
   */
  @ParameterizedTest
  @MethodSource("jobs")
  void stickOut(Intents intents) {
    for (RankedAssembly told : shown(intents)) {
      Limit limit = told.limits().stickOutM();
      double met = STEP_M * Math.floor(limit.value() / STEP_M + 1e-6);
      if (met > told.geometry().stickOutM() + STEP_M / 2) {
        RankedAssembly at = again(standingOut(intents, told, met), told);
        assertThat(at.geometry().stickOutM()).as("asked of %s", ref(told)).isCloseTo(met, NEAR);
        assertMet(intents, told, limit, at, Set.of("size-error", "runout", "gap"));
      }
      if (OF_LENGTH.contains(limit.governedBy()) && limit.value() > told.geometry().stickOutM()) {
        double broken = STEP_M * Math.ceil(BEYOND * limit.value() / STEP_M);
        assertBroken(intents, told, limit, again(standingOut(intents, told, broken), told));
      }
    }
  }

  private static Intents standingOut(Intents intents, RankedAssembly told, double stickOutM) {
    double overall = stickOutM + told.assembly().holder().maxInsertionM();
    return intents.with("/tool/overallLengthMm", overall * MM);
  }

  private static List<RankedAssembly> shown(Intents intents) {
    return Bench.ask(intents).assemblies().stream()
        .filter(a -> a.assembly().holder().origin() != HolderBody.Origin.REQUEST)
        .toList();
  }

  private static RankedAssembly again(Intents intents, RankedAssembly told) {
    return Bench.weigh(intents, told.assembly().holder());
  }

  private static void assertMet(
      Intents intents, RankedAssembly told, Limit limit, RankedAssembly at, Set<String> codes) {
    for (String code : codes) {
      assertThat(fails(at, code))
          .as("%s fails at %s of %s for %s", code, limit, ref(told), intents)
          .isFalse();
    }
  }

  private static void assertBroken(
      Intents intents, RankedAssembly told, Limit limit, RankedAssembly beyond) {
    String governor = RATINGS.contains(limit.governedBy()) ? "spindle-speed" : limit.governedBy();
    assertThat(fails(beyond, governor))
        .as("%s breaks beyond %s of %s for %s", governor, limit, ref(told), intents)
        .isTrue();
  }

  private static boolean fails(RankedAssembly assembly, String code) {
    return assembly.reasons().stream()
        .filter(reason -> reason.code().equals(code) || reason.code().equals(code + "-margin"))
        .anyMatch(LimitsHoldTest::exceeded);
  }

  private static boolean exceeded(Reason reason) {
    return reason.demand() > reason.capacity();
  }

  private static String ref(RankedAssembly assembly) {
    return assembly.assembly().holder().ref();
  }
}
