package org.gaugeline.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Chains that are reduced once, with joints changed, against the whole chain solved anew. */
class ReducedModesTest {
  private static final long SEED = 20_261_125;
  private static final double[] TOLERANCE = {1e-4, 1e-3, 2e-2};
  private final ReducedModes reduced = new ReducedModes();
  private final BendingModes whole = new BendingModes();

  /** Springs of the joints of a random stack, which has one at its base and one at its tool. */
  private static double[] springs(List<ChainElement> elements) {
    return elements.stream()
        .filter(ElasticJoint.class::isInstance)
        .map(ElasticJoint.class::cast)
        .flatMapToDouble(
            j -> java.util.stream.DoubleStream.of(j.translationNPerM(), j.rotationNmPerRad()))
        .toArray();
  }

  private static List<ChainElement> with(List<ChainElement> elements, double[] springs) {
    List<ChainElement> changed = new ArrayList<>();
    int at = 0;
    for (ChainElement element : elements) {
      if (element instanceof ElasticJoint) {
        changed.add(new ElasticJoint(springs[at], springs[at + 1]));
        at += 2;
      } else {
        changed.add(element);
      }
    }
    return changed;
  }

  private double staticMPerN() {
    double sum = reduced.tipResidualMPerN();
    for (int i = 0; i < reduced.count(); i++) {
      sum += Math.pow(reduced.tipShape(i) / reduced.angularFrequencyRadPerS(i), 2);
    }
    return sum;
  }

