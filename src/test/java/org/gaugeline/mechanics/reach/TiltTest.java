package org.gaugeline.mechanics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TiltTest {
  private static final double ENDLESS = Double.POSITIVE_INFINITY;
  private static final RadialProfile HOLDER =
      RadialProfile.startingAt(0, 0).to(0, 0.016).to(0.060, 0.016).toProfile();

  /** Hand calculation: corner 16 at 45 above a ball of 3, clearance 1 mm → 17.2°. */
  @Test
  void cornerNeedsItsTilt() {
    double tilt = Tilt.cornerTiltRad(0.003, 0.016, 0.045, 0.001);
    assertThat(Math.toDegrees(tilt)).isCloseTo(17.2, within(0.05));
    double gap = 0.003 + 0.045 * Math.sin(tilt) - 0.016 * Math.cos(tilt);
    assertThat(gap).isCloseTo(0.001, within(1e-12));
    assertThat(Tilt.cornerTiltRad(0.006, 0.004, 0.045, 0.001)).isZero();
  }

  @Test
  void holderNeedsTheTiltOfItsLowestCorner() {
    double corner = Tilt.cornerTiltRad(0.003, 0.016, 0.045, 0.001);
    assertThat(Tilt.requiredTiltRad(HOLDER, 0.048, 0.003, ENDLESS, 0.001))
        .isCloseTo(corner, within(1e-12));
  }

  @Test
  void lowWallNeedsLessTilt() {
    // At no tilt the nose at 48 mm clears a wall of 47 mm by 1 mm.
    assertThat(Tilt.requiredTiltRad(HOLDER, 0.048, 0.003, 0.047, 0.001)).isZero();
    double some = Tilt.requiredTiltRad(HOLDER, 0.048, 0.003, 0.049, 0.001);
    double more = Tilt.requiredTiltRad(HOLDER, 0.048, 0.003, 0.060, 0.001);
    double most = Tilt.requiredTiltRad(HOLDER, 0.048, 0.003, ENDLESS, 0.001);
    assertThat(some).isPositive().isLessThan(more);
    assertThat(more).isLessThanOrEqualTo(most);
  }

  @Test
  void farCornerComesDown() {
    assertThat(Tilt.farCornerHeightM(0.016, 0.045, 0)).isEqualTo(0.045);
    assertThat(Tilt.farCornerHeightM(0.016, 0.045, Math.PI / 6))
        .isCloseTo(0.045 * Math.sqrt(3) / 2 - 0.008, within(1e-12));
  }

  @Test
  void rejectsAClearanceBeyondTheBall() {
    assertThatThrownBy(() -> Tilt.cornerTiltRad(0.003, 0.016, 0.045, 0.004))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("clearanceM is 0.004");
  }
}
