package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MillingEngagementTest {
  @Test
  void sideCutArcFollowsTheCosineRule() {
    // Tschätsch: cos φs = 1 − 2ae/D; 1.2 on 12 gives 36.87°.
    MillingEngagement up = MillingEngagement.up(1.2e-3, 12e-3);
    assertThat(Math.toDegrees(up.arcRad())).isCloseTo(36.87, within(0.005));
    assertThat(up.entryRad()).isZero();
    assertThat(up.largestSine()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void downMillingMirrorsUpMilling() {
    MillingEngagement up = MillingEngagement.up(3e-3, 10e-3);
    MillingEngagement down = MillingEngagement.down(3e-3, 10e-3);
    assertThat(down.arcRad()).isCloseTo(up.arcRad(), within(1e-12));
    assertThat(down.exitRad()).isEqualTo(Math.PI);
    assertThat(down.meanSine()).isCloseTo(up.meanSine(), within(1e-12));
    assertThat(down.largestSine()).isCloseTo(up.largestSine(), within(1e-12));
  }

  @Test
  void fullWidthIsASlotFromEverySide() {
    assertThat(MillingEngagement.up(0.02, 0.02)).isEqualTo(MillingEngagement.slot());
    assertThat(MillingEngagement.centred(0.02, 0.02)).isEqualTo(MillingEngagement.slot());
    assertThat(MillingEngagement.centred(0.01, 0.02).arcRad())
        .isCloseTo(Math.toRadians(60), within(1e-12));
  }

  @Test
  void ballCutsOnASmallerCircleWhenShallow() {
    // Geometry of the sphere: 10 mm ball at 1 mm depth touches on a circle of 6 mm.
    assertThat(MillingEngagement.ballEffectiveDiameterM(10e-3, 1e-3))
        .isCloseTo(6e-3, within(1e-12));
    assertThat(MillingEngagement.ballEffectiveDiameterM(10e-3, 5e-3)).isEqualTo(10e-3);
    assertThat(MillingEngagement.ballEffectiveDiameterM(10e-3, 8e-3)).isEqualTo(10e-3);
  }

  @Test
  void refusesMoreRadialDepthThanTheCutterHas() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MillingEngagement.down(13e-3, 12e-3))
        .withMessageContaining("radialDepthM is 0.013");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MillingEngagement(2, 1))
        .withMessageContaining("exitRad");
  }
}
