package org.gaugeline.mechanics.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

class ToleranceGradeTest {
  /**
   * The rounded table of ISO 286-1 (source of each row in the file) against the unrounded formula:
   * within 6 % or 0.7 µm above 3 mm, within 16 % in the first step, where the table is rounded
   * coarsely.
   */
  @Test
  void formulaFollowsTheTable() throws IOException {
    JsonNode table = table();
    int checked = 0;
    for (JsonNode row : table.get("rows")) {
      boolean first = row.get("overMm").asDouble() == 0;
      double lowerMm =
          first ? table.get("lowerLimitOfFirstStepMm").asDouble() : row.get("overMm").asDouble();
      double upperMm = row.get("upToMm").asDouble();
      for (int column = 0; column < table.get("grades").size(); column++) {
        int number = table.get("grades").get(column).asInt();
        if (number < 5) {
          continue;
        }
        ToleranceGrade grade = ToleranceGrade.valueOf("IT" + number);
        double printedM = row.get("widthsUm").get(column).asDouble() * 1e-6;
        double allowedM = Math.max(0.7e-6, (first ? 0.16 : 0.06) * printedM);
        assertThat(grade.widthM(lowerMm * 1e-3, upperMm * 1e-3))
            .as("%s, over %s up to %s mm", grade, lowerMm, upperMm)
            .isCloseTo(printedM, within(allowedM));
        checked++;
      }
    }
    assertThat(checked).isEqualTo(13 * 8);
  }

  /** IT7 from 18 to 30 mm is 21 µm (ISO 286-1); the formula gives 20.92 µm. */
  @Test
  void oneStepByHand() {
    assertThat(ToleranceGrade.IT7.widthM(0.018, 0.030)).isCloseTo(20.92e-6, within(0.01e-6));
  }

  @Test
  void sizesBeyondTheFormulaAreRejected() {
    assertThatThrownBy(() -> ToleranceGrade.toleranceUnitM(0.6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("meanDiameterM is 0.6");
    assertThatThrownBy(() -> ToleranceGrade.IT6.widthM(0.03, 0.018))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static JsonNode table() throws IOException {
    try (InputStream in =
        ToleranceGradeTest.class.getResourceAsStream("/reference/iso286-it.json")) {
      return new ObjectMapper().readTree(in);
    }
  }
}
