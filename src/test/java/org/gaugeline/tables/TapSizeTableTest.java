package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.TapSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapSizeTableTest {
  private static final ReferenceData DATA = ReferenceTables.load();

  /** ISO 261/262 coarse pitches, as every thread chart prints them. */
  @ParameterizedTest
  @CsvSource({
    "1.6, 0.35", "2, 0.4", "2.5, 0.45", "3, 0.5", "4, 0.7", "5, 0.8", "6, 1", "8, 1.25",
    "10, 1.5", "12, 1.75", "14, 2", "16, 2", "18, 2.5", "20, 2.5", "22, 2.5", "24, 3",
    "27, 3", "30, 3.5", "33, 3.5", "36, 4"
  })
  void coarsePitches(double diameterMm, double pitchMm) {
    assertThat(tap(diameterMm).pitchM() * 1e3).isCloseTo(pitchMm, within(1e-9));
  }

  /** DIN 371 up to M10, DIN 376 from M12 (recalled). */
  @ParameterizedTest
  @CsvSource({
    "3, 3.5, 2.7, 6, 56",
    "6, 6, 4.9, 8, 80",
    "8, 8, 6.2, 9, 90",
    "10, 10, 8, 11, 100",
    "12, 9, 7, 10, 110",
    "16, 12, 9, 12, 110"
  })
  void shankAndSquareOfMachineTaps(
      double diameterMm, double shankMm, double squareMm, double squareLengthMm, double lengthMm) {
    TapSize tap = tap(diameterMm);
    assertThat(tap.shankDiameterM() * 1e3).isCloseTo(shankMm, within(1e-9));
    assertThat(tap.squareM() * 1e3).isCloseTo(squareMm, within(1e-9));
    assertThat(tap.squareLengthM() * 1e3).isCloseTo(squareLengthMm, within(1e-9));
    assertThat(tap.overallLengthM() * 1e3).isCloseTo(lengthMm, within(1e-9));
  }

  /** A square must stand inside its shank and still leave corners to it. */
  @Test
  void everySquareFitsItsShank() {
    assertThat(DATA.tapSizes())
        .allSatisfy(
            tap -> {
              assertThat(tap.squareM()).isLessThan(tap.shankDiameterM());
              assertThat(tap.squareM() * Math.sqrt(2)).isGreaterThan(tap.shankDiameterM());
            });
  }

  /** One shank has one square (DIN 10): the same socket takes all taps with that shank. */
  @Test
  void equalShanksHaveEqualSquares() {
    for (TapSize one : DATA.tapSizes()) {
      for (TapSize other : DATA.tapSizes()) {
        if (one.shankDiameterM() == other.shankDiameterM()) {
          assertThat(one.squareM()).as("%s, %s", one.id(), other.id()).isEqualTo(other.squareM());
          assertThat(one.squareLengthM())
              .as("%s, %s", one.id(), other.id())
              .isEqualTo(other.squareLengthM());
        }
      }
    }
  }

  private static TapSize tap(double diameterMm) {
    return Objects.requireNonNull(DATA.tapSize(diameterMm * 1e-3));
  }
}
