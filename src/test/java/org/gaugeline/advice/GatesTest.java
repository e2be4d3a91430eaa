package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.gaugeline.assessment.Tone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits that are passed or not: whatever else is good, a broken one makes unsuitable. */
class GatesTest {
  private static final Intents GOOD =
      Intents.of("side-milling", "end-mill", 16, "EN AW-6082", "HSK-A63")
          .with("/operation/stage", "roughing")
          .with("/operation/axialDepthMm", 12)
          .with("/operation/radialDepthMm", 2)
          .with("/operation/feedPerToothMm", 0.08)
          .with("/operation/spindleSpeedRpm", 8000)
          .with("/preferences/stability", false);
  private static final HolderBody HOLDER = Bench.holder("HSK-A63", "shrink-fit", 16, 75, true);

  @Test
  void theJobIsGoodWithoutThem() {
    assertThat(Bench.weigh(GOOD, HOLDER).standing()).isEqualTo(Standing.SUITABLE);
  }

  @ParameterizedTest
  @CsvSource({
    "/machine/toolChanger/maxMassKg,      0.5, changer-mass",
    "/machine/toolChanger/maxLengthMm,    80,  changer-length",
    "/machine/toolChanger/maxMomentNm,    0.2, changer-moment",
    "/machine/toolChanger/maxDiameterNeighboursEmptyMm, 40, changer-diameter",
    "/machine/powerKw,                    0.2, spindle-power",
    "/machine/torqueNm,                   0.2, spindle-torque",
  })
  void aBrokenMachineLimitMakesUnsuitable(String pointer, double least, String code) {
    RankedAssembly assembly = Bench.weigh(GOOD.with(pointer, least), HOLDER);
    assertThat(reason(assembly, code)).isPresent();
    assertThat(assembly.standing()).isEqualTo(Standing.UNSUITABLE);
  }

  @Test
  void emptyNeighbourPocketsAreWorthKnowingAndNoMore() {
    RankedAssembly assembly =
        Bench.weigh(
            GOOD.with("/machine/toolChanger/maxDiameterMm", 40)
                .with("/machine/toolChanger/maxDiameterNeighboursEmptyMm", 90),
            HOLDER);
    assertThat(reason(assembly, "neighbour-pockets-empty").map(Reason::tone))
        .contains(Tone.NEUTRAL);
    assertThat(assembly.standing()).isEqualTo(Standing.SUITABLE);
  }

  @Test
  void coolantThroughTheToolNeedsAMachineThatHasIt() {
    Intents through = GOOD.with("/operation/coolant", "through-tool");
    RankedAssembly without = Bench.weigh(through.with("/machine/throughCoolant", false), HOLDER);
    RankedAssembly with = Bench.weigh(through.with("/machine/throughCoolant", true), HOLDER);
    assertThat(reason(without, "coolant-machine")).isPresent();
    assertThat(without.standing()).isEqualTo(Standing.UNSUITABLE);
    assertThat(with.standing()).isEqualTo(Standing.SUITABLE);
  }

  /** Bending of the interface: a note above the onset of opening, a warning above 1.5 times it. */
  @ParameterizedTest
  @ValueSource(doubles = {40, 20, 10, 5, 3, 2, 1.5, 1, 0.7, 0.5, 0.3, 0.2})
  void interfaceBendingIsJudgedByTheOnsetOfOpening(double clampingForceKn) {
    RankedAssembly assembly =
        Bench.weigh(GOOD.with("/machine/clampingForceKn", clampingForceKn), HOLDER);
    Optional<Reason> reason = reason(assembly, "interface-bending");
    Optional<Tone> tone = reason.map(Reason::tone);
    double use = assembly.predicted().bendingMomentUse();
    reason.ifPresent(
        said -> assertThat(said.demand() / said.capacity()).isEqualTo(use, within(1e-9 * use)));
    if (use <= 1) {
      assertThat(tone).as("use %.3f", use).isEmpty();
    } else {
      assertThat(tone).as("use %.3f", use).contains(use <= 1.5 ? Tone.NEUTRAL : Tone.AGAINST);
    }
  }

  @Test
  void weakClampingOpensTheInterface() {
    RankedAssembly open = Bench.weigh(GOOD.with("/machine/clampingForceKn", 0.1), HOLDER);
    assertThat(open.predicted().bendingMomentUse()).isGreaterThan(1.5);
    assertThat(open.standing()).isEqualTo(Standing.UNSUITABLE);
  }

  private static Optional<Reason> reason(RankedAssembly assembly, String code) {
    return assembly.reasons().stream().filter(r -> r.code().equals(code)).findFirst();
  }
}
