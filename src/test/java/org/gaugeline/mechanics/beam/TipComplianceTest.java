package org.gaugeline.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.gaugeline.mechanics.beam.RandomChains.CARBIDE;
import static org.gaugeline.mechanics.beam.RandomChains.STEEL;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TipComplianceTest {
  private static final double RIGID = Double.POSITIVE_INFINITY;
  private static final BeamMaterial STIFF = new BeamMaterial(1e30, 0.3, 7850);

  /** Stepped bar, computed by two routes outside this project. */
  @Test
  void steppedBarClampedAndOnJoints() {
    BeamSegment steel = BeamSegment.cylinder(0.060, 0.020, STEEL);
    BeamSegment carbide = BeamSegment.cylinder(0.040, 0.010, CARBIDE);
    TipCompliance base =
        TipCompliance.sharesOf(BeamChain.of(steel, BeamSegment.cylinder(0.040, 0.010, STIFF)));
    TipCompliance outer =
        TipCompliance.sharesOf(BeamChain.of(BeamSegment.cylinder(0.060, 0.020, STIFF), carbide));
    assertThat(base.bendingMPerN()).isCloseTo(0.18917e-6, within(1e-11));
    assertThat(base.shearMPerN()).isCloseTo(0.00267e-6, within(1e-11));
    assertThat(outer.bendingMPerN()).isCloseTo(0.07493e-6, within(1e-11));
    assertThat(outer.shearMPerN()).isCloseTo(0.00244e-6, within(1e-11));
    assertThat(TipCompliance.of(BeamChain.of(steel, carbide))).isCloseTo(0.2692e-6, within(5e-11));

    BeamChain jointed =
        BeamChain.of(new ElasticJoint(1e8, 1e5), steel, new ElasticJoint(5e7, 1e4), carbide);
    TipCompliance shares = TipCompliance.sharesOf(jointed);
    assertThat(shares.jointTranslationMPerN()).isCloseTo(0.030e-6, within(1e-13));
    assertThat(shares.jointRotationMPerN()).isCloseTo(0.260e-6, within(1e-13));
    assertThat(shares.totalMPerN()).isCloseTo(0.5592e-6, within(5e-11));
    assertThat(TipCompliance.of(jointed)).isCloseTo(shares.totalMPerN(), within(1e-18));
  }

  @Test
  void barsOfThreeMaterials() {
    JsonNode table = Reference.beam("barsOfThreeMaterials");
    double d = table.required("diameterM").asDouble();
    double l = table.required("lengthM").asDouble();
    for (JsonNode row : table.required("rows")) {
      BeamChain bar = BeamChain.of(BeamSegment.cylinder(l, d, Reference.material(row)));
      assertThat(1e6 * TipCompliance.of(bar))
          .as(row.required("material").asText())
          .isCloseTo(row.required("complianceUmPerN").asDouble(), within(6e-5));
    }
  }

  /** Ratio 1 + 0.55 (d/L)² for solid round steel with Cowper's coefficient, two routes. */
  @Test
  void shearShareOfStubbyBars() {
    for (JsonNode row : Reference.beam("timoshenkoOverEuler").required("rows")) {
      double slenderness = row.required("lengthOverDiameter").asDouble();
      TipCompliance bar =
          TipCompliance.sharesOf(
              BeamChain.of(BeamSegment.cylinder(0.02 * slenderness, 0.02, STEEL)));
      assertThat(bar.totalMPerN() / bar.bendingMPerN())
          .as("L/d %s", slenderness)
          .isCloseTo(row.required("compliance").asDouble(), within(6e-4))
          .isCloseTo(1 + 0.55 / (slenderness * slenderness), within(6e-4));
    }
  }

  /** A bar that is pushed above its tip bends as one that ends there. */
  @Test
  void aForceAboveTheTipBendsWhatIsBelowItNotAtAll() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 200; i++) {
      double length = random.nextDouble(0.01, 0.1);
      double height = length * random.nextDouble(0, 0.95);
      double d = random.nextDouble(0.003, 0.03);
      ElasticJoint joint = new ElasticJoint(5e7, 1e4);
      BeamSegment cone = BeamSegment.cone(0.03, 0.04, d, STEEL);
      BeamChain whole = BeamChain.of(joint, cone, BeamSegment.cylinder(length, d, CARBIDE));
      BeamChain cutOff =
          BeamChain.of(joint, cone, BeamSegment.cylinder(length - height, d, CARBIDE));

      double expected = TipCompliance.of(cutOff);

      assertThat(TipCompliance.atHeight(whole, height))
          .isCloseTo(expected, within(1e-12 * expected));
    }
  }

  @Test
  void aHeightBeyondTheLastCylinderIsRefused() {
    BeamChain bar = BeamChain.of(BeamSegment.cylinder(0.05, 0.01, STEEL));
    assertThatThrownBy(() -> TipCompliance.atHeight(bar, 0.05))
        .hasMessageContaining("heightM is 0.05");
    BeamChain cone = BeamChain.of(BeamSegment.cone(0.05, 0.02, 0.01, STEEL));
    assertThatThrownBy(() -> TipCompliance.atHeight(cone, 0.01)).hasMessageContaining("cylinder");
  }

  /** θ/M = Σ l/EI + Σ 1/k_θ, the textbook rotation of a bar under an end moment. */
  @Test
  void rotationUnderAnEndMoment() {
    BeamChain jointed =
        BeamChain.of(
            new ElasticJoint(1e8, 1e5),
            BeamSegment.cylinder(0.060, 0.020, STEEL),
            new ElasticJoint(5e7, 1e4),
            BeamSegment.cylinder(0.040, 0.010, CARBIDE));
    double steel = 0.060 / (210e9 * Math.PI / 64 * Math.pow(0.020, 4));
    double carbide = 0.040 / (580e9 * Math.PI / 64 * Math.pow(0.010, 4));
    double expected = 1e-5 + steel + 1e-4 + carbide;
    assertThat(TipCompliance.rotationRadPerNm(jointed))
        .isCloseTo(expected, within(1e-12 * expected));
    BeamChain cone = BeamChain.of(BeamSegment.cone(0.1, 0.04, 0.015, STEEL));
    int slices = 100_000;
    double sum = 0;
    for (int i = 0; i < slices; i++) {
      double d = 0.04 + (0.015 - 0.04) * (i + 0.5) / slices;
      sum += 0.1 / slices / (210e9 * Math.PI / 64 * Math.pow(d, 4));
    }
    assertThat(TipCompliance.rotationRadPerNm(cone)).isCloseTo(sum, within(1e-8 * sum));
  }

  /** C = 64 L³/(3πE d_b³ d_t), the classical closed form of a cone under an end force. */
  @Test
  void coneHasItsClosedForm() {
    double c = 64 * Math.pow(0.1, 3) / (3 * Math.PI * 210e9 * Math.pow(0.04, 3) * 0.015);
    BeamChain cone = BeamChain.of(BeamSegment.cone(0.1, 0.04, 0.015, STEEL));
    assertThat(TipCompliance.sharesOf(cone).bendingMPerN()).isCloseTo(c, within(1e-12 * c));
    BeamChain almost = BeamChain.of(BeamSegment.cone(0.1, 0.04, 0.04 * (1 + 1e-13), STEEL));
    BeamChain cylinder = BeamChain.of(BeamSegment.cylinder(0.1, 0.04, STEEL));
    double straight = TipCompliance.of(cylinder);
    assertThat(TipCompliance.of(almost)).isCloseTo(straight, within(1e-10 * straight));
  }

  @Test
  void filledConeMatchesManyShortCylinders() {
    BeamSegment tip = BeamSegment.cylinder(0.03, 0.012, CARBIDE);
    BeamSegment cone = BeamSegment.cone(0.06, 0.045, 0.024, STEEL).withCore(0.012, CARBIDE);
    BeamChain.Builder cut = BeamChain.fromBase();
    int cuts = 4000;
    for (int i = 0; i < cuts; i++) {
      double d = 0.045 - 0.021 * (i + 0.5) / cuts;
      cut.add(BeamSegment.cylinder(0.06 / cuts, d, STEEL).withCore(0.012, CARBIDE));
    }
    BeamChain fine = cut.add(tip).toTip();
    BeamChain chain = BeamChain.of(cone, tip);
    double expected = TipCompliance.of(fine);
    assertThat(TipCompliance.of(chain)).isCloseTo(expected, within(1e-6 * expected));
    assertThat(TipCompliance.rotationRadPerN(chain))
        .isCloseTo(TipCompliance.rotationRadPerN(fine), within(1e-6 * expected / 0.09));
    assertThat(chain.massKg()).isCloseTo(fine.massKg(), within(1e-6 * fine.massKg()));
    assertThat(chain.centroidM()).isCloseTo(fine.centroidM(), within(1e-6 * 0.09));
  }

  /**
   * Carbide Ø12 × 50 on a case study's joints (Ertürk, Özgüven and Budak 2006, memory; an order of
   * magnitude): 50.0 + 1.7 + 68.2 nm/N without shear; hand calculation.
   */
  @Test
  void slimToolDominatesItsStack() {
    BeamMaterial carbide = new BeamMaterial(600e9, 0.22, 14500);
    ElasticJoint toolJoint = new ElasticJoint(2e7, 1.5e6);
    BeamSegment tool = BeamSegment.cylinder(0.050, 0.012, carbide);
    TipCompliance plain = TipCompliance.sharesOf(BeamChain.of(toolJoint, tool));
    assertThat(plain.jointTranslationMPerN()).isCloseTo(50.0e-9, within(5e-11));
    assertThat(plain.jointRotationMPerN()).isCloseTo(1.7e-9, within(5e-11));
    assertThat(plain.bendingMPerN()).isCloseTo(68.2e-9, within(6e-11));
    assertThat(unsheared(plain)).isCloseTo(119.9e-9, within(1e-10));
    assertThat(1e-6 / unsheared(plain)).isCloseTo(8.3, within(0.05));

    BeamSegment flutes = BeamSegment.fluted(0.050, 0.012, 0.80, 0.6, carbide);
    TipCompliance fluted = TipCompliance.sharesOf(BeamChain.of(toolJoint, flutes));
    assertThat(fluted.bendingMPerN()).isCloseTo(166.6e-9, within(1e-10));
    assertThat(1e-6 / unsheared(fluted)).isCloseTo(4.6, within(0.05));

    BeamChain stack =
        BeamChain.of(
            new ElasticJoint(5e7, 1.5e6),
            BeamSegment.cylinder(0.080, 0.050, STIFF),
            toolJoint,
            tool);
    TipCompliance onSpindle = TipCompliance.sharesOf(stack);
    assertThat(unsheared(onSpindle) - unsheared(plain)).isCloseTo(31.3e-9, within(1e-10));
    assertThat(1e-6 / unsheared(onSpindle)).isCloseTo(6.6, within(0.05));
  }

  @Test
  void massAndCentroidOfASteppedBar() {
    BeamChain bar =
        BeamChain.of(
            BeamSegment.cylinder(0.060, 0.020, STEEL), BeamSegment.cylinder(0.040, 0.010, CARBIDE));
    double steel = Math.PI / 4 * 0.02 * 0.02 * 0.06 * 7850;
    double carbide = Math.PI / 4 * 0.01 * 0.01 * 0.04 * 14400;
    assertThat(bar.massKg()).isCloseTo(steel + carbide, within(1e-12));
    double centroid = (steel * 0.03 + carbide * 0.08) / (steel + carbide);
    assertThat(bar.centroidM()).isCloseTo(centroid, within(1e-12));
    assertThat(bar.lengthM()).isCloseTo(0.1, within(1e-15));
    BeamChain whole = BeamChain.of(BeamSegment.cone(0.09, 0.03, 1e-9, STEEL));
    assertThat(whole.massKg()).isCloseTo(Math.PI / 12 * 0.03 * 0.03 * 0.09 * 7850, within(1e-8));
    assertThat(whole.centroidM()).isCloseTo(0.09 / 4, within(1e-8));
  }

  /** κ from Cowper 1966 (memory): 0.886 for the solid circle, near one half for a thin tube. */
  @Test
  void shearCoefficients() {
    assertThat(ShearCoefficient.solidRound(0.3)).isCloseTo(0.886, within(5e-4));
    assertThat(ShearCoefficient.hollowRound(0.3, 0))
        .isCloseTo(ShearCoefficient.solidRound(0.3), within(1e-15));
    // Thin round tube: 2(1 + ν)/(4 + 3ν), Cowper 1966 (memory).
    assertThat(ShearCoefficient.hollowRound(0.3, 1)).isCloseTo(2.6 / 4.9, within(1e-12));
  }

  @Test
  void longerIsNeverStiffer() {
    long seed = 41;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      List<ChainElement> stack = RandomChains.next(random);
      List<ChainElement> longer = new ArrayList<>(stack);
      int at = random.nextInt(stack.size());
      if (stack.get(at) instanceof BeamSegment s) {
        longer.set(at, stretched(s, RandomChains.between(random, 1, 2), 1));
      }
      assertThat(TipCompliance.of(RandomChains.chain(longer)))
          .as("seed %s run %s", seed, run)
          .isGreaterThanOrEqualTo(TipCompliance.of(RandomChains.chain(stack)));
    }
  }

  /** Same material at twice the size: half the compliance and half the frequency. */
  @Test
  void twiceTheSizeHalvesComplianceAndFrequency() {
    long seed = 42;
    SplittableRandom random = new SplittableRandom(seed);
    BendingModes modes = new BendingModes();
    for (int run = 0; run < 200; run++) {
      List<ChainElement> stack = RandomChains.next(random);
      List<ChainElement> twice = new ArrayList<>();
      for (ChainElement element : stack) {
        if (element instanceof BeamSegment s) {
          twice.add(stretched(s, 2, 2));
        } else if (element instanceof ElasticJoint j) {
          twice.add(new ElasticJoint(2 * j.translationNPerM(), 8 * j.rotationNmPerRad()));
        }
      }
      BeamChain small = RandomChains.chain(stack);
      BeamChain large = RandomChains.chain(twice);
      assertThat(2 * TipCompliance.of(large) / TipCompliance.of(small))
          .as("compliance, seed %s run %s", seed, run)
          .isCloseTo(1, within(1e-12));
      assertThat(2 * modes.firstFrequencyHz(large) / modes.firstFrequencyHz(small))
          .as("frequency, seed %s run %s", seed, run)
          .isCloseTo(1, within(1e-8));
    }
  }

  @Test
  void rejectsWhatIsNoBeam() {
    assertThatThrownBy(() -> BeamChain.of(new ElasticJoint(RIGID, RIGID)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("lengthM");
    assertThatThrownBy(() -> BeamSegment.cylinder(0.1, 0.02, STEEL).withBore(0.02))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("boreDiameterM is 0.02");
    assertThatThrownBy(() -> new ElasticJoint(0, 1))
        .hasMessageContaining("translationNPerM is 0.0");
    assertThatThrownBy(() -> new ElasticJoint(1, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new BeamMaterial(-1, 0.3, 1)).hasMessageContaining("youngPa is -1.0");
    assertThatThrownBy(() -> BeamSegment.fluted(0.1, 0.02, 1.2, 0.6, STEEL))
        .hasMessageContaining("equivalentDiameterRatio is 1.2");
  }

  private static double unsheared(TipCompliance shares) {
    return shares.totalMPerN() - shares.shearMPerN();
  }

  private static BeamSegment stretched(BeamSegment s, double length, double width) {
    return new BeamSegment(
        s.lengthM() * length,
        s.startDiameterM() * width,
        s.endDiameterM() * width,
        s.boreDiameterM() * width,
        s.material(),
        s.coreDiameterM() * width,
        s.coreMaterial());
  }
}
