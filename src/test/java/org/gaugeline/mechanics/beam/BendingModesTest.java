package org.gaugeline.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.gaugeline.mechanics.beam.RandomChains.CARBIDE;
import static org.gaugeline.mechanics.beam.RandomChains.STEEL;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BendingModesTest {
  private static final double RIGID = Double.POSITIVE_INFINITY;
  private final BendingModes fine = new BendingModes(60);

  /** Thomson, Theory of Vibration, appendix D: slender cantilever, so shear is below 1e-5. */
  @Test
  void slenderCantileverHasThomsonsEigenvalues() {
    double l = 2;
    double d = 0.005;
    fine.solve(BeamChain.of(BeamSegment.cylinder(l, d, STEEL)), 3);
    double wave = Math.sqrt(210e9 / 7850) * d / 4;
    JsonNode table = Reference.beam("cantileverEigenvalues");
    for (int i = 0; i < 3; i++) {
      double square = fine.angularFrequencyRadPerS(i) * l * l / wave;
      double betaL = table.required("betaL").get(i).asDouble();
      double betaL2 = table.required("betaLSquared").get(i).asDouble();
      assertThat(square).isCloseTo(betaL2, withinPercentage(0.02));
      assertThat(Math.sqrt(square)).isCloseTo(betaL, withinPercentage(0.01));
    }
    // Tip modal mass ¼ρAL and stiffness 1.0302·3EI/L³, from the closed-form shape.
    double mass = 7850 * Math.PI / 4 * d * d * l;
    double bending = 3 * 210e9 * Math.PI / 64 * Math.pow(d, 4) / Math.pow(l, 3);
    for (int i = 0; i < 3; i++) {
      assertThat(fine.tipModalMassKg(i)).isCloseTo(mass / 4, withinPercentage(0.05));
    }
    assertThat(fine.tipModalStiffnessNPerM(0) / bending).isCloseTo(1.0302, within(1e-4));
  }

  @Test
  void stubbyBarsFallBelowEulerAsTabled() {
    for (JsonNode row : Reference.beam("timoshenkoOverEuler").required("rows")) {
      double slenderness = row.required("lengthOverDiameter").asDouble();
      double d = 0.02;
      double l = d * slenderness;
      fine.solve(BeamChain.of(BeamSegment.cylinder(l, d, STEEL)), 2);
      double wave = Math.sqrt(210e9 / 7850) * d / 4 / (l * l);
      assertThat(fine.angularFrequencyRadPerS(0) / (3.5160 * wave))
          .as("f1 at L/d %s", slenderness)
          .isCloseTo(row.required("f1").asDouble(), within(6e-4));
      assertThat(fine.angularFrequencyRadPerS(1) / (22.0345 * wave))
          .as("f2 at L/d %s", slenderness)
          .isCloseTo(row.required("f2").asDouble(), within(6e-4));
    }
  }

  /** Stepped bar, computed by two routes outside this project. */
  @Test
  void steppedBarClampedAndOnJoints() {
    BeamSegment steel = BeamSegment.cylinder(0.060, 0.020, STEEL);
    BeamSegment carbide = BeamSegment.cylinder(0.040, 0.010, CARBIDE);
    fine.solve(BeamChain.of(steel, carbide), 3);
    assertThat(fine.frequencyHz(0)).isCloseTo(1893.8, withinPercentage(0.01));
    assertThat(fine.frequencyHz(1)).isCloseTo(6923.7, withinPercentage(0.02));
    assertThat(fine.frequencyHz(2)).isCloseTo(16892, withinPercentage(0.05));
    fine.solve(
        BeamChain.of(new ElasticJoint(1e8, 1e5), steel, new ElasticJoint(5e7, 1e4), carbide), 3);
    assertThat(fine.frequencyHz(0)).isCloseTo(1292.7, withinPercentage(0.01));
    assertThat(fine.frequencyHz(1)).isCloseTo(3596.1, withinPercentage(0.02));
    assertThat(fine.frequencyHz(2)).isCloseTo(8001, withinPercentage(0.05));
    double[] euler = new TransferMatrix(List.of(steel, carbide), true).frequenciesHz(3, 1500);
    assertThat(euler[0]).isCloseTo(1937.1, withinPercentage(0.01));
    assertThat(euler[1]).isCloseTo(7472.3, withinPercentage(0.01));
    assertThat(euler[2]).isCloseTo(20897, withinPercentage(0.01));
  }

  @Test
  void barsOfThreeMaterials() {
    JsonNode table = Reference.beam("barsOfThreeMaterials");
    double d = table.required("diameterM").asDouble();
    double l = table.required("lengthM").asDouble();
    for (JsonNode row : table.required("rows")) {
      BeamChain bar = BeamChain.of(BeamSegment.cylinder(l, d, Reference.material(row)));
      assertThat(fine.firstFrequencyHz(bar))
          .as(row.required("material").asText())
          .isCloseTo(row.required("frequencyHz").asDouble(), withinPercentage(0.02));
    }
  }

  /**
   * Public experiment on 7075 bars (peaks read from plots, 8 Hz either way): about 295 Hz uniform
   * and 398 Hz stepped. The ideal clamp overstates both; one spring fitted to the first bar
   * predicts the second.
   */
  @Test
  void measuredBarsNeedASpringAtTheirBase() {
    JsonNode table = Reference.beam("measuredBars");
    BeamMaterial aluminium = Reference.material(table);
    BeamSegment uniform = BeamSegment.cylinder(0.190, 0.016, aluminium);
    BeamSegment thick = BeamSegment.cylinder(0.140, 0.016, aluminium);
    BeamSegment thin = BeamSegment.cylinder(0.050, 0.010, aluminium);
    ElasticJoint base = new ElasticJoint(RIGID, table.required("baseRotationNmPerRad").asDouble());
    assertThat(fine.firstFrequencyHz(BeamChain.of(uniform)))
        .isCloseTo(table.required("uniformClampedHz").asDouble(), within(0.1));
    assertThat(fine.firstFrequencyHz(BeamChain.of(thick, thin)))
        .isCloseTo(table.required("steppedClampedHz").asDouble(), within(0.1));
    assertThat(fine.firstFrequencyHz(BeamChain.of(base, uniform))).isCloseTo(295, within(0.5));
    assertThat(fine.firstFrequencyHz(BeamChain.of(base, thick, thin)))
        .isCloseTo(table.required("steppedOnSpringHz").asDouble(), within(0.1))
        .isCloseTo(398, withinPercentage(2.5));
  }

  @Test
  void agreesWithTheTransferMatrix() {
    long seed = 51;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes usual = new BendingModes();
    for (int run = 0; run < 20; run++) {
      List<ChainElement> stack = RandomChains.next(random);
      BeamChain chain = RandomChains.chain(stack);
      fine.solve(chain, 3);
      usual.solve(chain, 3);
      double[] exact =
          new TransferMatrix(stack, false).frequenciesHz(3, FirstFrequencyBound.frequencyHz(chain));
      double[] percent = {0.15, 0.3, 0.6};
      for (int i = 0; i < 3; i++) {
        String where = "seed " + seed + " run " + run + " mode " + i;
        assertThat(fine.frequencyHz(i)).as(where).isCloseTo(exact[i], withinPercentage(percent[i]));
        assertThat(usual.frequencyHz(i))
            .as(where)
            .isCloseTo(exact[i], withinPercentage(2 * percent[i]));
      }
      assertThat(FirstFrequencyBound.frequencyHz(chain))
          .as("bound, seed %s run %s", seed, run)
          .isLessThan(exact[0]);
    }
  }

  @Test
  void boundIsBelowAndModesFitIntoTheStaticCompliance() {
    long seed = 52;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes modes = new BendingModes();
    for (int run = 0; run < 500; run++) {
      BeamChain chain = RandomChains.chain(RandomChains.next(random));
      modes.solve(chain, 3);
      String where = "seed " + seed + " run " + run;
      assertThat(FirstFrequencyBound.frequencyHz(chain))
          .as(where)
          .isLessThan(modes.frequencyHz(0))
          .isGreaterThan(0.5 * modes.frequencyHz(0));
      double modal = 0;
      for (int i = 0; i < 3; i++) {
        modal += 1 / modes.tipModalStiffnessNPerM(i);
      }
      double share = modal / TipCompliance.of(chain);
      assertThat(share).as(where).isLessThan(1).isGreaterThan(0.75);
      double three = modes.frequencyHz(0);
      assertThat(modes.firstFrequencyHz(chain)).as(where).isCloseTo(three, within(1e-6 * three));
    }
  }

  /**
   * Dunkerley over two parts, each deflecting as far as its outer end: below the finite-element
   * frequency and the exact trace of the same chain, and not uselessly far below.
   */
  @Test
  void boundFromTwoPartsIsBelowTheirFirstFrequency() {
    long seed = 57;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes modes = new BendingModes();
    for (int run = 0; run < 300; run++) {
      double holderM = RandomChains.between(random, 0.02, 0.063);
      double toolM = RandomChains.between(random, 0.004, 0.025);
      List<ChainElement> stack =
          List.of(
              new ElasticJoint(
                  RandomChains.between(random, 2e7, 2e8), RandomChains.between(random, 2e5, 4e6)),
              BeamSegment.cylinder(RandomChains.between(random, 0.03, 0.2), holderM, STEEL),
              new ElasticJoint(
                  RandomChains.between(random, 1e7, 1e8), RandomChains.between(random, 3e3, 1e5)),
              BeamSegment.cylinder(RandomChains.between(random, 0.01, 0.1), toolM, CARBIDE));
      BeamChain inner = RandomChains.chain(stack.subList(0, 2));
      BeamChain outer = RandomChains.chain(stack.subList(2, 4));
      BeamChain whole = RandomChains.chain(stack);
      double bound =
          FirstFrequencyBound.ofPartsRadPerS(
              inner.massKg(),
              inner.massKg() * holderM * holderM / 16,
              TipCompliance.of(inner),
              TipCompliance.rotationRadPerNm(inner),
              outer.massKg(),
              outer.massKg() * toolM * toolM / 16,
              TipCompliance.of(whole),
              TipCompliance.rotationRadPerNm(whole));
      double first = 2 * Math.PI * modes.firstFrequencyHz(whole);
      assertThat(bound)
          .as("seed %s run %s", seed, run)
          .isLessThan(FirstFrequencyBound.angularFrequencyRadPerS(whole))
          .isLessThan(first)
          .isGreaterThan(0.3 * first);
    }
  }

  /** 1/Σω⁻² of a slender cantilever: the sum of β⁻⁴ over all modes is 1/12 (classical). */
  @Test
  void boundOfASlenderCantileverIsTheSumOverAllModes() {
    double d = 0.002;
    BeamChain bar = BeamChain.of(BeamSegment.cylinder(2, d, STEEL));
    double wave = Math.sqrt(210e9 / 7850) * d / 4 / 4;
    assertThat(FirstFrequencyBound.angularFrequencyRadPerS(bar) / wave)
        .isCloseTo(Math.sqrt(12), within(1e-4));
  }

  @Test
  void stifferJointNeverLowersAndMassNeverRaisesTheFirstFrequency() {
    long seed = 53;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes modes = new BendingModes();
    for (int run = 0; run < 400; run++) {
      List<ChainElement> stack = RandomChains.next(random);
      List<ChainElement> other = new ArrayList<>(stack);
      int at = random.nextInt(stack.size());
      double factor = RandomChains.between(random, 1, 4);
      int sense = change(other, at, factor);
      double before = modes.firstFrequencyHz(RandomChains.chain(stack));
      double after = modes.firstFrequencyHz(RandomChains.chain(other));
      assertThat(sense * (after - before))
          .as("seed %s run %s element %s", seed, run, at)
          .isGreaterThanOrEqualTo(-1e-7 * before);
    }
  }

  private static int change(List<ChainElement> stack, int at, double factor) {
    if (stack.get(at) instanceof ElasticJoint j) {
      stack.set(at, new ElasticJoint(factor * j.translationNPerM(), factor * j.rotationNmPerRad()));
      return 1;
    }
    BeamSegment s = (BeamSegment) stack.get(at);
    BeamMaterial m = s.material();
    BeamMaterial heavier = new BeamMaterial(m.youngPa(), m.poisson(), factor * m.densityKgPerM3());
    stack.set(
        at,
        new BeamSegment(
            s.lengthM(),
            s.startDiameterM(),
            s.endDiameterM(),
            s.boreDiameterM(),
            heavier,
            s.coreDiameterM(),
            s.coreMaterial()));
    return -1;
  }

  @Test
  void modesAreReadOnlyAsFarAsSolved() {
    BendingModes modes = new BendingModes();
    assertThatThrownBy(() -> modes.frequencyHz(0)).isInstanceOf(IllegalArgumentException.class);
    modes.solve(BeamChain.of(BeamSegment.cylinder(0.1, 0.02, STEEL)), 2);
    assertThat(modes.count()).isEqualTo(2);
    assertThat(modes.toList()).hasSize(2);
    BendingMode second = modes.toList().get(1);
    assertThat(second.frequencyHz()).isEqualTo(modes.frequencyHz(1));
    assertThat(second.tipModalStiffnessNPerM()).isEqualTo(modes.tipModalStiffnessNPerM(1));
    BeamMaterial ghost = new BeamMaterial(210e9, 0.3, 0);
    assertThatThrownBy(() -> modes.solve(BeamChain.of(BeamSegment.cylinder(1, 1, ghost)), 1))
        .hasMessageContaining("massKg");
  }
}
