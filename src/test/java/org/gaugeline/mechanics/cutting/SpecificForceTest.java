package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class SpecificForceTest {
  private static final double MM = 1e-3;
  private static final double FEED_EXPONENT = ThinChipRoute.HANDBOOK_FEED_EXPONENT;

  @Test
  void followsKienzleInTheCalibratedRange() {
    // Kienzle constants of 42CrMo4: Wikipedia "Spezifische Schnittkraft"; 2500·0.3^-0.26 = 3419.
    SpecificForce force = withHandbook(1.0);
    assertThat(force.specificForcePa(0.3 * MM) / 1e6).isCloseTo(3419, within(1.0));
    assertThat(force.specificForcePa(1 * MM) / 1e6).isCloseTo(2500, within(1e-6));
  }

  @Test
  void feedFactorOfTheHandbookIsReproduced() {
    // Machinery's Handbook 31st ed. p. 1147 (memory): C = 1.0, 1.25, 1.40 at 0.30, 0.10, 0.05 mm.
    assertThat(feedFactor(0.30)).isCloseTo(1.0, Percentage.withPercentage(1.5));
    assertThat(feedFactor(0.10)).isCloseTo(1.25, Percentage.withPercentage(1.5));
    assertThat(feedFactor(0.05)).isCloseTo(1.40, Percentage.withPercentage(1.5));
  }

  @Test
  void thinChipLiesBetweenThePowerConstantAndThePowerLaw() {
    // 42CrMo4 at 0.04 mm. Power law 2500·0.04^-0.26·K; Machinery's Handbook 31st ed. p. 1147 gives
    // Kp 2.38 at 280-300 HB, times C about 1.4 and W 1.1 for end milling: about 3700.
    double kc = withHandbook(1.2).specificForcePa(0.04 * MM) / 1e6;
    double powerLaw = 2500 * Math.pow(0.04, -0.26) * 1.2;
    double handbook = 2380 * 1.1 * Math.pow(0.30 / 0.04, FEED_EXPONENT);
    assertThat(powerLaw).isBetween(5900.0, 7000.0);
    assertThat(handbook).isCloseTo(3700, Percentage.withPercentage(6));
    assertThat(kc).isBetween(handbook, powerLaw);
    assertThat(kc).isCloseTo(Math.sqrt(powerLaw * handbook), Percentage.withPercentage(1e-9));
  }

  @Test
  void anchoredRouteStartsFromTheKienzleValue() {
    SpecificForce force =
        new SpecificForce(1400e6, 0.22, 1.2, 0.1 * MM, new ThinChipRoute.Anchored(FEED_EXPONENT));
    double atCalibrated = force.specificForcePa(0.1 * MM);
    double exponent = (0.22 + FEED_EXPONENT) / 2;
    assertThat(force.specificForcePa(0.02 * MM))
        .isCloseTo(atCalibrated * Math.pow(5, exponent), Percentage.withPercentage(1e-9));
  }

  @Test
  void callersOwnConstantsAreKeptEverywhere() {
    SpecificForce force = SampleCuts.powerLaw(2000, 0.25, 1);
    assertThat(force.specificForcePa(0.001 * MM) / 1e6)
        .isCloseTo(2000 * Math.pow(0.001, -0.25), Percentage.withPercentage(1e-9));
  }

  @Test
  void forceVanishesWithTheChip() {
    assertThat(withHandbook(1.2).forcePerWidthNPerM(0)).isZero();
    assertThat(withHandbook(1.2).forcePerWidthNPerM(1e-12)).isBetween(0.0, 10.0);
  }

  @Test
  void forceRisesContinuouslyWithChipThickness() {
    long seed = 71L;
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 300; n++) {
      SpecificForce force = SampleCuts.force(random);
      double before = force.forcePerWidthNPerM(1e-7);
      for (double h = 1e-7 * 1.01; h < 1e-3; h *= 1.01) {
        double now = force.forcePerWidthNPerM(h);
        // A rise of 1 % in h can change a continuous force of bounded slope by a few per cent only.
        assertThat(now / before).as("seed %d cut %d h %s", seed, n, h).isBetween(1.0, 1.03);
        before = now;
      }
    }
  }

  @Test
  void refusesARouteThatWouldMakeThinChipsHarder() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new SpecificForce(
                    500e6, 0.25, 1, 0.1 * MM, new ThinChipRoute.Handbook(9000e6, 0.195, 1)))
        .withMessageContaining("thinChips");
  }

  @Test
  void namesTheQuantityOutOfRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SampleCuts.powerLaw(-5, 0.2, 1))
        .withMessageContaining("kc11Pa")
        .withMessageContaining("above 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SampleCuts.powerLaw(2000, 1.2, 1))
        .withMessageContaining("mc is 1.2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SampleCuts.powerLaw(2000, 0.2, 1).specificForcePa(Double.NaN))
        .withMessageContaining("chipThicknessM");
  }

  private static SpecificForce withHandbook(double correction) {
    return new SpecificForce(
        2500e6, 0.26, correction, 0.1 * MM, new ThinChipRoute.Handbook(2380e6, FEED_EXPONENT, 1.1));
  }

  private static double feedFactor(double chipMm) {
    return Math.pow(ThinChipRoute.HANDBOOK_REFERENCE_M / (chipMm * MM), FEED_EXPONENT);
  }
}
