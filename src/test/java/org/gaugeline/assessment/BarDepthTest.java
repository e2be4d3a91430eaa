package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.gaugeline.advice.Bench;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.damper.TuningHost;
import org.gaugeline.mechanics.receptance.LossFactors;
import org.gaugeline.mechanics.receptance.ReceptanceGrid;
import org.gaugeline.mechanics.receptance.TipModel;
import org.junit.jupiter.api.Test;

/** Where plain bars end: scaling on a rigid base, order of the kinds, and their own consistency. */
class BarDepthTest {
  private static final Models MODELS = new Models(Bench.DATA);
  private static final double D = 32e-3;
  private static final double ZETA = 0.02;
  private static final ElasticJoint RIGID = new ElasticJoint(1e13, 1e11);

  /** A spindle joint of the size of a 50 taper with face contact. */
  private static final ElasticJoint SPINDLE = new ElasticJoint(4e8, 2e6);

  private static final MillingProcess CUT =
      new MillingProcess(4, 2000e6, 0.4, MillingEngagement.down(0.1, 1));

  private static BarDepth bar(PlainBar kind, ElasticJoint joint) {
    return new BarDepth(joint, D, kind.material(MODELS), kind.room(Bench.DATA), ZETA, CUT);
  }

  private static double losesPerDiameter(PlainBar kind, ElasticJoint joint, double depthM) {
    return bar(kind, joint).losesAtM(depthM, D, 100 * D) / D;
  }

  /**
   * A slender bar on a rigid base bears as E·d⁴/L³ of equal damping, so that two solids end at
   * overhangs as the cube roots of their moduli; shear of unlike Poisson's ratio leaves 0.5 %.
   */
  @Test
  void onARigidBaseSolidsEndAsTheCubeRootsOfTheirModuli() {
    for (double depthM : new double[] {0.02e-3, 0.1e-3, 2e-3}) {
      double steel = losesPerDiameter(PlainBar.STEEL, RIGID, depthM);
      for (PlainBar kind : List.of(PlainBar.CARBIDE, PlainBar.HEAVY_METAL)) {
        double expected =
            Math.cbrt(kind.material(MODELS).youngPa() / PlainBar.STEEL.material(MODELS).youngPa());
        assertThat(losesPerDiameter(kind, RIGID, depthM) / steel)
            .as("%s over steel at %s m", kind.id(), depthM)
            .isCloseTo(expected, withinPercentage(0.5));
      }
    }
  }

  /** E·d⁴/L³ in d and L, on a rigid base and slender. */
  @Test
  void theDepthOfASlenderBarGoesWithTheFourthPowerOfItsThicknessAndTheInverseCubeOfItsLength() {
    BarDepth thin = bar(PlainBar.STEEL, RIGID);
    BarDepth thick =
        new BarDepth(RIGID, 2 * D, thin.material(), null, thin.dampingRatio(), thin.process());
    assertThat(thick.guaranteedM(40 * D) / thin.guaranteedM(40 * D))
        .isCloseTo(16, withinPercentage(0.7));
    assertThat(thin.guaranteedM(20 * D) / thin.guaranteedM(40 * D))
        .isCloseTo(8, withinPercentage(0.7));
  }

  /**
   * Order of the trade's rules: steel 4, heavy metal 6, carbide 6 to 8, damped 10 to 14 times the
   * diameter (common practice; boring). Over steel that is 1.5, 1.5 to 2 and 2.5 to 3.5.
   */
  @Test
  void barsEndInTheOrderOfTheTradesRules() {
    for (ElasticJoint joint : List.of(RIGID, SPINDLE)) {
      for (double depthM : new double[] {0.1e-3, 0.5e-3, 2e-3}) {
        double steel = losesPerDiameter(PlainBar.STEEL, joint, depthM);
        double heavy = losesPerDiameter(PlainBar.HEAVY_METAL, joint, depthM) / steel;
        double carbide = losesPerDiameter(PlainBar.CARBIDE, joint, depthM) / steel;
        double damped = losesPerDiameter(PlainBar.DAMPED_STEEL, joint, depthM) / steel;
        assertThat(heavy).as("heavy metal over steel, %s m", depthM).isBetween(1.1, 1.5);
        assertThat(carbide).as("carbide over steel, %s m", depthM).isBetween(1.3, 2.0);
        assertThat(carbide).as("carbide after heavy metal").isGreaterThan(heavy);
        assertThat(damped).as("damped over steel, %s m", depthM).isBetween(2.5, 3.5);
      }
    }
  }

