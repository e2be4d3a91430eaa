package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class MillingPropertiesTest {
  private static final long SEED = 20_260_101L;
  private static final int CUTS = 300;
  private static final double ROUNDING = 1e-9;

  @Test
  void torqueAndPullNeverFallWithDepth() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int n = 0; n < CUTS; n++) {
      MillingCut cut = SampleCuts.random(random, new EdgeShape.Cylindrical());
      MillingForces forces = MillingForces.prepare(cut);
      CutLoads before = forces.at(0.01 * cut.cutter().diameterM());
      for (double depth = 0.03; depth < 3; depth *= 1.3) {
        CutLoads now = forces.at(depth * cut.cutter().diameterM());
        String label = label(n, cut) + " depth/D " + depth;
        assertThat(now.peakTorqueNm())
            .as(label)
            .isGreaterThanOrEqualTo(before.peakTorqueNm() * (1 - ROUNDING));
        assertThat(now.peakAxialPullN())
            .as(label)
            .isGreaterThanOrEqualTo(before.peakAxialPullN() * (1 - ROUNDING));
        assertThat(now.peakSlipForcePulledN())
            .as(label)
            .isGreaterThanOrEqualTo(before.peakSlipForcePulledN() * (1 - ROUNDING));
        before = now;
      }
    }
  }

  @Test
  void peaksStandAboveMeansAndBelowTheirBounds() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int n = 0; n < CUTS; n++) {
      MillingCut cut = SampleCuts.random(random, new EdgeShape.Cylindrical());
      double depth = random.nextDouble(0.02, 2) * cut.cutter().diameterM();
      CutLoads loads = MillingForces.prepare(cut).at(depth);
      String label = label(n, cut);
      double ft = loads.peakTangentialForceN();
      double lag = depth * cut.cutter().lagRadPerM();
      double teeth =
          Math.ceil((cut.engagement().arcRad() + lag) / cut.cutter().pitchRad()) + ROUNDING;
      double largest =
          MillingFormulas.toothForceN(cut.specificForce(), depth, loads.maxChipThicknessM());
      assertThat(loads.peakTorqueNm())
          .as(label)
          .isGreaterThanOrEqualTo(loads.meanTorqueNm() * (1 - ROUNDING));
      assertThat(ft).as(label).isLessThanOrEqualTo(teeth * largest);
      assertThat(loads.peakRadialForceN())
          .as(label)
          .isBetween(0.0, ft * Math.hypot(1, cut.radialRatio()) * (1 + ROUNDING));
      assertThat(Math.abs(loads.meanFeedForceN()))
          .as(label)
          .isLessThanOrEqualTo(loads.peakRadialForceN() * (1 + ROUNDING));
      assertThat(loads.peakWallNormalForceN())
          .as(label)
          .isLessThanOrEqualTo(loads.peakRadialForceN() * 1.02);
      assertThat(loads.meanChipThicknessM())
          .as(label)
          .isLessThanOrEqualTo(loads.maxChipThicknessM());
    }
  }

  @Test
  void doubledSpecificForceDoublesEveryLoad() {
    SplittableRandom random = new SplittableRandom(SEED + 2);
    for (int n = 0; n < CUTS; n++) {
      EdgeShape edge =
          switch (n % 4) {
            case 0 -> new EdgeShape.Ball();
            case 1 -> new EdgeShape.CornerRadius(0.5e-3);
            case 2 -> new EdgeShape.Lead(0.8);
            default -> new EdgeShape.Cylindrical();
          };
      MillingCut cut = SampleCuts.random(random, edge);
      SpecificForce plain = SampleCuts.powerLaw(1000, cut.specificForce().mc(), 1);
      SpecificForce twice = SampleCuts.powerLaw(2000, cut.specificForce().mc(), 1);
      double depth = random.nextDouble(0.02, 2) * cut.cutter().diameterM();
      CutLoads once = MillingForces.prepare(with(cut, plain)).at(depth);
      CutLoads doubled = MillingForces.prepare(with(cut, twice)).at(depth);
      String label = label(n, cut);
      near(label, doubled.meanTorqueNm(), 2 * once.meanTorqueNm());
      near(label, doubled.peakTorqueNm(), 2 * once.peakTorqueNm());
      near(label, doubled.peakRadialForceN(), 2 * once.peakRadialForceN());
      near(label, doubled.peakAxialPullN(), 2 * once.peakAxialPullN());
      near(label, doubled.peakAxialPushN(), 2 * once.peakAxialPushN());
      near(label, doubled.peakWallNormalForceN(), 2 * once.peakWallNormalForceN());
      near(label, doubled.peakSlipForcePulledN(), 2 * once.peakSlipForcePulledN());
      near(label, doubled.meanFeedForceN(), 2 * once.meanFeedForceN());
    }
  }

  @Test
  void upAndDownMillingPeakAtTheSameTorque() {
    // Reversing time turns one into the other and leaves the chip as it is.
    SplittableRandom random = new SplittableRandom(SEED + 3);
    for (int n = 0; n < CUTS; n++) {
      MillingCut cut = SampleCuts.random(random, new EdgeShape.Cylindrical());
      double diameter = cut.cutter().diameterM();
      double radial = random.nextDouble(0.01, 0.99) * diameter;
      double depth = random.nextDouble(0.02, 2) * diameter;
      CutLoads up =
          MillingForces.prepare(with(cut, MillingEngagement.up(radial, diameter))).at(depth);
      CutLoads down =
          MillingForces.prepare(with(cut, MillingEngagement.down(radial, diameter))).at(depth);
      assertThat(down.peakTorqueNm())
          .as(label(n, cut))
          .isCloseTo(up.peakTorqueNm(), Percentage.withPercentage(0.1));
      assertThat(down.meanTorqueNm())
          .as(label(n, cut))
          .isCloseTo(up.meanTorqueNm(), Percentage.withPercentage(0.01));
    }
  }

  @Test
  void aVanishingCornerRadiusIsACylinder() {
    SplittableRandom random = new SplittableRandom(SEED + 4);
    for (int n = 0; n < 60; n++) {
      MillingCut cut = SampleCuts.random(random, new EdgeShape.Cylindrical());
      MillingCutter plain = cut.cutter();
      MillingCutter cornered =
          new MillingCutter(
              plain.diameterM(),
              plain.teeth(),
              plain.helixRad(),
              new EdgeShape.CornerRadius(1e-7),
              plain.axialSense());
      MillingCut rounded =
          new MillingCut(
              cornered,
              cut.engagement(),
              cut.feedPerToothM(),
              cut.specificForce(),
              cut.radialRatio(),
              cut.gripDiameterM());
      double depth = random.nextDouble(0.1, 2) * plain.diameterM();
      CutLoads sharp = MillingForces.prepare(cut).at(depth);
      CutLoads round = MillingForces.prepare(rounded).at(depth);
      assertThat(round.peakTorqueNm())
          .as(label(n, cut))
          .isCloseTo(sharp.peakTorqueNm(), Percentage.withPercentage(1.5));
      assertThat(round.meanTorqueNm())
          .as(label(n, cut))
          .isCloseTo(sharp.meanTorqueNm(), Percentage.withPercentage(0.2));
    }
  }

  private static void near(String label, double actual, double expected) {
    assertThat(actual)
        .as(label)
        .isCloseTo(expected, Offset.offset(1e-9 * Math.abs(expected) + 1e-9));
  }

  private static MillingCut with(MillingCut cut, SpecificForce force) {
    return new MillingCut(
        cut.cutter(),
        cut.engagement(),
        cut.feedPerToothM(),
        force,
        cut.radialRatio(),
        cut.gripDiameterM());
  }

  private static MillingCut with(MillingCut cut, MillingEngagement engagement) {
    return new MillingCut(
        cut.cutter(),
        engagement,
        cut.feedPerToothM(),
        cut.specificForce(),
        cut.radialRatio(),
        cut.gripDiameterM());
  }

  private static String label(int n, MillingCut cut) {
    return "seed " + SEED + " cut " + n + " " + cut;
  }
}
