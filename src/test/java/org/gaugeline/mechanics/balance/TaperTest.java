package org.gaugeline.mechanics.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.gaugeline.mechanics.grip.ElasticMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaperTest {
  private static final ElasticMaterial STEEL = new ElasticMaterial(210e9, 0.30, 7850, 11.5e-6);

  /**
   * Second calculation of the rotating-disc formula (Timoshenko and Goodier); gauge diameters of
   * ISO 7388-1, outside radius of the nose assumed.
   */
  @ParameterizedTest
  @CsvSource({
    "44.45, 44.4, 10000, 1.5, 10",
    "44.45, 44.4, 20000, 5.9, 41",
    "31.75, 34.9, 30000, 5.9, 40"
  })
  void mouthOpensAndTheShankIsDrawnIn(
      double gaugeMm, double noseMm, double speedPerMin, double openUm, double pullInUm) {
    MouthExpansion mouth = new MouthExpansion(gaugeMm * 0.5e-3, noseMm * 1e-3, STEEL);
    double omega = speedPerMin * Math.PI / 30;
    assertThat(mouth.radialClearanceM(omega) * 1e6).isCloseTo(openUm, within(0.05));
    assertThat(mouth.pullInM(omega, TaperSeat.STEEP_HALF_ANGLE_RAD) * 1e6)
        .isCloseTo(pullInUm, within(0.55));
  }

  @Test
  void clearanceGrowsWithTheSquareOfSpeed() {
    MouthExpansion mouth = new MouthExpansion(0.0222, 0.0444, STEEL);
    assertThat(mouth.radialClearanceM(3000))
        .isCloseTo(9 * mouth.radialClearanceM(1000), within(1e-15));
  }

  /** The 7/24 taper has a half angle of 8.2971° (8°17′50″) and shifts 6.857 times the radius. */
  @Test
  void steepTaper() {
    TaperSeat seat = new TaperSeat(TaperSeat.STEEP_HALF_ANGLE_RAD, 0.0684, 40e-6);
    assertThat(Math.toDegrees(seat.halfAngleRad())).isCloseTo(8.2971, within(0.00005));
    assertThat(Math.toDegrees(seat.halfAngleRad()))
        .isCloseTo(8 + 17 / 60.0 + 50 / 3600.0, within(0.5 / 3600));
    assertThat(seat.axialShiftM(1e-6)).isCloseTo(6.857e-6, within(0.0005e-6));
  }

  /** Tolerances AT of ISO 1947 (memory) times the cone length; AT3 rows and their AT4 partners. */
  @ParameterizedTest
  @CsvSource({
    "47.8, 50, 2.4",
    "68.4, 40, 2.7",
    "101.75, 31.5, 3.2",
    "47.8, 80, 3.8",
    "68.4, 63, 4.3",
    "101.75, 50, 5.1"
  })
  void allowanceOnDiameter(double lengthMm, double toleranceUrad, double allowanceUm) {
    TaperSeat seat =
        new TaperSeat(TaperSeat.STEEP_HALF_ANGLE_RAD, lengthMm * 1e-3, toleranceUrad * 1e-6);
    assertThat(seat.diameterAllowanceM() * 1e6).isCloseTo(allowanceUm, within(0.05));
  }

  @Test
  void opposedErrorsAddOverTheShorterCone() {
    TaperSeat spindle = new TaperSeat(TaperSeat.STEEP_HALF_ANGLE_RAD, 0.0684, 63e-6);
    TaperSeat holder = new TaperSeat(TaperSeat.STEEP_HALF_ANGLE_RAD, 0.0654, 63e-6);
    assertThat(spindle.freeEndClearanceM(holder)).isCloseTo(126e-6 * 0.0654, within(1e-15));
    assertThat(spindle.freeEndClearanceM(holder)).isEqualTo(holder.freeEndClearanceM(spindle));
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new MouthExpansion(0.05, 0.04, STEEL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("noseRadiusM is 0.04");
    assertThatThrownBy(() -> new TaperSeat(0, 0.06, 40e-6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("halfAngleRad is 0.0");
  }
}