  /** Deeper cuts end earlier, and a bar at the overhang that was found bears just what is asked. */
  @Test
  void deeperCutsEndEarlierAndTheEndBearsWhatIsAsked() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int i = 0; i < 30; i++) {
      double k = Math.exp(random.nextDouble(Math.log(2e5), Math.log(2e7)));
      ElasticJoint joint = new ElasticJoint(random.nextDouble(5e7, 1e9), k);
      double depthM = Math.exp(random.nextDouble(Math.log(0.05e-3), Math.log(2e-3)));
      for (PlainBar kind : PlainBar.values()) {
        BarDepth bar = bar(kind, joint);
        double ends = bar.losesAtM(depthM, D / 2, 100 * D);
        String where = kind.id() + " on " + joint + ", " + depthM + " m";
        assertThat(ends).as(where).isPositive().isFinite();
        assertThat(bar.guaranteedM(ends) / depthM)
            .as("margin at the end of %s", where)
            .isCloseTo(1, withinPercentage(0.01));
        assertThat(bar.losesAtM(1.5 * depthM, D / 2, 100 * D)).as(where).isLessThan(ends);
        assertThat(bar.guaranteedM(1.1 * ends))
            .as("beyond the end of %s", where)
            .isLessThan(depthM);
        assertThat(bar.guaranteedM(0.9 * ends)).as("before it").isGreaterThan(depthM);
      }
    }
  }

  @Test
  void anEndOutsideTheRangeIsSaidAsSuch() {
    BarDepth bar = bar(PlainBar.STEEL, SPINDLE);
    double depthM = bar.guaranteedM(5 * D);
    assertThat(bar.losesAtM(depthM, D, 4 * D)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(bar.losesAtM(depthM, 6 * D, 20 * D)).isZero();
    assertThat(bar.losesAtM(depthM, D, 20 * D) / D).isCloseTo(5, withinPercentage(0.001));
  }

  /** The mass on three modes against its coupling at its place (second calculation: no modes). */
  @Test
  void aMassOnTheModesGivesTheDepthOfTheFullCoupling() {
    for (ElasticJoint joint : List.of(RIGID, SPINDLE)) {
      BarDepth bar = bar(PlainBar.DAMPED_STEEL, joint);
      for (double perDiameter : new double[] {4, 7, 10, 15, 20}) {
        double overhangM = perDiameter * D;
        assertThat(bar.guaranteedM(overhangM) / coupledM(bar, overhangM))
            .as("overhang %s diameters on %s", perDiameter, joint)
            .isBetween(0.98, 1.02);
      }
      assertThat(bar.guaranteedM(2 * D) / coupledM(bar, 2 * D))
          .as("overhang 2 diameters on %s", joint)
          .isBetween(0.85, 1.02);
    }
  }

  /** The mass hung on the bar at its place, no modes, hysteretic damping. */
  private static double coupledM(BarDepth bar, double overhangM) {
    PlainBar.Room room = Objects.requireNonNull(bar.room());
    TuningHost mode = TuningHost.of(bar.modes(overhangM), bar.massKg(room, overhangM));
    LossFactors loss = LossFactors.uniform(2 * ZETA);
    double half = room.lengthShare() / 2;
    double bore = room.diameterShare() * D;
    BeamMaterial steel = bar.material();
    BeamChain.Builder root = BeamChain.fromBase().add(bar.joint());
    root.add(BeamSegment.cylinder((room.atShare() - half) * overhangM, D, steel));
    root.add(BeamSegment.cylinder(half * overhangM, D, steel).withBore(bore));
    BeamChain rest =
        BeamChain.of(
            BeamSegment.cylinder(half * overhangM, D, steel).withBore(bore),
            BeamSegment.cylinder((1 - room.atShare() - half) * overhangM, D, steel));
    int count = 2000;
    double[] omega = new double[count];
    for (int i = 0; i < count; i++) {
      omega[i] = 0.05 * mode.angularFrequencyRadPerS() * Math.pow(800, i / (count - 1.0));
    }
    return StabilityLobes.milling(
            CUT,
            TipModel.symmetric(
                ReceptanceGrid.wall(omega)
                    .extend(root.toTip(), loss)
                    .attach(mode.chatterTuned())
                    .extend(rest, loss)
                    .toResponse()))
        .guaranteed()
        .depthM();
  }
}
