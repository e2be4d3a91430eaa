package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ArborPartsTest {
  /** VDI 2230, recalled: M10 of class 8.8 at 48 N·m and a friction of 0.12 presses with 28 kN. */
  @Test
  void oneScrewPressesByItsTorque() {
    ClampingScrews screw = new ClampingScrews(NutThread.metric(0.010, 0.0015, 0.013), 1);
    assertThat(screw.preloadN(48, 0.12)).isCloseTo(28e3, within(1.5e3));
  }

  @Test
  void screwsOnABoltCircleAddAndTurnWithTheirTorque() {
    NutThread thread = NutThread.metric(0.012, 0.00175, 0.0156);
    double one = new ClampingScrews(thread, 1).preloadN(84, 0.12);
    assertThat(new ClampingScrews(thread, 4).preloadN(84, 0.12)).isCloseTo(4 * one, within(1e-6));
    assertThat(new ClampingScrews(thread, 1).preloadN(42, 0.12)).isCloseTo(one / 2, within(1e-6));
    assertThat(new ClampingScrews(thread, 1).preloadN(84, 0.2)).isLessThan(one);
  }

  /** Hand calculation: 20 kN on a slope of 2° draws with 20 000·tan 2° = 698 N. */
  @Test
  void aSlopingFlatDrawsTheShankBack() {
    SideLock lock =
        new SideLock(
            0.020,
            0.0182,
            new SideLock.ClampScrew(0.0134, 0.0104),
            1,
            new AllowableStress(5.82e8, 1.7e9));
    DrawnSideLock drawn = new DrawnSideLock(lock, 20e3, Math.toRadians(2));
    assertThat(drawn.drawForceN()).isCloseTo(698.4, within(0.1));
    assertThat(drawn.axialForceN()).isCloseTo(lock.axialForceN() + 698.4, within(0.1));
    assertThat(drawn.torqueNm()).isEqualTo(lock.torqueNm());
  }
}
