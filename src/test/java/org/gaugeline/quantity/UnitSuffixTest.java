package org.gaugeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitSuffixTest {
  /** Factors: NIST SP 811 (2008), appendix B; the rest by definition of the prefix. */
  @ParameterizedTest
  @CsvSource({
    "axialDepthMm, 18, 0.018",
    "runoutUm, 9, 9e-6",
    "kc11NPerMm2, 2500, 2.5e9",
    "kc11P05NPerMm2, 2000, 2e9",
    "youngGpa, 208, 2.08e11",
    "contactPressureMpa, 55, 5.5e7",
    "cuttingSpeedMPerMin, 120, 2",
    "spindleSpeedRpm, 9549.296585513721, 1000",
    "helixDeg, 180, 3.141592653589793",
    "tipComplianceUmPerN, 2, 2e-6",
    "radialNPerM, 5e7, 5e7",
    "rotationalNmPerRad, 1e6, 1e6",
    "torqueNm, 95, 95",
    "axialPullN, 1200, 1200",
    "powerKw, 22, 22000",
    "clampingForceKn, 18, 18000",
    "residualUnbalanceGmm, 7.5, 7.5e-6",
    "removalRateCm3PerMin, 60, 1e-6",
    "feedRateMmPerMin, 600, 0.01",
    "lifeMinutes, 60, 3600",
    "diameterIn, 1, 0.0254",
    "runoutTenths, 1, 2.54e-6",
    "raMicroinch, 63, 1.6002e-6",
    "cuttingSpeedFtPerMin, 400, 2.032",
    "forceLbf, 1, 4.4482216152605",
    "torqueLbfFt, 1, 1.3558179483314003",
    "massLb, 1, 0.45359237",
    "powerHp, 1, 745.6998715822702",
    "hardnessHb, 300, 300",
    "mc, 0.26, 0.26",
    "poisson, 0.3, 0.3",
    "feedPerDiameter, 0.006, 0.006",
    "balanceGrade, 2.5, 2.5"
  })
  void convertsByTheSuffixOfTheName(String name, double value, double si) {
    assertThat(UnitSuffix.toSi(name, value)).isCloseTo(si, within(1e-12 * si));
  }

  @ParameterizedTest
  @EnumSource(UnitSuffix.class)
  void findsItsOwnSuffixAndConvertsThereAndBack(UnitSuffix unit) {
    assertThat(UnitSuffix.findOf("any" + unit.suffix())).isSameAs(unit);
    assertThat(UnitSuffix.findOf("any1" + unit.suffix())).isSameAs(unit);
    assertThat(UnitSuffix.labelOf("any" + unit.suffix())).isNotBlank();
    long seed = 20_260_101L + unit.suffix().length();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      double value = Math.exp(random.nextDouble(-15, 15));
      assertThat(unit.fromSi(unit.toSi(value)))
          .as("seed %d, value %s", seed, value)
          .isCloseTo(value, within(1e-14 * value));
      assertThat(UnitSuffix.fromSi("any" + unit.suffix(), value)).isEqualTo(unit.fromSi(value));
    }
  }

  @Test
  void namesWithoutUnitStayAsTheyAre() {
    assertThat(UnitSuffix.findOf("mc")).isNull();
    assertThat(UnitSuffix.findOf("minimum")).isNull();
    assertThat(UnitSuffix.findOf("")).isNull();
    assertThat(UnitSuffix.labelOf("teeth")).isEmpty();
    assertThat(UnitSuffix.fromSi("teeth", 4)).isEqualTo(4);
  }
}
