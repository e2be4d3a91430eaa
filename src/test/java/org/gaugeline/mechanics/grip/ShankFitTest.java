package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShankFitTest {
  /** IT5 of the bore and IT6 of the shank from ISO 286-1; clearances of H5/h6. */
  @ParameterizedTest
  @CsvSource({
    "6, 5, 8, 13, 6.5",
    "10, 6, 9, 15, 7.5",
    "12, 8, 11, 19, 9.5",
    "20, 9, 13, 22, 11",
    "25, 9, 13, 22, 11",
    "32, 11, 16, 27, 13.5"
  })
  void sideLockRunsOutByItsClearance(
      double diameterMm, double it5Um, double it6Um, double worstUm, double meanUm) {
    ShankFit fit = ShankFit.boreHShankH(it5Um * 1e-6, it6Um * 1e-6);
    assertThat(fit.minimumClearanceM()).isZero();
    assertThat(ShankFit.sideLockTirM(fit.maximumClearanceM()))
        .as("diameter %s mm", diameterMm)
        .isCloseTo(worstUm * 1e-6, within(1e-12));
    assertThat(ShankFit.sideLockTirM(fit.meanClearanceM()))
        .as("diameter %s mm", diameterMm)
        .isCloseTo(meanUm * 1e-6, within(1e-12));
    assertThat(ShankFit.sideLockEccentricityM(fit.meanClearanceM()))
        .isCloseTo(meanUm * 0.5e-6, within(1e-12));
  }

  @Test
  void hydraulicSleeveHoldsTheSmallestShankLeast() {
    ShankFit fit = ShankFit.boreHShankH(9e-6, 13e-6);
    HydraulicGrip grip = new HydraulicGrip(80e6, 1e12);
    assertThat(grip.pressurePa(fit.maximumClearanceM(), 1)).isCloseTo(58e6, within(1.0));
    assertThat(grip.pressurePa(fit.maximumClearanceM(), 1))
        .isLessThan(grip.pressurePa(fit.minimumClearanceM(), 1));
    assertThat(grip.pressurePa(fit.maximumClearanceM(), 0.8)).isCloseTo(46.4e6, within(1.0));
    assertThat(grip.pressurePa(100e-6, 1)).isZero();
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new ShankFit(2e-6, 1e-6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("maximumClearanceM");
    assertThatThrownBy(() -> new HydraulicGrip(80e6, 1e12).pressurePa(0, 1.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("warmFactor is 1.1");
  }
}
