package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class DrillingTest {
  private static final double INCH = 25.4e-3;
  private static final double POINT_118 = Math.toRadians(118);
  private static final double LBF = 4.4482216;

  /** Standard drill, c/d 0.18: A 1.085, B 1.355, J 0.030; Kd 24 000 for carbon steel at 200 HB. */
  private static final DrillPoint STANDARD = new DrillPoint(24_000, 1.085, 1.355, 0.030, 0.18, 1);

  private static final DrilledHole SEVEN_EIGHTHS =
      new DrilledHole(0.875 * INCH, 0, 0.008 * INCH, POINT_118, 2);

  @Test
  void handbookExample() {
    // Machinery's Handbook 31st ed. p. 1152: 7/8 in drill, 0.008 in/rev (memory), steel 200 HB:
    // T 1779 lbf, M 430 lbf·in, 2.39 hp at 350 rpm.
    HoleLoads loads = Drilling.handbook(SEVEN_EIGHTHS, STANDARD);
    assertThat(loads.thrustN() / LBF).isCloseTo(1779, Percentage.withPercentage(1));
    assertThat(loads.torqueNm() / (LBF * INCH)).isCloseTo(430, Percentage.withPercentage(1));
    double horsepower = loads.torqueNm() * 2 * Math.PI * 350 / 60 / 745.7;
    assertThat(horsepower).isCloseTo(2.39, Percentage.withPercentage(1));
  }

  @Test
  void kienzleAgreesWithTheHandbookOnTheSameDrill() {
    // Tschätsch's formula with E335 (2110, 0.17; Wikipedia "Spezifische Schnittkraft"), K 1.2:
    // h 0.087, kc 3195 before K, 48.1 N·m, within 1 % of the handbook.
    HoleLoads loads = Drilling.kienzle(SEVEN_EIGHTHS, SampleCuts.powerLaw(2110, 0.17, 1.2));
    assertThat(loads.chipThicknessM() * 1e3).isCloseTo(0.087, within(5e-4));
    assertThat(loads.specificForcePa() / 1e6 / 1.2).isCloseTo(3195, Percentage.withPercentage(1));
    assertThat(loads.torqueNm()).isCloseTo(48.1, Percentage.withPercentage(1));
    assertThat(loads.torqueNm())
        .isCloseTo(
            Drilling.handbook(SEVEN_EIGHTHS, STANDARD).torqueNm(), Percentage.withPercentage(1));
  }

  @Test
  void chiselEdgeAddsToTheThrustAlone() {
    SpecificForce steel = SampleCuts.powerLaw(2110, 0.17, 1.2);
    HoleLoads lips = Drilling.kienzle(SEVEN_EIGHTHS, steel);
    HoleLoads full = Drilling.kienzleWithChisel(SEVEN_EIGHTHS, steel, STANDARD);
    assertThat(full.torqueNm()).isEqualTo(lips.torqueNm());
    // 0.007·24000·22.225²·0.030 = 2490 N.
    assertThat(full.thrustN() - lips.thrustN()).isCloseTo(2490, within(2.0));
  }

  @Test
  void openedHoleLeavesTheRing() {
    // Two passes into the same hole remove what one does: torques add up at equal kc.
    SpecificForce steel = SampleCuts.powerLaw(2110, 0.17, 1.2);
    DrilledHole pilot = new DrilledHole(8e-3, 0, 0.2e-3, POINT_118, 2);
    DrilledHole ring = new DrilledHole(20e-3, 8e-3, 0.2e-3, POINT_118, 2);
    DrilledHole solid = new DrilledHole(20e-3, 0, 0.2e-3, POINT_118, 2);
    double sum =
        Drilling.kienzle(pilot, steel).torqueNm() + Drilling.kienzle(ring, steel).torqueNm();
    assertThat(sum)
        .isCloseTo(Drilling.kienzle(solid, steel).torqueNm(), Percentage.withPercentage(1e-9));
    double thrust =
        Drilling.kienzle(pilot, steel).thrustN() + Drilling.kienzle(ring, steel).thrustN();
    assertThat(thrust)
        .isCloseTo(Drilling.kienzle(solid, steel).thrustN(), Percentage.withPercentage(1e-9));
  }

  @Test
  void pilotHoleAsWideAsTheChiselEdgeFreesIt() {
    assertThat(chiselWithPilot(3.5e-3)).isPositive();
    assertThat(chiselWithPilot(3.7e-3)).isZero();
    HoleLoads open =
        Drilling.handbook(new DrilledHole(20e-3, 10e-3, 0.2e-3, POINT_118, 2), STANDARD);
    HoleLoads solid = Drilling.handbook(new DrilledHole(20e-3, 0, 0.2e-3, POINT_118, 2), STANDARD);
    assertThat(open.torqueNm()).isCloseTo(0.75 * solid.torqueNm(), within(1e-9));
    assertThat(open.specificForcePa())
        .isCloseTo(solid.specificForcePa(), Percentage.withPercentage(1e-9));
  }

  @Test
  void refusesAPilotAsWideAsTheDrill() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DrilledHole(8e-3, 8e-3, 0.1e-3, POINT_118, 2))
        .withMessageContaining("preDrilledDiameterM");
  }

  private static double chiselWithPilot(double pilotM) {
    return Drilling.chiselThrustN(new DrilledHole(20e-3, pilotM, 0.2e-3, POINT_118, 2), STANDARD);
  }
}
