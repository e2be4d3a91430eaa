package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ForceCorrectionsTest {
  @Test
  void oneDegreeOfRakeIsOnePerCent() {
    // Tabellenbuch Zerspantechnik, 5th ed. 2022: 1 % per degree against the reference rake.
    double reference = Math.toRadians(6);
    assertThat(ForceCorrections.rake(reference, reference)).isEqualTo(1);
    assertThat(ForceCorrections.rake(Math.toRadians(12), reference)).isCloseTo(0.94, within(1e-12));
    assertThat(ForceCorrections.rake(Math.toRadians(-4), reference)).isCloseTo(1.10, within(1e-12));
  }

  @Test
  void speedFactorIsOneAtHundredMetresPerMinuteFromBothSides() {
    // Paucksch et al., Zerspantechnik (memory): both branches meet at 100 m/min.
    assertThat(ForceCorrections.speed(99.999 / 60)).isCloseTo(1, within(2e-3));
    assertThat(ForceCorrections.speed(100.0 / 60)).isCloseTo(1, within(2e-3));
    assertThat(ForceCorrections.speed(30.0 / 60)).isCloseTo(1.202, within(2e-3));
    assertThat(ForceCorrections.speed(300.0 / 60)).isCloseTo(0.926, within(2e-3));
  }

  @Test
  void speedFactorHasTheRecalledForm() {
    // Paucksch et al., Zerspantechnik (memory): 2.023/vc^0.153 below, 1.380/vc^0.07 above 100
    // m/min.
    assertThat(ForceCorrections.speed(25.0 / 60))
        .isCloseTo(2.023 / Math.pow(25, 0.153), within(1e-3));
    assertThat(ForceCorrections.speed(400.0 / 60))
        .isCloseTo(1.380 / Math.pow(400, 0.07), within(1e-3));
  }

  @Test
  void refusesStandstill() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ForceCorrections.speed(0))
        .withMessageContaining("cuttingSpeedMPerS is 0.0");
  }
}
