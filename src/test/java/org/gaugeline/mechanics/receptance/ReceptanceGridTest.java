package org.gaugeline.mechanics.receptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ChainElement;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.gaugeline.mechanics.damper.TunedDamper;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class ReceptanceGridTest {
  private static final double RIGID = Double.POSITIVE_INFINITY;
  private static final double TWO_PI = 2 * Math.PI;
  private static final BeamMaterial TEXTBOOK_STEEL = new BeamMaterial(200e9, 0.3, 7800);
  private static final BeamMaterial STEEL = new BeamMaterial(210e9, 0.30, 7850);
  private static final BeamMaterial CARBIDE = new BeamMaterial(580e9, 0.22, 14400);
  private static final Complex ZERO = Complex.ZERO;
  private static final LossFactors LOSS = LossFactors.uniform(0.01);

  /**
   * Textbook rod on a wall (geometry published, numbers computed by a second route): the closed
   * form gives them, and the Timoshenko rod lies below it by its shear.
   */
  @Test
  void rodOnTheWall() {
    BishopJohnson rod = BishopJohnson.round(0.010, 0.125, 0.01);
    double[] closed = extremes(w -> rod.clamped(w)[0][0], 440, 470);
    assertThat(closed[0]).isCloseTo(453.4, within(0.1));
    assertThat(closed[1]).isCloseTo(-6.44e-4, within(1e-6));
    assertThat(closed[2]).isCloseTo(-3.22e-4, within(1e-6));
    assertThat(closed[3]).isCloseTo(3.22e-4, within(1e-6));
    BeamChain chain = BeamChain.of(BeamSegment.cylinder(0.125, 0.010, TEXTBOOK_STEEL));
    double[] ours = extremes(ReceptanceGrid.wall(hz(440, 470, 0.05)).extend(chain, LOSS));
    assertThat(ours[0]).isLessThan(closed[0]).isCloseTo(closed[0], withinPercentage(0.5));
    assertThat(ours[1]).isCloseTo(closed[1], withinPercentage(0.6));
    assertThat(ours[2]).isCloseTo(closed[2], withinPercentage(0.6));
    assertThat(ours[3]).isCloseTo(closed[3], withinPercentage(0.6));
  }

  /** Textbook rod on a square bar (geometry published, numbers computed by a second route). */
  @Test
  void rodOnABarByTheCouplingFormula() {
    BishopJohnson bar = BishopJohnson.square(0.050, 0.200, 0.01);
    BishopJohnson rod = BishopJohnson.round(0.010, 0.100, 0.01);
    double[] closed = extremes(w -> rod.coupledTo(bar.clamped(w), ZERO, ZERO, w)[0][0], 660, 700);
    assertThat(closed[0]).isCloseTo(680.9, within(0.1));
    assertThat(closed[1]).isCloseTo(-3.22e-4, within(1e-6));
    assertThat(closed[2]).isCloseTo(-1.61e-4, within(1e-6));
    assertThat(closed[3]).isCloseTo(1.61e-4, within(1e-6));
  }

  /** So slender that shear and rotary inertia vanish: every receptance is the closed form's. */
  @Test
  void slenderBarsHaveTheClosedFormOfBishopAndJohnson() {
    BishopJohnson base = BishopJohnson.round(0.0012, 1.2, 0.02);
    BishopJohnson rod = BishopJohnson.round(0.0008, 0.8, 0.02);
    ComplexJoint joint = new ComplexJoint(new ElasticJoint(64, 1.5), 0.05, 0.03, 2e-3);
    double[] omega = hz(0.2, 12, 0.34);
    LossFactors loss = LossFactors.uniform(0.02);
    ReceptanceGrid inner =
        ReceptanceGrid.wall(omega)
            .extend(BeamChain.of(BeamSegment.cylinder(1.2, 0.0012, TEXTBOOK_STEEL)), loss);
    ReceptanceGrid outer =
        inner
            .through(joint)
            .extend(BeamChain.of(BeamSegment.cylinder(0.8, 0.0008, TEXTBOOK_STEEL)), loss);
    Complex[][] slow = rod.coupledTo(base.clamped(0.5), ZERO, ZERO, 0.5);
    for (int i = 0; i < omega.length; i++) {
      double w = omega[i];
      Complex translation = new Complex(64, 64 * 0.05 + 0.03 * w).reciprocal();
      Complex rotation = new Complex(1.5, 1.5 * 0.05 + 2e-3 * w).reciprocal();
      assertSame(inner.at(i), base.clamped(w), slow);
      assertSame(outer.at(i), rod.coupledTo(base.clamped(w), translation, rotation, w), slow);
    }
  }

  private static void assertSame(TipReceptance ours, Complex[][] closed, Complex[][] slow) {
    String where = "at " + ours.angularFrequencyRadPerS() + " rad/s ";
    near(where + "H", ours.hRe(), ours.hIm(), closed[0][0], slow[0][0]);
    near(where + "L", ours.lRe(), ours.lIm(), closed[0][1], slow[0][1]);
    near(where + "N", ours.lRe(), ours.lIm(), closed[1][0], slow[1][0]);
    near(where + "P", ours.pRe(), ours.pIm(), closed[1][1], slow[1][1]);
  }

  /** Near an antiresonance the error is small beside the slow response, not beside itself. */
  private static void near(String where, double re, double im, Complex closed, Complex slow) {
    double off = new Complex(re, im).subtract(closed).norm();
    assertThat(off).as(where).isLessThan(1e-3 * closed.norm() + 1e-4 * slow.norm());
  }

  /**
   * Public experiment on 7075 bars, peaks 295 and 398 Hz read from plots within 8 Hz; an ideal
   * clamp gives 312.6 and 414.2 Hz, a spring fitted to the first bar 388.6 Hz for the second
   * (computed).
   */
  @Test
  void measuredBars() {
    BeamMaterial aluminium = new BeamMaterial(72e9, 0.33, 2810);
    BeamChain uniform = BeamChain.of(BeamSegment.cylinder(0.190, 0.016, aluminium));
    BeamChain stepped =
        BeamChain.of(
            BeamSegment.cylinder(0.140, 0.016, aluminium),
            BeamSegment.cylinder(0.050, 0.010, aluminium));
    ReceptanceGrid wall = ReceptanceGrid.wall(hz(280, 430, 0.05));
    assertThat(extremes(wall.extend(uniform, LOSS))[0]).isCloseTo(312.6, within(0.1));
    assertThat(extremes(wall.extend(stepped, LOSS))[0]).isCloseTo(414.2, within(0.1));
    ReceptanceGrid calibrated =
        wall.through(ComplexJoint.hysteretic(new ElasticJoint(RIGID, 3.95e4), 0.01));
    assertThat(extremes(calibrated.extend(uniform, LOSS))[0]).isCloseTo(295, within(0.5));
    assertThat(extremes(calibrated.extend(stepped, LOSS))[0])
        .isCloseTo(388.6, within(0.1))
        .isCloseTo(398, withinPercentage(2.5));
  }

  /** Stepped bar on joints, computed by two routes outside this project. */
  @Test
  void steppedBarOnJoints() {
    BeamChain chain =
        BeamChain.of(
            new ElasticJoint(1e8, 1e5),
            BeamSegment.cylinder(0.060, 0.020, STEEL),
            new ElasticJoint(5e7, 1e4),
            BeamSegment.cylinder(0.040, 0.010, CARBIDE));
    LossFactors slight = LossFactors.uniform(1e-3);
    double[] published = {1292.7, 3596.1, 8001};
    for (double frequency : published) {
      double[] grid = hz(0.99 * frequency, 1.01 * frequency, 0.1);
      assertThat(extremes(ReceptanceGrid.wall(grid).extend(chain, slight))[0])
          .isCloseTo(frequency, withinPercentage(0.03));
    }
    TipReceptance still = ReceptanceGrid.wall(new double[] {0}).extend(chain, slight).at(0);
    assertThat(still.hRe()).isCloseTo(0.5592e-6, within(1e-10));
  }

  @Test
  void standsStillAsTheStaticChainAndPeaksAtItsModes() {
    long seed = 71;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes modes = new BendingModes(ReceptanceGrid.ELEMENTS);
    double eta = 1e-4;
    for (int run = 0; run < 60; run++) {
      BeamChain chain = randomChain(random);
      String where = "seed " + seed + " run " + run;
      TipReceptance still =
          ReceptanceGrid.wall(new double[] {0}).extend(chain, LossFactors.uniform(0)).at(0);
      assertThat(still.hRe() / TipCompliance.of(chain)).as(where).isCloseTo(1, within(1e-8));
      assertThat(still.lRe() / TipCompliance.rotationRadPerN(chain))
          .as(where)
          .isCloseTo(1, within(1e-8));
      assertThat(still.pRe() / TipCompliance.rotationRadPerNm(chain))
          .as(where)
          .isCloseTo(1, within(1e-8));
      modes.solve(chain, 2);
      for (int mode = 0; mode < 2; mode++) {
        double[] at = {modes.angularFrequencyRadPerS(mode)};
        TipReceptance tip = ReceptanceGrid.wall(at).extend(chain, LossFactors.uniform(eta)).at(0);
        // One mode at its resonance: Im H = −1/(kη).
        assertThat(-tip.hIm() * eta * modes.tipModalStiffnessNPerM(mode))
            .as("%s mode %s", where, mode)
            .isCloseTo(1, within(0.01));
      }
    }
  }

  /** The meshes differ, which shows beside sharp resonances. */
  @Test
  void inTwoPiecesAsInOne() {
    long seed = 72;
    SplittableRandom random = new SplittableRandom(seed);
    double[] omega = hz(50, 3000, 150);
    for (int run = 0; run < 20; run++) {
      BeamSegment holder = BeamSegment.cylinder(0.05 + 0.05 * random.nextDouble(), 0.04, STEEL);
      BeamSegment tool = BeamSegment.cylinder(0.03 + 0.05 * random.nextDouble(), 0.012, CARBIDE);
      ElasticJoint seat = new ElasticJoint(5e7, 2e4);
      ReceptanceGrid wall = ReceptanceGrid.wall(omega);
      ReceptanceGrid whole = wall.extend(BeamChain.of(holder, seat, tool), LOSS);
      ReceptanceGrid parts =
          wall.extend(BeamChain.of(holder), LOSS)
              .through(ComplexJoint.hysteretic(seat, 0.01))
              .extend(BeamChain.of(tool), LOSS);
      for (int i = 0; i < omega.length; i++) {
        Complex one = new Complex(whole.at(i).hRe(), whole.at(i).hIm());
        Complex two = new Complex(parts.at(i).hRe(), parts.at(i).hIm());
        assertThat(one.subtract(two).norm() / one.norm())
            .as("seed %s run %s frequency %s", seed, run, i)
            .isLessThan(0.01);
      }
    }
  }

  /** A tuned mass on a massless beam with a rigid mass is Den Hartog's two masses. */
  @Test
  void tunedMassOnOneMode() {
    BeamMaterial massless = new BeamMaterial(200e9, 0.3, 0);
    BeamChain spring = BeamChain.of(BeamSegment.cylinder(0.2, 0.02, massless));
    double stiffness = 1 / TipCompliance.of(spring);
    double mass = 0.5;
    double host = Math.sqrt(stiffness / mass);
    TunedDamper damper = new TunedDamper(0.08, 0.95, 0.12);
    double[] omega = IntStream.range(1, 40).mapToDouble(i -> host * 0.05 * i).toArray();
    ReceptanceGrid grid =
        ReceptanceGrid.wall(omega)
            .extend(spring, LossFactors.uniform(0))
            .attach(new TunedMass(mass, 1e7 * host, 0))
            .attach(damper.toTunedMass(host, mass));
    double[] g = new double[2];
    for (int i = 0; i < omega.length; i++) {
      damper.response(omega[i] / host, 0, g);
      double size = Math.hypot(g[0], g[1]);
      assertThat(grid.at(i).hRe() * stiffness).isCloseTo(g[0], within(1e-6 * size));
      assertThat(grid.at(i).hIm() * stiffness).isCloseTo(g[1], within(1e-6 * size));
    }
  }

  /**
   * Inside a massless bar: H = C_tt − C_tz² Z/(1 + C_zz Z) with the flexibilities of a cantilever.
   */
  @Test
  void tunedMassInsideABar() {
    BeamMaterial massless = new BeamMaterial(200e9, 0.3, 0);
    double d = 0.02;
    double z = 0.12;
    double l = 0.2;
    BeamChain inner = BeamChain.of(BeamSegment.cylinder(z, d, massless));
    BeamChain outer = BeamChain.of(BeamSegment.cylinder(l - z, d, massless));
    double tip = TipCompliance.of(BeamChain.of(BeamSegment.cylinder(l, d, massless)));
    double place = TipCompliance.of(inner);
    double cross = place + (l - z) * TipCompliance.rotationRadPerN(inner);
    TunedMass mass = new TunedMass(0.3, 900, 0.2);
    double[] omega = IntStream.range(1, 30).mapToDouble(i -> 60.0 * i).toArray();
    LossFactors none = LossFactors.uniform(0);
    ReceptanceGrid grid = ReceptanceGrid.wall(omega).extend(inner, none).attach(mass);
    ReceptanceGrid end = grid.extend(outer, none);
    for (int i = 0; i < omega.length; i++) {
      Complex spring = new Complex(0.3 * 900 * 900, 2 * 0.2 * 0.3 * 900 * omega[i]);
      double inertia = -0.3 * omega[i] * omega[i];
      Complex stiffness = spring.multiply(inertia).divide(spring.add(inertia));
      Complex expected =
          new Complex(tip)
              .subtract(stiffness.multiply(cross * cross).divide(stiffness.multiply(place).add(1)));
      Complex found = new Complex(end.at(i).hRe(), end.at(i).hIm());
      assertThat(found.subtract(expected).norm()).isLessThan(1e-7 * expected.norm());
    }
  }

  @Test
  void refusesFrequenciesThatDoNotAscend() {
    assertThatThrownBy(() -> ReceptanceGrid.wall(new double[] {1, 1}))
        .hasMessageContaining("step of angularFrequencyRadPerS is 0.0");
    assertThatThrownBy(() -> ReceptanceGrid.wall(new double[] {-1}))
        .hasMessageContaining("angularFrequencyRadPerS is -1.0");
    assertThatThrownBy(() -> LossFactors.uniform(1.5)).hasMessageContaining("is 1.5");
  }

  private static BeamChain randomChain(SplittableRandom random) {
    List<ChainElement> parts = new ArrayList<>();
    parts.add(new ElasticJoint(between(random, 2e7, 2e8), between(random, 1e5, 1e6)));
    double d = between(random, 0.035, 0.063);
    parts.add(BeamSegment.cylinder(between(random, 0.02, 0.06), d, STEEL));
    parts.add(BeamSegment.cone(between(random, 0.02, 0.06), d, 0.7 * d, STEEL).withBore(0.3 * d));
    parts.add(new ElasticJoint(between(random, 1e7, 1e8), between(random, 5e3, 5e4)));
    parts.add(BeamSegment.cylinder(between(random, 0.03, 0.08), 0.3 * d, CARBIDE));
    return BeamChain.of(parts.toArray(ChainElement[]::new));
  }

  private static double between(SplittableRandom random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  static double[] hz(double from, double to, double step) {
    int count = (int) Math.round((to - from) / step) + 1;
    return IntStream.range(0, count).mapToDouble(i -> TWO_PI * (from + i * step)).toArray();
  }

  private interface Response {
    Complex at(double omega);
  }

  /** Frequency of the lowest imaginary part, Hz; that part; lowest and highest real part. */
  private static double[] extremes(Response response, double fromHz, double toHz) {
    double[] found = {0, 0, 0, 0};
    for (double w : hz(fromHz, toHz, 0.05)) {
      Complex h = response.at(w);
      note(found, w, h.getReal(), h.getImaginary());
    }
    return found;
  }

  private static double[] extremes(ReceptanceGrid grid) {
    double[] found = {0, 0, 0, 0};
    for (int i = 0; i < grid.count(); i++) {
      TipReceptance tip = grid.at(i);
      note(found, tip.angularFrequencyRadPerS(), tip.hRe(), tip.hIm());
    }
    return found;
  }

  private static void note(double[] found, double w, double re, double im) {
    if (im < found[1]) {
      found[0] = w / TWO_PI;
      found[1] = im;
    }
    found[2] = Math.min(found[2], re);
    found[3] = Math.max(found[3], re);
  }
}
