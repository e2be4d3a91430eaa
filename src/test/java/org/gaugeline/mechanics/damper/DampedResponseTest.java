package org.gaugeline.mechanics.damper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.junit.jupiter.api.Test;

/** A tuned mass on one mode, seen by a milling cut of two directions. */
class DampedResponseTest {
  private static final double[] MASS_RATIOS = {0.01, 0.05, 0.2};
  private static final double[] HOST_DAMPING = {0.01, 0.02, 0.05};
  private static final MillingProcess THIN_DOWN =
      new MillingProcess(3, 1500e6, 0.4, MillingEngagement.down(0.05, 1));
  private static final MillingProcess SLOT =
      new MillingProcess(3, 1500e6, 0.2, MillingEngagement.down(1, 1));

  private static ModalResponse oneMode(double zeta) {
    return ModalResponse.of(TipMode.ofStiffness(2 * Math.PI * 300, 5e6, zeta));
  }

  private static double floorM(MillingProcess cut, TipResponse response) {
    return StabilityLobes.milling(cut, TipModel.symmetric(response)).guaranteed().depthM();
  }

  private static double gain(MillingProcess cut, TunedDamper damper, double zeta) {
    ModalResponse host = oneMode(zeta);
    return floorM(cut, DampedResponse.onFirstMode(host, damper)) / floorM(cut, host);
  }

  /**
   * At low immersion the directional factors are nearly of rank one and their eigenvalues real, so
   * that the cut sees the negative real part of one mode alone: its gain at any speed is that of
   * the one-dimensional theory (second route: {@link DamperGain}), whose table is published
   * arithmetic.
   */
  @Test
  void aThinCutGainsWhatOneModeGains() {
    for (double mu : MASS_RATIOS) {
      for (double zeta : HOST_DAMPING) {
        for (TunedDamper damper :
            List.of(
                TunedDamper.chatter(mu), TunedDamper.denHartog(mu), DamperGain.optimum(mu, zeta))) {
          assertThat(gain(THIN_DOWN, damper, zeta))
              .as("gain in a thin cut with %s, host damping %s", damper, zeta)
              .isCloseTo(DamperGain.of(damper, zeta), withinPercentage(0.5));
        }
      }
    }
  }

  /** Cells of the table of gains, without damper over the numerical optimum (computed). */
  @Test
  void gainsOfAThinCutAsTabled() {
    double[][] cells = {{0.01, 0.02, 2.8}, {0.05, 0.01, 10.2}, {0.05, 0.03, 4.1}, {0.2, 0.05, 5.4}};
    for (double[] cell : cells) {
      assertThat(gain(THIN_DOWN, DamperGain.optimum(cell[0], cell[1]), cell[1]))
          .as("mass ratio %s, host damping %s", cell[0], cell[1])
          .isCloseTo(cell[2], withinPercentage(2.5));
    }
  }

  /**
   * The closed form is the optimum of an undamped host: on lightly damped ones no detuning of the
   * frequency gains, on a host of ζ = 0.05 a light mass that is 5 % high gains 4 %.
   */
  @Test
  void detuningGainsNothingOverChatterTuningInAThinCut() {
    for (double mu : MASS_RATIOS) {
      for (double zeta : HOST_DAMPING) {
        TunedDamper tuned = TunedDamper.chatter(mu);
        double hair = zeta < 0.03 ? 1 : 1.05;
        for (double off : new double[] {-0.05, 0.05}) {
          assertThat(gain(THIN_DOWN, tuned.detuned(off), zeta) / gain(THIN_DOWN, tuned, zeta))
              .as("mass ratio %s, host damping %s, off by %s", mu, zeta, off)
              .isLessThan(hair);
        }
      }
    }
  }

  /**
   * In a full slot the eigenvalues of the directional factors are −K_r ± i: the size of the
   * response counts and not its negative real part, so that classical tuning, which makes the size
   * least, is the deeper, and both gain about half to nine tenths of what the theory of one
   * direction says.
   */
  @Test
  void aSlotPrefersClassicalTuning() {
    for (double mu : MASS_RATIOS) {
      for (double zeta : HOST_DAMPING) {
        double classical = gain(SLOT, TunedDamper.denHartog(mu), zeta);
        double chatter = gain(SLOT, TunedDamper.chatter(mu), zeta);
        assertThat(classical)
            .as("mass ratio %s, host damping %s: classical over chatter tuning", mu, zeta)
            .isGreaterThan(1.1 * chatter);
        assertThat(chatter / DamperGain.of(TunedDamper.chatter(mu), zeta))
            .as("mass ratio %s, host damping %s: slot over one direction", mu, zeta)
            .isBetween(0.4, 1.0);
      }
    }
  }

  @Test
  void refusesATipWithoutModes() {
    ModalResponse rigid = new ModalResponse(List.of(), 0);
    assertThatThrownBy(() -> DampedResponse.onFirstMode(rigid, TunedDamper.chatter(0.1)))
        .hasMessageContaining("rigid tip");
  }
}
