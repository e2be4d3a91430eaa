package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ColletGripTest {
  private static final double HALF_ANGLE_RAD = Math.toRadians(8);

  /** ISO 15488 gives the nut of size 32 as M40×1.5; the rubbing diameter of 30 mm is assumed. */
  private static final NutThread NUT_32 = NutThread.metric(0.040, 0.0015, 0.030);

  /**
   * VDI 2230 (memory) and the wedge, second calculation: 100 N·m gives 21.0 kN, a radial sum of 71
   * to 86 kN for cone friction 0.15 to 0.10, and 85 to 103 N·m at 20 mm, 51 to 62 N·m at 12 mm.
   */
  @Test
  void size32At100Nm() {
    ColletGrip rough = new ColletGrip(NUT_32, HALF_ANGLE_RAD, 0.12, 0.15);
    ColletGrip smooth = new ColletGrip(NUT_32, HALF_ANGLE_RAD, 0.12, 0.10);
    assertThat(NUT_32.axialForceN(100, 0.12)).isCloseTo(21.0e3, within(60.0));
    assertThat(rough.radialForceSumN(100)).isCloseTo(71e3, within(600.0));
    assertThat(smooth.radialForceSumN(100)).isCloseTo(86e3, within(600.0));
    assertThat(rough.grip(100, 0.020, 0.12).torqueNm()).isCloseTo(85, within(0.6));
    assertThat(smooth.grip(100, 0.020, 0.12).torqueNm()).isCloseTo(103, within(0.6));
    assertThat(rough.grip(100, 0.012, 0.12).torqueNm()).isCloseTo(51, within(0.6));
    assertThat(smooth.grip(100, 0.012, 0.12).torqueNm()).isCloseTo(62, within(0.6));
  }

  /** ISO 724 (memory): the pitch diameter of M40×1.5 is 39.026 mm. */
  @Test
  void pitchDiameter() {
    assertThat(NUT_32.pitchDiameterM()).isCloseTo(39.026e-3, within(0.5e-6));
  }

  @Test
  void wedgeIsTheTangentOfTheSummedAngles() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      double friction = random.nextDouble(0, 0.4);
      ColletGrip collet = new ColletGrip(NUT_32, HALF_ANGLE_RAD, 0.12, friction);
      double expected =
          NUT_32.axialForceN(80, 0.12) / Math.tan(HALF_ANGLE_RAD + Math.atan(friction));
      assertThat(collet.radialForceSumN(80))
          .as("seed 7, friction %s", friction)
          .isCloseTo(expected, within(1e-9 * expected));
    }
  }

  @Test
  void frictionOnTheConeCostsGripAndTorqueOnTheNutIsProportional() {
    ColletGrip clean = new ColletGrip(NUT_32, HALF_ANGLE_RAD, 0.12, 0.10);
    ColletGrip dirty = new ColletGrip(NUT_32, HALF_ANGLE_RAD, 0.12, 0.20);
    assertThat(dirty.radialForceSumN(100)).isLessThan(clean.radialForceSumN(100));
    assertThat(clean.radialForceSumN(60)).isCloseTo(0.6 * clean.radialForceSumN(100), within(1e-6));
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new ColletGrip(NUT_32, 1.0, 0.12, 0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("coneHalfAngleRad is 1.0");
    assertThatThrownBy(() -> NutThread.metric(0.0005, 0.0015, 0.03))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pitchDiameterM");
  }
}
