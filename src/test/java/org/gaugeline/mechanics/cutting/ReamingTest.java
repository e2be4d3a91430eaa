package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class ReamingTest {
  private static final Reaming.ReamedHole TWELVE =
      new Reaming.ReamedHole(12e-3, 11.8e-3, 0.4e-3, 6, Math.toRadians(45));
  private static final SpecificForce S275 = SampleCuts.powerLaw(1780, 0.17, 1.2);

  @Test
  void arithmeticOfTheChipArea() {
    // No published example could be read; arithmetic on S275 (Wikipedia "Spezifische
    // Schnittkraft"): 12 from 11.8, z 6, f 0.4, h 0.047: 0.85 N·m before friction.
    HoleLoads loads = Reaming.loads(TWELVE, S275, 0);
    assertThat(loads.chipThicknessM() * 1e3).isCloseTo(0.047, within(5e-4));
    assertThat(loads.torqueNm()).isCloseTo(0.85, within(0.01));
  }

  @Test
  void marginFrictionMultipliesTheTorqueAlone() {
    HoleLoads cutting = Reaming.loads(TWELVE, S275, 0);
    HoleLoads rubbing = Reaming.loads(TWELVE, S275, 1.5);
    assertThat(rubbing.torqueNm())
        .isCloseTo(2.5 * cutting.torqueNm(), Percentage.withPercentage(1e-9));
    assertThat(rubbing.thrustN()).isEqualTo(cutting.thrustN());
  }

  @Test
  void aReamerTakesTheTorqueOfADrillThatOpensTheSameRing() {
    DrilledHole ring = new DrilledHole(12e-3, 11.8e-3, 0.4e-3, Math.toRadians(90), 6);
    assertThat(Reaming.loads(TWELVE, S275, 0).torqueNm())
        .isCloseTo(Drilling.kienzle(ring, S275).torqueNm(), Percentage.withPercentage(1e-9));
    assertThat(Reaming.loads(TWELVE, S275, 0).thrustN())
        .isCloseTo(Drilling.kienzle(ring, S275).thrustN(), Percentage.withPercentage(1e-9));
  }

  @Test
  void refusesNegativeFriction() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Reaming.loads(TWELVE, S275, -0.1))
        .withMessageContaining("marginFrictionRatio is -0.1");
  }
}
