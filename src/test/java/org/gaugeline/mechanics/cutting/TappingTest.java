package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class TappingTest {
  private static final Tapping.TappedThread M10 = new Tapping.TappedThread(10e-3, 1.5e-3);

  /**
   * kc·P²·D/8000 for M10×1.5 at 2500 N/mm² is 7.03 N·m: arithmetic on the shop formula (common
   * practice); no published worked case could be read.
   */
  @Test
  void arithmeticOfTheShopFormula() {
    assertThat(Tapping.torqueNm(M10, 2.5e9)).isCloseTo(7.03, within(0.005));
  }

  /**
   * Work per turn: torque times 2π is the specific force times the volume that leaves the thread.
   */
  @Test
  void workOfATurnIsSpecificForceTimesVolume() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double d = 1e-3 * (2 + 30 * random.nextDouble());
      Tapping.TappedThread thread =
          new Tapping.TappedThread(d, d * (0.05 + 0.2 * random.nextDouble()));
      double kc = 1e9 * (0.5 + 4 * random.nextDouble());
      double volume = Tapping.chipAreaM2(thread) * Math.PI * thread.diameterM();
      assertThat(Tapping.torqueNm(thread, kc) * 2 * Math.PI)
          .as("seed 11, draw %d", i)
          .isCloseTo(kc * volume, Percentage.withPercentage(1e-9));
    }
  }

  /** H1 = 0.541·P (ISO 68-1): 0.8119 mm at 1.5 mm, over 2.5 threads and 3 lands. */
  @Test
  void chamferSharesTheHeightOfTheThread() {
    assertThat(Tapping.chipThicknessM(M10, 2.5, 3) * 1e3).isCloseTo(0.8119 / 7.5, within(1e-4));
  }

  @Test
  void refusesAPitchAsLargeAsTheThread() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Tapping.TappedThread(2e-3, 2e-3))
        .withMessageContaining("diameterM - pitchM");
  }
}
