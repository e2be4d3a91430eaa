package org.gaugeline.mechanics.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BalanceTest {
  private static final BalanceGrade G2_5 = new BalanceGrade(2.5e-3);
  private static final BalanceGrade G6_3 = new BalanceGrade(6.3e-3);
  private static final BalanceGrade G40 = new BalanceGrade(40e-3);
  private static final double GRAM_MILLIMETRE = 1e-6;

  /**
   * Published example (Fabricating and Metalworking, 2017): below a pound at 40 000 1/min, G2.5
   * allows 0.2 g·mm and an eccentricity of 0.6 µm.
   */
  @Test
  void publishedExampleAt40000() {
    double omega = perMin(40_000);
    assertThat(G2_5.permissibleEccentricityM(omega)).isCloseTo(0.597e-6, within(0.0005e-6));
    assertThat(G2_5.permissibleUnbalanceKgM(0.335, omega))
        .isCloseTo(0.2 * GRAM_MILLIMETRE, within(0.0005 * GRAM_MILLIMETRE));
  }

  /** Second calculation of ISO 21940-11: mass, speed, grade, U in g·mm, e in µm, force in N. */
  @ParameterizedTest
  @CsvSource({"1.2, 24000, 2.5, 1.19, 0.995, 7.5", "1.5, 12000, 6.3, 7.5, 5.0, 11.9"})
  void permissibleUnbalance(
      double massKg, double speed, double grade, double gramMm, double micron, double forceN) {
    BalanceGrade balance = new BalanceGrade(grade * 1e-3);
    double omega = perMin(speed);
    double unbalanceKgM = balance.permissibleUnbalanceKgM(massKg, omega);
    assertThat(unbalanceKgM / GRAM_MILLIMETRE).isCloseTo(gramMm, within(0.05));
    assertThat(balance.permissibleEccentricityM(omega) * 1e6).isCloseTo(micron, within(0.05));
    assertThat(Unbalance.centrifugalForceN(unbalanceKgM, omega)).isCloseTo(forceN, within(0.05));
  }

  /** Second calculation: 4 µm of seat runout under 1.2 kg at 24 000 1/min. */
  @Test
  void seatSpoilsTheGrade() {
    double omega = perMin(24_000);
    SeatEccentricity seat = SeatEccentricity.ofTir(4e-6);
    Unbalance sum = new Unbalance(G2_5.permissibleUnbalanceKgM(1.2, omega), seat.unbalanceKgM(1.2));
    assertThat(sum.seatingKgM() / GRAM_MILLIMETRE).isCloseTo(2.4, within(1e-9));
    assertThat(seat.velocityMPerS(omega) * 1e3).isCloseTo(5.0, within(0.05));
    assertThat(sum.typicalKgM() / GRAM_MILLIMETRE).isCloseTo(2.68, within(0.005));
    assertThat(sum.worstKgM() / GRAM_MILLIMETRE).isCloseTo(3.59, within(0.005));
    assertThat(BalanceGrade.reachedMPerS(sum.typicalKgM(), 1.2, omega) * 1e3)
        .isCloseTo(5.6, within(0.05));
    assertThat(BalanceGrade.reachedMPerS(sum.worstKgM(), 1.2, omega) * 1e3)
        .isCloseTo(7.5, within(0.05));
    assertThat(G2_5.isAttainableOn(seat, omega)).isFalse();
    assertThat(G6_3.isAttainableOn(seat, omega)).isTrue();
  }

  /** A steep taper that seats within 5 µm gives G6.3 at 12 000 1/min from seating alone. */
  @Test
  void steepTaperSeatAlone() {
    assertThat(new SeatEccentricity(5e-6).velocityMPerS(perMin(12_000)) * 1e3)
        .isCloseTo(6.3, within(0.05));
  }

  /** 1 % of an assumed 20 kN rating allows 31.7 g·mm, G66; the cap at G40 leaves 19.1 g·mm. */
  @Test
  void bearingLimitIsCappedByGrade40() {
    double omega = perMin(24_000);
    SpindleBearing bearing = new SpindleBearing(20e3, 0.01, G40);
    double rated = bearing.ratedUnbalanceKgM(omega);
    assertThat(rated / GRAM_MILLIMETRE).isCloseTo(31.7, within(0.05));
    assertThat(BalanceGrade.reachedMPerS(rated, 1.2, omega) * 1e3).isCloseTo(66, within(0.5));
    assertThat(bearing.permissibleUnbalanceKgM(1.2, omega) / GRAM_MILLIMETRE)
        .isCloseTo(19.1, within(0.05));
  }

  @Test
  void speedLimitsUndoThePermissibleUnbalance() {
    SplittableRandom random = new SplittableRandom(29);
    for (int i = 0; i < 300; i++) {
      double massKg = random.nextDouble(0.2, 10);
      double omega = random.nextDouble(100, 4000);
      SpindleBearing bearing = new SpindleBearing(random.nextDouble(5e3, 1e5), 0.01, G40);
      double gradeKgM = G6_3.permissibleUnbalanceKgM(massKg, omega);
      double bearingKgM = bearing.permissibleUnbalanceKgM(massKg, omega);
      assertThat(G6_3.angularVelocityRadPerS(gradeKgM, massKg))
          .as("seed 29, m=%s ω=%s", massKg, omega)
          .isCloseTo(omega, withinPercentage(1e-9));
      assertThat(bearing.angularVelocityRadPerS(bearingKgM, massKg))
          .as("seed 29, m=%s ω=%s", massKg, omega)
          .isCloseTo(omega, withinPercentage(1e-9));
    }
  }

  @Test
  void withoutUnbalanceThereIsNoLimit() {
    assertThat(G2_5.angularVelocityRadPerS(0, 1)).isInfinite();
    assertThat(new SpindleBearing(20e3, 0.01, G40).angularVelocityRadPerS(0, 1)).isInfinite();
  }

  /** Statics: the front bearing carries the force and the moment's couple. */
  @Test
  void overhangLoadsTheFrontBearing() {
    assertThat(SpindleBearing.frontBearingForceN(10, 0.2, 0.1)).isCloseTo(15, within(1e-12));
    assertThat(SpindleBearing.frontBearingForceN(10, 0.2, 0)).isCloseTo(10, within(1e-12));
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new BalanceGrade(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("velocityMPerS is 0.0");
    assertThatThrownBy(() -> new SpindleBearing(20e3, 1.5, G40))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("unbalanceShare is 1.5");
    assertThatThrownBy(() -> G2_5.permissibleEccentricityM(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("angularVelocityRadPerS is 0.0");
  }

  private static double perMin(double speedPerMin) {
    return speedPerMin * Math.PI / 30;
  }
}
