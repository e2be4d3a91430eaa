package org.gaugeline.mechanics.receptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class TipResponseTest {
  private static final double TWO_PI = 2 * Math.PI;
  private static final BeamChain CHAIN =
      BeamChain.of(
          new ElasticJoint(1e8, 1e5),
          BeamSegment.cylinder(0.060, 0.020, new BeamMaterial(210e9, 0.30, 7850)),
          new ElasticJoint(5e7, 1e4),
          BeamSegment.cylinder(0.040, 0.010, new BeamMaterial(580e9, 0.22, 14400)));

  /**
   * Residue form r/(iω − p) + r̄/(iω − p̄), p = −ζω_n + iω_d; the residue is a published script's.
   */
  @Test
  void residuesGiveTheirPartialFractions() {
    double natural = TWO_PI * 452.77;
    double zeta = 0.123718;
    Complex residue = new Complex(9.202966e-5, -1.862195e-4);
    TipMode mode = TipMode.ofResidue(natural, zeta, residue.getReal(), residue.getImaginary());
    Complex pole = new Complex(-zeta * natural, natural * Math.sqrt(1 - zeta * zeta));
    double[] g = new double[2];
    for (double w = 0; w < 3 * natural; w += natural / 7) {
      Complex at = new Complex(0, w);
      Complex sum =
          residue
              .divide(at.subtract(pole))
              .add(residue.conjugate().divide(at.subtract(pole.conjugate())));
      ModalResponse.of(mode).at(w, g, 0);
      assertThat(new Complex(g[0], g[1]).subtract(sum).norm()).isLessThan(1e-12 * sum.norm());
    }
  }

  /** One mode: min Re G = −1/(4kζ(1 + ζ)) at ω_n√(1 + 2ζ) (Tlusty; memory). */
  @Test
  void oneModeHasItsDeepestRealPartWhereTlustyPutsIt() {
    double zeta = 0.03;
    ModalResponse mode = ModalResponse.of(TipMode.ofStiffness(1000, 2e7, zeta));
    double[] g = new double[2];
    double deepest = 0;
    double at = 0;
    for (double w = 900; w < 1200; w += 0.01) {
      mode.at(w, g, 0);
      if (g[0] < deepest) {
        deepest = g[0];
        at = w;
      }
    }
    assertThat(deepest).isCloseTo(-1 / (4 * 2e7 * zeta * (1 + zeta)), withinPercentage(0.001));
    assertThat(at).isCloseTo(1000 * Math.sqrt(1 + 2 * zeta), within(0.05));
  }

  @Test
  void modesOfAChainStandForItsReceptance() {
    double zeta = 0.01;
    ModalResponse modal = ModalResponse.of(CHAIN, 3, zeta);
    double[] g = new double[2];
    modal.at(0, g, 0);
    assertThat(g[0]).isCloseTo(TipCompliance.of(CHAIN), withinPercentage(1e-9));
    assertThat(modal.residualMPerN()).isPositive().isLessThan(0.02 * g[0]);
    BendingModes modes = new BendingModes();
    modes.solve(CHAIN, 3);
    for (int i = 0; i < 3; i++) {
      assertThat(modal.modes().get(i).stiffnessNPerM())
          .isCloseTo(modes.tipModalStiffnessNPerM(i), withinPercentage(1e-9));
    }
    double[] omega = ReceptanceGridTest.hz(100, 4500, 10);
    ReceptanceGrid grid = ReceptanceGrid.wall(omega).extend(CHAIN, LossFactors.uniform(2 * zeta));
    double largest = 0;
    double off = 0;
    for (int i = 0; i < omega.length; i++) {
      modal.at(omega[i], g, 0);
      TipReceptance exact = grid.at(i);
      off = Math.max(off, Math.hypot(g[0] - exact.hRe(), g[1] - exact.hIm()));
      largest = Math.max(largest, Math.hypot(exact.hRe(), exact.hIm()));
    }
    assertThat(off / largest).isLessThan(0.03);
  }

  @Test
  void samplesAreJoinedStraightAndHeldAtTheEnds() {
    SampledResponse sampled =
        new SampledResponse(
            new double[] {1, 2, 4}, new double[] {0, 1, 3}, new double[] {-1, -2, 0});
    double[] g = new double[3];
    sampled.at(3, g, 1);
    assertThat(g).containsExactly(0, 2, -1);
    sampled.at(2, g, 0);
    assertThat(g).startsWith(1, -2);
    sampled.at(0.5, g, 0);
    assertThat(g).startsWith(0, -1);
    sampled.at(9, g, 0);
    assertThat(g).startsWith(3, 0);
    assertThat(sampled.supportRadPerS()).containsExactly(1, 2, 4);
  }

  @Test
  void gridBecomesSamples() {
    double[] omega = ReceptanceGridTest.hz(1000, 1500, 5);
    ReceptanceGrid grid = ReceptanceGrid.wall(omega).extend(CHAIN, LossFactors.uniform(0.02));
    double[] g = new double[2];
    grid.toResponse().at(omega[40], g, 0);
    assertThat(g).containsExactly(grid.at(40).hRe(), grid.at(40).hIm());
  }

  @Test
  void supportIsDenseWhereTheModeIsSharp() {
    double[] support = ModalResponse.of(TipMode.ofStiffness(1000, 1e7, 0.01)).supportRadPerS();
    assertThat(support).isSorted();
    assertThat(support[0]).isLessThan(30);
    assertThat(support[support.length - 1]).isGreaterThan(3000);
    long near = java.util.Arrays.stream(support).filter(w -> w > 990 && w < 1010).count();
    assertThat(near).isBetween(15L, 40L);
    assertThat(ModalResponse.of().supportRadPerS()).isEmpty();
  }

  @Test
  void refusesWhatIsNoResponse() {
    double[] two = {1, 2};
    assertThatThrownBy(() -> new SampledResponse(two, two, new double[3]))
        .hasMessageContaining("2 frequencies, 2 real and 3 imaginary");
    assertThatThrownBy(() -> new SampledResponse(new double[] {2, 1}, two, two))
        .hasMessageContaining("step of angularFrequencyRadPerS");
    assertThatThrownBy(() -> new SampledResponse(two, new double[] {1, Double.NaN}, two))
        .hasMessageContaining("size of the response");
    assertThatThrownBy(() -> TipMode.ofStiffness(100, 1e6, 1)).hasMessageContaining("dampingRatio");
    assertThatThrownBy(() -> TipMode.ofResidue(100, 0.1, Double.NaN, 0))
        .hasMessageContaining("must be finite");
  }
}
