package org.gaugeline.mechanics.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunoutEffectsTest {
  /** Common practice: 4 % of life per µm, never below a fifth, for tools below 19 mm. */
  private static final ToolLifeLoss RULE = new ToolLifeLoss(0.04e6, 0.2, 0.019);

  /**
   * Published test (Cutting Tool Engineering, July 2010), 3 mm carbide drill in 1055 steel: 148
   * holes at 2 µm, 125 at 5 µm, so 84.5 % are left. The rule of thumb leaves 87.0 %: 3 % more than
   * measured.
   */
  @Test
  void ruleComesWithinThreePercentOfTheMeasuredLife() {
    double measured = 125.0 / 148.0;
    double rule = RULE.lifeFactor(5e-6, 0.003) / RULE.lifeFactor(2e-6, 0.003);
    assertThat(rule).isCloseTo(measured, withinPercentage(3.1)).isGreaterThan(measured);
  }

  /** Common practice: a ten-thousandth of an inch costs about a tenth of the life. */
  @Test
  void tenThousandthOfAnInchCostsATenth() {
    assertThat(RULE.lifeFactor(2.54e-6, 0.010)).isCloseTo(0.9, within(0.005));
  }

  @Test
  void lifeHasAFloorAndLargeToolsAreSpared() {
    assertThat(RULE.lifeFactor(50e-6, 0.010)).isEqualTo(0.2);
    assertThat(RULE.lifeFactor(13e-6, 0.019)).isEqualTo(1);
    assertThat(RULE.lifeFactor(0, 0.003)).isEqualTo(1);
  }

  /** Geometry of an offset cutter: TIR, 0.87, 0.71 and 0.50 TIR for 2, 3, 4 and 6 teeth. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 1", "3, 0.87", "4, 0.71", "6, 0.50"})
  void extraChipLoad(int toothCount, double share) {
    assertThat(RunoutEffects.extraChipLoadM(10e-6, toothCount) / 10e-6)
        .isCloseTo(share, within(0.005));
  }

  /** The largest step between the radii of neighbouring teeth, found by turning the offset. */
  @Test
  void extraChipLoadIsTheLargestRadiusStep() {
    for (int z = 2; z <= 8; z++) {
      double largest = 0;
      for (int k = 0; k < 3600; k++) {
        double phase = Math.PI * k / 1800;
        double step = 5e-6 * (Math.cos(phase) - Math.cos(phase + 2 * Math.PI / z));
        largest = Math.max(largest, step);
      }
      assertThat(RunoutEffects.extraChipLoadM(10e-6, z))
          .as("%s teeth", z)
          .isCloseTo(largest, withinPercentage(0.001));
    }
  }

  @Test
  void toothRunsIdleWhenRunoutExceedsItsFeed() {
    assertThat(RunoutEffects.leavesToothIdle(20e-6, 2, 19e-6)).isTrue();
    assertThat(RunoutEffects.leavesToothIdle(20e-6, 4, 19e-6)).isFalse();
    assertThat(RunoutEffects.leavesToothIdle(49e-6, 2, 50e-6)).isFalse();
    assertThat(RunoutEffects.leavesToothIdle(51e-6, 2, 50e-6)).isTrue();
    assertThat(RunoutEffects.leavesToothIdle(60e-6, 4, 50e-6)).isFalse();
    assertThat(RunoutEffects.leavesToothIdle(1, 1, 50e-6)).isFalse();
  }

  @Test
  void peakForceGrowsLessThanTheChip() {
    assertThat(RunoutEffects.peakForceFactor(0, 50e-6, 0.25)).isEqualTo(1);
    assertThat(RunoutEffects.peakForceFactor(50e-6, 50e-6, 0.25))
        .isCloseTo(Math.pow(2, 0.75), within(1e-12));
    assertThat(RunoutEffects.peakForceFactor(50e-6, 50e-6, 0)).isEqualTo(2);
    assertThat(RunoutEffects.peakForceFactor(20e-6, 50e-6, 0)).isCloseTo(1.4, within(1e-12));
  }

  /**
   * Parabola for the arc: 0.2 mm on a 10 mm cutter leaves 1 µm; one tooth of four, 16 times that.
   */
  @Test
  void sideMilledWall() {
    assertThat(RunoutEffects.sideMilledCuspM(0.2e-3, 0.010)).isCloseTo(1e-6, within(1e-15));
    assertThat(RunoutEffects.sideMilledCuspM(0.8e-3, 0.010)).isCloseTo(16e-6, within(1e-15));
  }

  /** The cusp is the sagitta of the arc for feeds well below the diameter. */
  @Test
  void cuspIsTheSagittaOfTheArc() {
    double radiusM = 0.0004;
    double feedM = 0.0001;
    double sagittaM = radiusM - Math.sqrt(radiusM * radiusM - feedM * feedM / 4);
    assertThat(RunoutEffects.turnedCuspM(feedM, radiusM)).isCloseTo(sagittaM, withinPercentage(1));
  }

  /** Turned surface by the usual shop formula Ra = f²/(31.2·rε). */
  @Test
  void turnedRoughness() {
    double feedM = 0.1e-3;
    double noseM = 0.4e-3;
    double expected = feedM * feedM / (31.2 * noseM);
    assertThat(RunoutEffects.meanRoughnessM(RunoutEffects.turnedCuspM(feedM, noseM)))
        .isCloseTo(expected, withinPercentage(0.1));
  }

  /** Mean deviation of one parabolic cusp from its mean line, summed numerically. */
  @Test
  void meanRoughnessOfAParabola() {
    int points = 100_000;
    double sum = 0;
    for (int i = 0; i < points; i++) {
      double x = (i + 0.5) / points;
      sum += Math.abs(x * x - 1.0 / 3);
    }
    assertThat(RunoutEffects.meanRoughnessM(1)).isCloseTo(sum / points, within(1e-8));
  }

  @Test
  void holeGrowsByTheRunoutAtMost() {
    assertThat(RunoutEffects.holeDiameterBoundM(0.008, 20e-6)).isCloseTo(8.02e-3, within(1e-15));
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> RunoutEffects.extraChipLoadM(1e-6, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("toothCount is 0.0");
    assertThatThrownBy(() -> RunoutEffects.extraChipLoadM(-1e-6, 4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("tirM is -1.0E-6");
    assertThatThrownBy(() -> RunoutEffects.peakForceFactor(0, 50e-6, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("chipThicknessExponent is 1.0");
    assertThatThrownBy(() -> new ToolLifeLoss(1, 1.2, 0.019))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("floor is 1.2");
  }
}
