package org.gaugeline.mechanics.receptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.ReducedChain;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.gaugeline.mechanics.damper.TunedDamper;
import org.junit.jupiter.api.Test;

/** A tuned mass on modes: closed form, receptance coupling, and the frequencies it names. */
class TunedResponseTest {
  private static final BeamMaterial STEEL = new BeamMaterial(210e9, 0.30, 7850);
  private static final double PLACE_M = 0.22;
  private static final double ZETA = 0.02;
  private static final BeamChain ROOT =
      pieces(BeamChain.fromBase().add(new ElasticJoint(1e8, 4e5)), 22, 0.040).toTip();
  private static final BeamChain REST =
      pieces(pieces(BeamChain.fromBase(), 5, 0.040).add(new ElasticJoint(8e7, 3e4)), 6, 0.016)
          .toTip();

  /** Cut into centimetres, so that both routes have a fine mesh. */
  private static BeamChain.Builder pieces(BeamChain.Builder builder, int count, double diameterM) {
    for (int i = 0; i < count; i++) {
      builder.add(BeamSegment.cylinder(0.01, diameterM, STEEL));
    }
    return builder;
  }

  private static TunedResponse response(TunedMass mass) {
    ReducedModes modes = new ReducedModes();
    BeamChain whole = BeamChain.fromBase().add(ROOT).add(REST).toTip();
    modes.solve(ReducedChain.of(whole, 2, PLACE_M), new double[] {1e8, 4e5, 8e7, 3e4});
    return TunedResponse.of(modes, share -> ZETA, mass);
  }

  private static TunedMass tuned(double massKg) {
    HostMode first = response(new TunedMass(0, 1000, 0.1)).modes().get(0);
    double ratio = massKg * first.placeShape() * first.placeShape();
    return TunedDamper.chatter(ratio).toTunedMass(first.angularFrequencyRadPerS(), massKg / ratio);
  }

  /** Den Hartog's response of one undamped mode with a mass on it. */
  @Test
  void oneModeHasDenHartogsResponse() {
    TunedDamper damper = new TunedDamper(0.08, 0.95, 0.12);
    double natural = 2000;
    double modalMass = 1.5;
    double shape = 1 / Math.sqrt(modalMass);
    TunedResponse response =
        new TunedResponse(
            List.of(new HostMode(natural, 1e-9, shape, shape)),
            0,
            0,
            0,
            damper.toTunedMass(natural, modalMass));
    double[] ours = new double[2];
    double[] exact = new double[2];
    double stiffness = modalMass * natural * natural;
    for (double r = 0.053; r < 3; r += 0.01) {
      response.at(r * natural, ours, 0);
      damper.response(r, 0, exact);
      double size = Math.hypot(exact[0], exact[1]);
      assertThat(ours[0] * stiffness).as("r %s", r).isCloseTo(exact[0], within(1e-6 * size));
      assertThat(ours[1] * stiffness).as("r %s", r).isCloseTo(exact[1], within(1e-6 * size));
    }
  }

  /**
   * Receptance coupling with the mass attached (another mesh, no modes): up to 0.2 % of the largest
   * response apart up to the third frequency, without the mass 0.04 %.
   */
  @Test
  void threeModesStandForTheReceptanceWithTheMassAttached() {
    for (TunedMass mass :
        List.of(
            new TunedMass(0, 1000, 0.1),
            tuned(0.3),
            tuned(0.8),
            new TunedMass(0.5, 4000, 0.02),
            new TunedMass(1, 900, 1))) {
      double third = response(mass).modes().get(2).angularFrequencyRadPerS();
      double[] omega = new double[1500];
      for (int i = 0; i < omega.length; i++) {
        omega[i] = third * (i + 1) / 1450;
      }
      LossFactors loss = LossFactors.uniform(2 * ZETA);
      ReceptanceGrid grid =
          ReceptanceGrid.wall(omega).extend(ROOT, loss).attach(mass).extend(REST, loss);
      double[] g = new double[2];
      double largest = 0;
      double off = 0;
      for (int i = 0; i < omega.length; i++) {
        response(mass).at(omega[i], g, 0);
        double apart = Math.hypot(g[0] - grid.at(i).hRe(), g[1] - grid.at(i).hIm());
        off = Math.max(off, apart);
        largest = Math.max(largest, Math.hypot(grid.at(i).hRe(), grid.at(i).hIm()));
      }
      assertThat(off / largest).as("with %s", mass).isLessThan(4e-3);
    }
  }

  @Test
  void aMassOfNothingLeavesTheBarsModes() {
    TunedResponse none = response(new TunedMass(0, 1500, 0.1));
    List<TipMode> modes =
        none.modes().stream()
            .map(
                m ->
                    new TipMode(
                        m.angularFrequencyRadPerS(),
                        m.dampingRatio(),
                        m.tipShape() * m.tipShape(),
                        0))
            .toList();
    assertThat(none.supportRadPerS()).isEqualTo(new ModalResponse(modes, 0).supportRadPerS());
  }

  /**
   * Straight lines between the named frequencies miss nothing, however the mass is damped: 0.3 % of
   * the largest response, 1.2 % for a mass of three times the bar's that can hardly move on it.
   */
  @Test
  void theSupportResolvesTheSplitPeaks() {
    List<TunedMass> masses = new ArrayList<>();
    for (double damping : new double[] {0, 0.002, 0.05, 0.2, 1, 5}) {
      for (double kg : new double[] {0.02, 0.4, 3}) {
        TunedMass well = tuned(0.4);
        masses.add(new TunedMass(kg, well.angularFrequencyRadPerS(), damping));
        masses.add(new TunedMass(kg, 2.3 * well.angularFrequencyRadPerS(), damping));
      }
    }
    for (TunedMass mass : masses) {
      TunedResponse response = response(mass);
      double[] support = response.supportRadPerS();
      assertThat(support).isSorted();
      assertThat(support.length).as("points for %s", mass).isLessThan(1000);
      double[] left = new double[2];
      double[] right = new double[2];
      double[] middle = new double[2];
      double largest = 0;
      double off = 0;
      for (int i = 1; i < support.length; i++) {
        response.at(support[i - 1], left, 0);
        response.at(support[i], right, 0);
        for (int part = 1; part < 20; part++) {
          double share = part / 20.0;
          response.at(support[i - 1] + share * (support[i] - support[i - 1]), middle, 0);
          double re = left[0] + share * (right[0] - left[0]);
          double im = left[1] + share * (right[1] - left[1]);
          off = Math.max(off, Math.hypot(middle[0] - re, middle[1] - im));
          largest = Math.max(largest, Math.hypot(middle[0], middle[1]));
        }
      }
      assertThat(off / largest).as("%s", mass).isLessThan(0.02);
    }
  }

  @Test
  void refusesABarWithoutModes() {
    assertThatThrownBy(() -> new TunedResponse(List.of(), 0, 0, 0, new TunedMass(0.1, 1000, 0.1)))
        .hasMessageContaining("at least one mode");
    assertThatThrownBy(() -> new HostMode(1000, 0.02, Double.NaN, 1))
        .hasMessageContaining("tipShape is NaN");
    assertThatThrownBy(() -> new HostMode(1000, 0, 1, 1)).hasMessageContaining("dampingRatio is 0");
  }
}