  /**
   * Joints up to four times softer or stiffer, each by itself. Worst of these 2000: first frequency
   * 0.002 %, second 0.02 %, third 1.3 %; compliance of a mode 1.6 % of the tip's.
   */
  @Test
  void changedJointsGiveTheModesOfTheChangedChain() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 200; i++) {
      List<ChainElement> elements = RandomChains.next(random);
      double[] median = springs(elements);
      ReducedChain chain = ReducedChain.of(RandomChains.chain(elements), median.length / 2);
      for (int draw = 0; draw < 10; draw++) {
        double[] drawn = median.clone();
        for (int s = 0; s < drawn.length; s++) {
          drawn[s] *= Math.pow(4, random.nextDouble(-1, 1));
        }
        reduced.solve(chain, drawn);
        BeamChain changed = RandomChains.chain(with(elements, drawn));
        whole.solve(changed, 3);
        double tip = TipCompliance.of(changed);
        assertThat(staticMPerN()).as("static, seed %s", SEED).isCloseTo(tip, within(1e-8 * tip));
        for (int mode = 0; mode < 3; mode++) {
          double exact = whole.angularFrequencyRadPerS(mode);
          double found = reduced.angularFrequencyRadPerS(mode);
          assertThat(found / exact)
              .as("mode %s of stack %s, draw %s, seed %s: an upper bound", mode, i, draw, SEED)
              .isBetween(1 - 1e-6, 1 + TOLERANCE[mode]);
          double compliance = Math.pow(reduced.tipShape(mode) / found, 2);
          double off = Math.abs(compliance - 1 / whole.tipModalStiffnessNPerM(mode)) / tip;
          assertThat(off).as("compliance of mode %s", mode).isLessThan(0.025);
        }
      }
    }
  }

  /**
   * The share of energy in a spring is the logarithmic derivative of ω² by its stiffness
   * (Rayleigh), here by differences of the whole chain.
   */
  @Test
  void theShareOfTheBaseIsHowMuchTheFrequencyFollowsIt() {
    SplittableRandom random = new SplittableRandom(SEED);
    BendingModes fine = new BendingModes(60);
    for (int i = 0; i < 20; i++) {
      List<ChainElement> elements = RandomChains.next(random);
      double[] median = springs(elements);
      reduced.solve(ReducedChain.of(RandomChains.chain(elements), 2), median);
      double step = 1e-3;
      double[] logarithm = new double[4];
      for (int side = 0; side < 2; side++) {
        double[] changed = median.clone();
        changed[0] *= Math.exp(side == 0 ? -step : step);
        changed[1] *= Math.exp(side == 0 ? -step : step);
        fine.solve(RandomChains.chain(with(elements, changed)), 2);
        logarithm[side] = 2 * Math.log(fine.angularFrequencyRadPerS(0));
        logarithm[2 + side] = 2 * Math.log(fine.angularFrequencyRadPerS(1));
      }
      assertThat(reduced.baseEnergyShare(0))
          .as("first mode of stack %s, seed %s", i, SEED)
          .isCloseTo((logarithm[1] - logarithm[0]) / (2 * step), within(5e-3));
      assertThat(reduced.baseEnergyShare(1))
          .as("second mode of stack %s, seed %s", i, SEED)
          .isCloseTo((logarithm[3] - logarithm[2]) / (2 * step), within(2e-2));
    }
  }

  /** In series the softer spring takes more of the energy of the lowest mode. */
  @Test
  void aSofterBaseHoldsMoreOfTheEnergyOfTheLowestMode() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 50; i++) {
      List<ChainElement> elements = RandomChains.next(random);
      double[] springs = springs(elements);
      ReducedChain chain = ReducedChain.of(RandomChains.chain(elements), 2);
      double before = 0;
      for (double factor = 4; factor > 0.2; factor /= 2) {
        double[] changed = springs.clone();
        changed[0] *= factor;
        changed[1] *= factor;
        reduced.solve(chain, changed);
        double share = reduced.baseEnergyShare(0);
        assertThat(share).as("stack %s, seed %s", i, SEED).isBetween(before, 1.0);
        before = share;
        double sum = 0;
        for (int mode = 0; mode < reduced.count(); mode++) {
          assertThat(reduced.baseEnergyShare(mode)).isBetween(0.0, 1.0);
          sum += reduced.baseEnergyShare(mode);
        }
        // two springs can be all of the stiffness of two shapes at most
        assertThat(sum).isLessThanOrEqualTo(2);
      }
    }
  }

  /** Of a rigid bar on a turning spring all energy is in the spring, and ω² = k/(mL²/3). */
  @Test
  void aRigidBarHasAllItsEnergyInTheSpring() {
    BeamMaterial rigid = new BeamMaterial(210e15, 0.3, 7850);
    double l = 0.2;
    BeamChain bar =
        BeamChain.of(
            new ElasticJoint(Double.POSITIVE_INFINITY, 1e4), BeamSegment.cylinder(l, 0.01, rigid));
    reduced.solve(ReducedChain.of(bar, 1, 0.1), new double[] {5e7, 2.5e3});
    assertThat(reduced.baseEnergyShare(0)).isCloseTo(1, within(1e-3));
    assertThat(Math.pow(reduced.angularFrequencyRadPerS(0), 2))
        .isCloseTo(2.5e3 / (bar.massKg() * l * l / 3), withinPercentage(0.1));
    assertThat(reduced.placeShape(0) / reduced.tipShape(0)).isCloseTo(0.5, within(1e-3));
  }

  /** The statics of a place: 1/k_t + z²/k_θ and the cantilever's z³/3EI + z/κGA. */
  @Test
  void theStaticsOfAPlaceAreExact() {
    double l = 0.3;
    double z = 0.12;
    BeamSegment inner = BeamSegment.cylinder(z, 0.03, RandomChains.STEEL);
    BeamSegment outer = BeamSegment.cylinder(l - z, 0.03, RandomChains.STEEL);
    ElasticJoint soft = new ElasticJoint(3e7, 5e4);
    BeamChain chain = BeamChain.of(new ElasticJoint(1e8, 2e5), inner, outer);
    reduced.solve(ReducedChain.of(chain, 1, z), new double[] {3e7, 5e4});
    double place = reduced.placeResidualMPerN();
    double cross = reduced.crossResidualMPerN();
    for (int i = 0; i < reduced.count(); i++) {
      double square = Math.pow(reduced.angularFrequencyRadPerS(i), 2);
      place += Math.pow(reduced.placeShape(i), 2) / square;
      cross += reduced.placeShape(i) * reduced.tipShape(i) / square;
    }
    BeamChain upTo = BeamChain.of(soft, inner);
    assertThat(place).isCloseTo(TipCompliance.of(upTo), withinPercentage(1e-6));
    assertThat(cross)
        .isCloseTo(
            TipCompliance.of(upTo) + (l - z) * TipCompliance.rotationRadPerN(upTo),
            withinPercentage(1e-6));
  }

  @Test
  void refusesWhatDoesNotFit() {
    BeamChain chain =
        BeamChain.of(
            new ElasticJoint(1e8, 2e5), BeamSegment.cylinder(0.1, 0.02, RandomChains.STEEL));
    assertThatThrownBy(() -> ReducedChain.of(chain, 2)).hasMessageContaining("joints is 2");
    assertThatThrownBy(() -> ReducedChain.of(chain, 1, 0.11))
        .hasMessageContaining("placeM is 0.11");
    ReducedChain one = ReducedChain.of(chain, 1);
    assertThat(one.size()).isLessThanOrEqualTo(7);
    assertThatThrownBy(() -> reduced.solve(one, new double[4]))
        .hasMessageContaining("2 springs but 4");
    assertThatThrownBy(() -> reduced.solve(one, new double[2]))
        .hasMessageContaining("stiffness of a spring is 0.0");
  }
}
