package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShrinkFitTest {
  /** Handbook values from memory. */
  private static final ElasticMaterial STEEL = new ElasticMaterial(210e9, 0.30, 7850, 11.5e-6);

  /** Handbook values from memory. */
  private static final ElasticMaterial CARBIDE = new ElasticMaterial(600e9, 0.22, 14500, 5.5e-6);

  private static final ShrinkFit D20 = new ShrinkFit(0.020, 0.034, STEEL, CARBIDE);

  /**
   * Default example of a published press-fit calculation: d 50, D 80, δ 0.040 mm, both 200 GPa, μ·L
   * = 6.0 mm gives 48.75 MPa, 45.95 kN, 1149 N·m, hoop 111.3 MPa.
   */
  @Test
  void publishedPressFit() {
    ElasticMaterial steel = new ElasticMaterial(200e9, 0.3, 7850, 12e-6);
    ShrinkFit fit = new ShrinkFit(0.050, 0.080, steel, steel);
    double pressurePa = fit.pressurePa(40e-6);
    FrictionGrip grip = FrictionGrip.ofPressure(0.12, pressurePa, 0.050, 0.050);
    assertThat(pressurePa).isCloseTo(48.75e6, within(0.005e6));
    assertThat(grip.forceN()).isCloseTo(45.95e3, within(5.0));
    assertThat(grip.torqueNm()).isCloseTo(1149, within(0.5));
    assertThat(fit.boreHoopStressPa(pressurePa)).isCloseTo(111.3e6, within(0.05e6));
  }

  /** Shigley 9th ed. eq. 3-57: p = E·δ·(D²−d²)/(2·d·D²) for equal materials. */
  @Test
  void equalMaterialsFollowTheShortFormula() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 200; i++) {
      double d = random.nextDouble(0.003, 0.05);
      double outer = d * random.nextDouble(1.2, 4);
      double delta = random.nextDouble(1e-6, 5e-5);
      double expected = 210e9 * delta * (outer * outer - d * d) / (2 * d * outer * outer);
      assertThat(new ShrinkFit(d, outer, STEEL, STEEL).pressurePa(delta))
          .as("seed 3, d=%s D=%s", d, outer)
          .isCloseTo(expected, withinPercentage(1e-9));
    }
  }

  /** Second calculation of Shigley 9th ed. eq. 3-56 for carbide in steel, μ 0.12; not measured. */
  @ParameterizedTest
  @CsvSource({
    "6, 20.5, 26, 10, 199, 35, 11.7, 236",
    "12, 24, 35, 14, 109, 104, 17.3, 182",
    "16, 28, 38, 18, 93, 170, 21.3, 183",
    "20, 34, 40, 20, 80, 241, 24.1, 164",
    "25, 45, 46, 24, 82, 443, 35.4, 155"
  })
  void carbideInSteel(
      double boreMm,
      double noseMm,
      double lengthMm,
      double interferenceUm,
      double pressureMpa,
      double torqueNm,
      double forceKn,
      double hoopMpa) {
    ShrinkFit fit = new ShrinkFit(boreMm * 1e-3, noseMm * 1e-3, STEEL, CARBIDE);
    double pressurePa = fit.pressurePa(interferenceUm * 1e-6);
    FrictionGrip grip = FrictionGrip.ofPressure(0.12, pressurePa, boreMm * 1e-3, lengthMm * 1e-3);
    assertThat(pressurePa * 1e-6).isCloseTo(pressureMpa, within(0.55));
    assertThat(grip.torqueNm()).isCloseTo(torqueNm, within(0.55));
    assertThat(grip.forceN() * 1e-3).isCloseTo(forceKn, within(0.055));
    assertThat(fit.boreHoopStressPa(pressurePa) * 1e-6).isCloseTo(hoopMpa, within(0.9));
  }

  /** Second calculation from the rotating-ring stresses, Shigley 9th ed. eq. 3-55. */
  @ParameterizedTest
  @CsvSource({"10000, 0.20, 0.99", "20000, 0.80, 0.96", "40000, 3.2, 0.84"})
  void speedTakesInterferenceAway(double speedPerMin, double lossUm, double gripLeft) {
    double omega = speedPerMin * Math.PI / 30;
    assertThat(D20.interferenceLossM(omega) * 1e6).isCloseTo(lossUm, withinPercentage(0.6));
    assertThat(D20.pressurePa(20e-6, omega) / D20.pressurePa(20e-6))
        .isCloseTo(gripLeft, within(0.0045));
  }

  /** Same-material limit Δp = (3+ν)·ρ·ω²·(ro²−R²)/8 of the rotating-ring stresses. */
  @Test
  void equalMaterialsLosePressureByTheShortFormula() {
    ShrinkFit fit = new ShrinkFit(0.020, 0.034, STEEL, STEEL);
    double omega = 2500;
    double expected = 3.3 * 7850 * omega * omega * (0.017 * 0.017 - 0.01 * 0.01) / 8;
    assertThat(fit.pressurePa(20e-6) - fit.pressurePa(20e-6, omega))
        .isCloseTo(expected, withinPercentage(1e-7));
  }

  @Test
  void speedLimitIsWhereThePressureIsReached() {
    double keptPa = 50e6;
    double omega = D20.angularVelocityAtPressureRadPerS(20e-6, keptPa);
    assertThat(D20.pressurePa(20e-6, omega)).isCloseTo(keptPa, withinPercentage(1e-9));
    assertThat(D20.pressurePa(20e-6, 1.01 * D20.angularVelocityAtPressureRadPerS(20e-6, 0)))
        .isZero();
    assertThat(D20.angularVelocityAtPressureRadPerS(20e-6, 100e6)).isZero();
  }

  @Test
  void shankThatOutgrowsTheBoreNeverLoosens() {
    ElasticMaterial soft = new ElasticMaterial(5e9, 0.3, 9000, 50e-6);
    ShrinkFit fit = new ShrinkFit(0.020, 0.024, STEEL, soft);
    assertThat(fit.interferenceLossM(2000)).isNegative();
    assertThat(fit.angularVelocityAtPressureRadPerS(20e-6, 0)).isInfinite();
  }

  /** Thermal expansion of the bore: d 20 needs 130 K, d 6 needs 290 K. */
  @Test
  void heating() {
    assertThat(D20.insertionTemperatureRiseK(20e-6, 10e-6)).isCloseTo(130, within(0.5));
    ShrinkFit d6 = new ShrinkFit(0.006, 0.0205, STEEL, CARBIDE);
    assertThat(d6.insertionTemperatureRiseK(10e-6, 10e-6)).isCloseTo(290, within(0.5));
  }

  @Test
  void carbideReleasesAndSteelDoesNot() {
    assertThat(D20.releaseTemperatureRiseK(20e-6)).isCloseTo(20e-6 / (6e-6 * 0.02), within(1e-9));
    assertThat(new ShrinkFit(0.02, 0.034, STEEL, STEEL).releaseTemperatureRiseK(20e-6))
        .isInfinite();
  }

  /** Smoothing shares of press-fit notes (0.2) and of DIN 7190-1 (0.8, memory). */
  @Test
  void roughnessTakesInterferenceAway() {
    assertThat(ShrinkFit.effectiveInterferenceM(20e-6, 0.2, 2e-6, 1e-6))
        .isCloseTo(19.4e-6, within(1e-15));
    assertThat(ShrinkFit.effectiveInterferenceM(20e-6, 0.8, 2e-6, 1e-6))
        .isCloseTo(17.6e-6, within(1e-15));
    assertThat(ShrinkFit.effectiveInterferenceM(1e-6, 0.8, 2e-6, 1e-6)).isZero();
  }

  @Test
  void pressureHangsOnRatiosOnlyAndNeverGrowsWithSpeed() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 300; i++) {
      double d = random.nextDouble(0.003, 0.04);
      double outer = d * random.nextDouble(1.2, 4);
      double delta = d * random.nextDouble(1e-4, 2e-3);
      double scale = random.nextDouble(0.5, 2);
      double slow = random.nextDouble(0, 4000);
      double fast = slow + random.nextDouble(0, 2000);
      ShrinkFit fit = new ShrinkFit(d, outer, STEEL, CARBIDE);
      ShrinkFit scaled = new ShrinkFit(d * scale, outer * scale, STEEL, CARBIDE);
      assertThat(scaled.pressurePa(delta * scale, slow / scale))
          .as("seed 17, d=%s D=%s", d, outer)
          .isCloseTo(fit.pressurePa(delta, slow), within(1e-6 * fit.pressurePa(delta)));
      assertThat(fit.pressurePa(delta, fast))
          .as("seed 17, d=%s D=%s %s to %s rad/s", d, outer, slow, fast)
          .isLessThanOrEqualTo(fit.pressurePa(delta, slow));
    }
  }

  @Test
  void noseMustBeLargerThanTheBore() {
    assertThatThrownBy(() -> new ShrinkFit(0.02, 0.02, STEEL, CARBIDE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("noseDiameterM is 0.02");
    assertThatThrownBy(() -> D20.pressurePa(-1e-6)).isInstanceOf(IllegalArgumentException.class);
  }
}
