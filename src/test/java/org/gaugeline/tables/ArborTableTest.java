package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.gaugeline.mechanics.grip.ClampingScrews;
import org.gaugeline.mechanics.grip.NutThread;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.ReferenceData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArborTableTest {
  private static final ReferenceData DATA = ReferenceTables.load();

  /** ISO 6462, recalled: bores of shell mills by cutter diameter. */
  @ParameterizedTest
  @CsvSource({
    "40, 16", "50, 22", "63, 22", "80, 27", "100, 32", "125, 40", "160, 40", "180, 50", "200, 60",
    "315, 60"
  })
  void shellMillsHaveTheBoreOfTheStandard(double cutterMm, double boreMm) {
    assertThat(DATA.arborOfCutter(cutterMm / 1e3).boreM() * 1e3).isCloseTo(boreMm, within(1e-9));
  }

  /** ISO 240, recalled: width of the drive slot and of the keyway by bore. */
  @ParameterizedTest
  @CsvSource({"16, 8, 4", "22, 10, 6", "27, 12, 7", "32, 14, 8", "40, 16, 10", "50, 18, 12"})
  void slotsHaveTheWidthOfTheStandard(double boreMm, double tenonMm, double keyMm) {
    ArborSize size = arbor(boreMm, 0);
    assertThat(size.tenonWidthM() * 1e3).isCloseTo(tenonMm, within(1e-9));
    assertThat(size.keyWidthM() * 1e3).isCloseTo(keyMm, within(1e-9));
  }

  /**
   * VDI 2230, recalled: class 8.8 at a friction of 0.12 is tightened to 24.6, 48, 84, 206, 415, 711
   * N·m for M8, M10, M12, M16, M20, M24, and then presses with 17, 28, 41, 77, 121, 175 kN.
   */
  @ParameterizedTest
  @CsvSource({"16, 17.2", "22, 27.3", "27, 39.9", "32, 75.3", "40, 121", "50, 175"})
  void screwsPressAsTheGuidelineSays(double boreMm, double preloadKn) {
    ArborSize size = arbor(boreMm, 0);
    NutThread thread =
        NutThread.metric(
            size.screwDiameterM(),
            size.screwPitchM(),
            DATA.practice("screwHeadBearingRatio") * size.screwDiameterM());
    double preload =
        new ClampingScrews(thread, size.screws()).preloadN(size.screwTorqueNm().median(), 0.12);
    assertThat(preload / 1e3).isCloseTo(preloadKn, within(0.1 * preloadKn));
  }

  /** ISO 6462 and DIN 6357, recalled: length of the pilot and thread of the screw in its middle. */
  @ParameterizedTest
  @CsvSource({"16, 17, 8", "22, 19, 10", "27, 21, 12", "32, 24, 16", "40, 27, 20", "50, 30, 24"})
  void pilotsAndScrewsAreThoseOfTheStandard(double boreMm, double pilotMm, double screwMm) {
    ArborSize size = arbor(boreMm, 0);
    assertThat(size.pilotLengthM() * 1e3).isCloseTo(pilotMm, within(1e-9));
    assertThat(size.screwDiameterM() * 1e3).isCloseTo(screwMm, within(1e-9));
    assertThat(size.screws()).isEqualTo(1);
  }

  /** ISO 6462 style C and ISO 2937, recalled: bolt circles 66.7 and 101.6 mm, M12 and M16. */
  @ParameterizedTest
  @CsvSource({"40, 160, 66.7, 12", "60, 250, 101.6, 16"})
  void boltCirclesAreThoseOfTheStandard(
      double boreMm, double cutterMm, double circleMm, double screwMm) {
    ArborSize size = arbor(boreMm, cutterMm);
    assertThat(size.boltCircleM() * 1e3).isCloseTo(circleMm, within(1e-9));
    assertThat(size.screwDiameterM() * 1e3).isCloseTo(screwMm, within(1e-9));
  }

  @Test
  void bigCuttersStandOnABoltCircle() {
    assertThat(arbor(40, 125).boltCircleM()).isZero();
    assertThat(arbor(40, 160).screws()).isEqualTo(4);
    assertThat(arbor(60, 250).boltCircleM()).isCloseTo(0.1016, within(1e-9));
    assertThat(DATA.arborOfBore(0.019, 0.063)).isNull();
  }

  @Test
  void facesStandAroundTheirBoresAndGrowWithThem() {
    double last = 0;
    for (ArborSize size : DATA.arborSizes()) {
      assertThat(size.faceDiameterM())
          .as(size.id())
          .isGreaterThanOrEqualTo(1.8 * size.boreM() - 1e-9);
      assertThat(size.boltCircleM()).as(size.id()).isLessThan(size.faceDiameterM());
      assertThat(size.maxCutterM()).as(size.id()).isGreaterThan(last);
      last = size.maxCutterM();
    }
  }

  private static ArborSize arbor(double boreMm, double cutterMm) {
    return Objects.requireNonNull(DATA.arborOfBore(boreMm / 1e3, cutterMm / 1e3));
  }
}
