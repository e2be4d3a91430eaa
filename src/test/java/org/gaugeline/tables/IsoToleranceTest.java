package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.gaugeline.reference.ToleranceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsoToleranceTest {
  private static final ToleranceTable TABLE = ReferenceTables.load().itToleranceM();

  /** ISO 286-1: multiples of the tolerance unit i for IT5 … IT12. */
  private static final int[] UNITS = {7, 10, 16, 25, 40, 64, 100, 160};

  /**
   * ISO 286-1: i = 0.45·∛D + 0.001·D, D the geometric mean of the step; tables are rounded. The
   * printed values up to 3 mm stand above the formula and are left to the check by value.
   */
  @Test
  void agreesWithTheFormulaOfTheStandard() {
    double lower = 1;
    for (double limitM : TABLE.upperLimitM()) {
      double upper = limitM * 1e3;
      double mean = Math.sqrt(lower * upper);
      double unitUm = 0.45 * Math.cbrt(mean) + 0.001 * mean;
      for (int grade = 5; lower > 1 && grade <= 12; grade++) {
        double formulaUm = UNITS[grade - 5] * unitUm;
        assertThat(TABLE.bandM(limitM, grade) * 1e6)
            .as("IT%d up to %s mm", grade, upper)
            .isCloseTo(formulaUm, within(Math.max(0.7, 0.055 * formulaUm)));
      }
      lower = upper;
    }
  }

  /** ISO 286-1 as printed. */
  @ParameterizedTest
  @CsvSource({"12, 6, 11", "30, 9, 52", "30.001, 9, 62", "6, 5, 5", "500, 12, 630", "1, 3, 2"})
  void printedValues(double nominalMm, int grade, double bandUm) {
    assertThat(TABLE.bandM(nominalMm * 1e-3, grade)).isCloseTo(bandUm * 1e-6, within(1e-12));
  }

  @Test
  void growsWithGradeAndSize() {
    for (int step = 0; step < TABLE.bandM().length; step++) {
      for (int g = 1; g < 10; g++) {
        assertThat(TABLE.bandM()[step][g]).isGreaterThan(TABLE.bandM()[step][g - 1]);
      }
      for (int g = 0; step > 0 && g < 10; g++) {
        assertThat(TABLE.bandM()[step][g]).isGreaterThanOrEqualTo(TABLE.bandM()[step - 1][g]);
      }
    }
  }

  @Test
  void refusesWhatTheTableDoesNotHold() {
    assertThatThrownBy(() -> TABLE.bandM(0.6, 7)).hasMessageContaining("0.5 m");
    assertThatThrownBy(() -> TABLE.bandM(0.03, 13)).hasMessageContaining("3 … 12");
  }
}
