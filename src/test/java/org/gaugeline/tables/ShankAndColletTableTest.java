package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShankAndColletTableTest {
  private static final ReferenceData DATA = ReferenceTables.load();

  /** DIN 6535:1992, shank length l1 (HA). */
  @ParameterizedTest
  @CsvSource({
    "3, 28", "4, 28", "5, 28", "6, 36", "8, 36", "10, 40", "12, 45", "14, 45", "16, 48", "18, 48",
    "20, 50", "25, 56", "32, 60"
  })
  void shankLengths(String id, double lengthMm) {
    assertThat(shank(id).lengthM()).isCloseTo(lengthMm * 1e-3, within(1e-12));
  }

  /** DIN 6535:1992 HB: flat width, position, height, number of flats. */
  @ParameterizedTest
  @CsvSource({
    "6, 4.2, 18, 5.1, 1",
    "8, 5.5, 18, 6.9, 1",
    "10, 7, 20, 8.5, 1",
    "20, 11, 25, 18.2, 1",
    "25, 12, 32, 23, 2",
    "32, 14, 36, 30, 2"
  })
  void flats(String id, double widthMm, double positionMm, double heightMm, int flats) {
    ShankSize shank = shank(id);
    assertThat(shank.flatWidthM()).isCloseTo(widthMm * 1e-3, within(1e-12));
    assertThat(shank.flatPositionM()).isCloseTo(positionMm * 1e-3, within(1e-12));
    assertThat(shank.flatHeightM()).isCloseTo(heightMm * 1e-3, within(1e-12));
    assertThat(shank.flats()).isEqualTo(flats);
  }

  /** Common practice: shank length less 10 mm of axial setting for shrink and hydraulic holders. */
  @ParameterizedTest
  @CsvSource({"6, 26", "8, 26", "10, 30", "12, 35", "16, 38", "20, 40", "25, 46", "32, 50"})
  void leastInsertionLeavesTenMillimetresOfSetting(String id, double insertionMm) {
    assertThat(shank(id).minInsertionM()).isCloseTo(insertionMm * 1e-3, within(1e-12));
  }

  @Test
  void inchShanksAreInchesAndEveryFlatLiesInsideItsShank() {
    assertThat(shank("1/2 in").diameterM()).isCloseTo(0.0127, within(1e-9));
    assertThat(shank("1 1/4 in").diameterM()).isCloseTo(0.03175, within(1e-9));
    assertThat(DATA.shankSizes())
        .hasSizeGreaterThanOrEqualTo(24)
        .allSatisfy(
            s -> {
              assertThat(s.minInsertionM()).isLessThan(s.lengthM());
              if (s.flats() > 0) {
                assertThat(s.flatHeightM()).isBetween(0.8 * s.diameterM(), s.diameterM());
                assertThat(s.flatPositionM()).isLessThan(s.lengthM());
                assertThat(s.screwDiameterM()).isGreaterThan(0);
              }
            });
  }

  /**
   * DIN 1835-1, recalled: high-speed steel shanks have the lengths and flat widths of DIN 6535;
   * from 12 mm on the flats are the same, below they are up to 0.3 mm deeper, so that a screw that
   * meets a tabled flat meets theirs.
   */
  @ParameterizedTest
  @CsvSource({
    "6, 36, 4.2, 4.8", "8, 36, 5.5, 6.6", "10, 40, 7, 8.4", "12, 45, 8, 10.4",
    "16, 48, 10, 14.2", "20, 50, 11, 18.2", "25, 56, 12, 23", "32, 60, 14, 30"
  })
  void highSpeedSteelShanksFitTheTable(
      String id, double lengthMm, double flatWidthMm, double flatHeightMm) {
    ShankSize size =
        DATA.shankSizes().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    assertThat(size.lengthM() * 1e3).isCloseTo(lengthMm, within(1e-9));
    assertThat(size.flatWidthM() * 1e3).isCloseTo(flatWidthMm, within(1e-9));
    double deeper = size.flatHeightM() * 1e3 - flatHeightMm;
    assertThat(deeper).isBetween(-1e-9, size.diameterM() < 0.012 ? 0.3 + 1e-9 : 1e-9);
  }

  /** ISO 15488:2003 table 2: thread of the nut. */
  @ParameterizedTest
  @CsvSource({
    "ER11, 14, 0.75",
    "ER16, 22, 1.5",
    "ER20, 25, 1.5",
    "ER25, 32, 1.5",
    "ER32, 40, 1.5",
    "ER40, 50, 1.5"
  })
  void nutThreads(String id, double diameterMm, double pitchMm) {
    ColletSize collet = collet(id);
    assertThat(collet.nutThreadDiameterM()).isCloseTo(diameterMm * 1e-3, within(1e-12));
    assertThat(collet.nutThreadPitchM()).isCloseTo(pitchMm * 1e-3, within(1e-12));
    assertThat(collet.nutDiameterM()).isGreaterThan(collet.nutThreadDiameterM());
    assertThat(collet.maxBoreM()).isLessThan(collet.nutThreadDiameterM());
  }

  /** Without a torque wrench a nut reaches 0.6 of its torque (common practice). */
  @Test
  void nutTorqueReachesDownToTighteningByFeel() {
    assertThat(collet("ER32").nutTorqueNm().median()).isEqualTo(115);
    assertThat(collet("ER32").nutTorqueNm().p05()).isCloseTo(0.6 * 115, within(1e-9));
  }

  private static ShankSize shank(String id) {
    return DATA.shankSizes().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  private static ColletSize collet(String id) {
    return Objects.requireNonNull(DATA.colletSizes().get(id), id);
  }
}
