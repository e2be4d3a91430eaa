package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FrictionGripTest {
  /** A 3-4-5 triangle of forces on the surface. */
  @Test
  void torqueAndAxialForceAddAsVectors() {
    FrictionGrip grip = new FrictionGrip(0.020, 5000);
    assertThat(grip.slipForceN(30, 4000)).isCloseTo(5000, within(1e-9));
    assertThat(grip.axialForceLeftN(30)).isCloseTo(4000, within(1e-9));
    assertThat(grip.torqueLeftNm(4000)).isCloseTo(30, within(1e-9));
    assertThat(grip.torqueNm()).isCloseTo(50, within(1e-12));
  }

  @Test
  void nothingIsLeftBeyondTheGrip() {
    FrictionGrip grip = new FrictionGrip(0.020, 5000);
    assertThat(grip.axialForceLeftN(50.1)).isZero();
    assertThat(grip.torqueLeftNm(-5001)).isZero();
  }

  @Test
  void whatIsLeftUsesTheGripUpExactly() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 300; i++) {
      FrictionGrip grip =
          new FrictionGrip(random.nextDouble(0.003, 0.04), random.nextDouble(100, 1e5));
      double torqueNm = grip.torqueNm() * random.nextDouble();
      double axialN = grip.axialForceLeftN(torqueNm);
      assertThat(grip.slipForceN(torqueNm, axialN))
          .as("seed 41, %s, torque %s", grip, torqueNm)
          .isCloseTo(grip.forceN(), within(1e-9 * grip.forceN()));
    }
  }

  @Test
  void moreFrictionNeverHoldsLessAndTorqueGrowsWithTheSquareOfTheDiameter() {
    SplittableRandom random = new SplittableRandom(43);
    for (int i = 0; i < 300; i++) {
      double friction = random.nextDouble(0.03, 0.3);
      double more = friction + random.nextDouble(0, 0.1);
      double pressurePa = random.nextDouble(1e6, 2e8);
      double d = random.nextDouble(0.003, 0.04);
      FrictionGrip grip = FrictionGrip.ofPressure(friction, pressurePa, d, 0.03);
      assertThat(FrictionGrip.ofPressure(more, pressurePa, d, 0.03).forceN())
          .as("seed 43, μ %s to %s", friction, more)
          .isGreaterThanOrEqualTo(grip.forceN());
      assertThat(FrictionGrip.ofPressure(friction, pressurePa, 2 * d, 0.03).torqueNm())
          .as("seed 43, d=%s", d)
          .isCloseTo(4 * grip.torqueNm(), within(1e-9 * grip.torqueNm()));
    }
  }

  @Test
  void negativeInputsAreRejected() {
    assertThatThrownBy(() -> FrictionGrip.ofPressure(-0.1, 1e6, 0.02, 0.03))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("friction is -0.1");
    assertThatThrownBy(() -> new FrictionGrip(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
