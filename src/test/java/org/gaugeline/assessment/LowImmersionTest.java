package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.SemiDiscretization;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.junit.jupiter.api.Test;

/**
 * The one-mode benchmark of the stability literature (922 Hz, 1.1 %, 0.03993 kg, two teeth, public
 * listings) at 5 % immersion, where the cut doubles its period inside the zeroth-order pockets.
 */
class LowImmersionTest {
  private static final double OMEGA = 2 * Math.PI * 922;
  private static final ModalResponse X =
      ModalResponse.of(TipMode.ofStiffness(OMEGA, 0.03993 * OMEGA * OMEGA, 0.011));
  private static final MillingProcess CUT =
      new MillingProcess(2, 6e8, 2e8 / 6e8, MillingEngagement.up(0.05, 1));

  @Test
  void neverTellsADepthThatChatters() {
    TipModel tip = new TipModel(X, ModalResponse.of());
    LowImmersion fine = LowImmersion.of(CUT, tip);
    StabilityLobes lobes = StabilityLobes.milling(CUT, tip);
    SemiDiscretization check = new SemiDiscretization(CUT, X, ModalResponse.of(), 80);
    double floor = lobes.guaranteed().depthM();
    int inFlipLobes = 0;
    for (double rpm = 5000; rpm <= 25_000; rpm += 250) {
      double speed = rpm * Math.PI / 30;
      double around = lobes.limitAt(speed).depthM();
      double limit = fine.limitM(speed, around, floor);
      assertThat(check.multiplier(speed, 0.99 * limit).isStable())
          .as("%.4f mm at %.0f 1/min is told to be stable", limit * 1e3, rpm)
          .isTrue();
      inFlipLobes += limit < around / 4 ? 1 : 0;
    }
    assertThat(inFlipLobes).as("speeds where period doubling cuts through a pocket").isPositive();
  }

  @Test
  void knowsNoLimitWhereNobodyDoes() {
    LowImmersion fine = LowImmersion.of(CUT, new TipModel(X, ModalResponse.of()));
    double infinite = Double.POSITIVE_INFINITY;
    assertThat(fine.limitM(1000, infinite, infinite)).isInfinite();
  }
}
