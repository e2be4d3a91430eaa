package org.gaugeline.mechanics.grip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.gaugeline.mechanics.grip.SideLock.ClampScrew;
import org.junit.jupiter.api.Test;

/** Hand calculations with nominal stresses; allowable stresses are invented round numbers. */
class PositiveStopTest {
  private static final AllowableStress ALLOWABLE = new AllowableStress(300e6, 1000e6);

  /** Shank and flat of DIN 6535 HB at 20 mm: height over the flat 18.2 mm, width 11 mm. */
  @Test
  void sideLockAtTwentyMillimetres() {
    SideLock lock = new SideLock(0.020, 0.0182, new ClampScrew(0.0135, 0.011), 1, ALLOWABLE);
    assertThat(lock.torqueNm()).isCloseTo(1000e6 * 1.331e-6 / 12, within(1e-6));
    assertThat(lock.axialForceN()).isCloseTo(1000 * 11 * 1.8, within(1e-6));
  }

  @Test
  void weakScrewShearsFirst() {
    AllowableStress weakScrew = new AllowableStress(50e6, 2000e6);
    SideLock lock = new SideLock(0.020, 0.0182, new ClampScrew(0.0135, 0.011), 1, weakScrew);
    double shearN = 50 * Math.PI / 4 * 13.5 * 13.5;
    assertThat(lock.axialForceN()).isCloseTo(shearN, within(1e-6));
    assertThat(lock.torqueNm()).isCloseTo(shearN * 0.0082, within(1e-6));
  }

  @Test
  void twoScrewsBearTwiceAsMuch() {
    ClampScrew screw = new ClampScrew(0.015, 0.012);
    SideLock one = new SideLock(0.025, 0.023, screw, 1, ALLOWABLE);
    SideLock two = new SideLock(0.025, 0.023, screw, 2, ALLOWABLE);
    assertThat(two.torqueNm()).isCloseTo(2 * one.torqueNm(), within(1e-9));
    assertThat(two.axialForceN()).isCloseTo(2 * one.axialForceN(), within(1e-9));
  }

  @Test
  void driveKeysBearTorqueOnly() {
    DriveKey deep = new DriveKey(new DriveKey.Key(0.010, 0.005, 0.012), 2, 0.015, ALLOWABLE);
    DriveKey shallow = new DriveKey(new DriveKey.Key(0.010, 0.002, 0.012), 2, 0.015, ALLOWABLE);
    assertThat(deep.torqueNm()).isCloseTo(2 * 0.015 * 300 * 10 * 12, within(1e-6));
    assertThat(shallow.torqueNm()).isCloseTo(2 * 0.015 * 1000 * 2 * 12, within(1e-6));
    assertThat(deep.axialForceN()).isZero();
  }

  @Test
  void lockingGrooveBearsPullOnly() {
    LockingGroove shortLand = new LockingGroove(0.020, 0.018, 0.002, 0.25, ALLOWABLE);
    LockingGroove longLand = new LockingGroove(0.020, 0.018, 0.010, 0.25, ALLOWABLE);
    assertThat(shortLand.axialForceN()).isCloseTo(0.25 * 300 * Math.PI * 18 * 2, within(1e-6));
    assertThat(longLand.axialForceN())
        .isCloseTo(0.25 * 1000 * Math.PI / 4 * (400 - 324), within(1e-6));
    assertThat(longLand.torqueNm()).isZero();
  }

  /**
   * Twisted square bar, torsion constant 0.208 (Timoshenko; Roark), and flats in bearing by hand.
   */
  @Test
  void squareIsTwistedOrCrushed() {
    SquareDrive deep = new SquareDrive(0.008, 0.011, ALLOWABLE);
    SquareDrive shallow = new SquareDrive(0.008, 0.0005, ALLOWABLE);
    assertThat(deep.torqueNm()).isCloseTo(0.208 * 300 * 512e-3, within(1e-6));
    assertThat(shallow.torqueNm()).isCloseTo(4 * 1000 * 4 * 0.5 * 2e-3, within(1e-6));
    assertThat(deep.axialForceN()).isZero();
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(
            () -> new SideLock(0.020, 0.021, new ClampScrew(0.0135, 0.011), 1, ALLOWABLE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("flatHeightM is 0.021");
    assertThatThrownBy(() -> new LockingGroove(0.02, 0.02, 0.002, 0.25, ALLOWABLE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("coreDiameterM is 0.02");
  }
}
