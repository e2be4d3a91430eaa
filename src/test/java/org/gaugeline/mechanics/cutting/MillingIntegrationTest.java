package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The tables against an independent fine integration. */
class MillingIntegrationTest {
  private static final long SEED = 4711L;

  @Test
  void tabulatedPeaksAgreeForStraightEdges() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int n = 0; n < 30; n++) {
      EdgeShape edge =
          n % 3 == 0
              ? new EdgeShape.Lead(random.nextDouble(0.3, Math.PI / 2))
              : new EdgeShape.Cylindrical();
      compare(SampleCuts.random(random, edge), random.nextDouble(0.05, 2.5), n, 1.0, 0.2);
    }
  }

  @Test
  void tabulatedPeaksAgreeForRoundedEdges() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int n = 0; n < 20; n++) {
      EdgeShape edge = n % 2 == 0 ? new EdgeShape.Ball() : new EdgeShape.CornerRadius(0.8e-3);
      compare(SampleCuts.random(random, edge), random.nextDouble(0.05, 1.5), n, 3.0, 1.5);
    }
  }

  /** Tabulated for one depth above the corner, where few slices must do. */
  @Test
  void peaksAboveACornerAgreeAtOneDepth() {
    SplittableRandom random = new SplittableRandom(SEED + 2);
    for (int n = 0; n < 20; n++) {
      double radius = random.nextDouble(0.2e-3, 2e-3);
      MillingCut cut = SampleCuts.random(random, new EdgeShape.CornerRadius(radius));
      double depth = radius + random.nextDouble(0.01, 1) * cut.cutter().diameterM();
      CutLoads loads = MillingForces.once(cut, depth);
      compare(loads, cut, depth, n, 3.0, 0.5);
    }
  }

  private static void compare(
      MillingCut cut, double depthPerDiameter, int n, double peakPercent, double meanPercent) {
    double depth = depthPerDiameter * cut.cutter().diameterM();
    compare(MillingForces.prepare(cut).at(depth), cut, depth, n, peakPercent, meanPercent);
  }

  private static void compare(
      CutLoads loads, MillingCut cut, double depth, int n, double peakPercent, double meanPercent) {
    FineIntegration fine = FineIntegration.of(cut, depth, 24);
    String label = "seed " + SEED + " cut " + n + " " + cut + " depth " + depth;
    assertThat(loads.meanTorqueNm())
        .as(label)
        .isCloseTo(fine.meanTorqueNm, Percentage.withPercentage(meanPercent));
    assertThat(loads.peakTorqueNm())
        .as(label)
        .isCloseTo(fine.peakTorqueNm, Percentage.withPercentage(peakPercent));
    assertThat(loads.peakRadialForceN())
        .as(label)
        .isCloseTo(fine.peakRadialN, Percentage.withPercentage(peakPercent));
    Offset<Double> lateral = Offset.offset(peakPercent / 100 * 2 * loads.peakRadialForceN());
    assertThat(loads.peakWallNormalForceN()).as(label).isCloseTo(fine.peakWallN, lateral);
    assertThat(loads.meanFeedForceN())
        .as(label)
        .isCloseTo(fine.meanFeedN, Offset.offset(meanPercent / 100 * loads.peakRadialForceN()));
    Offset<Double> axial = Offset.offset(peakPercent / 100 * loads.peakTangentialForceN());
    assertThat(loads.peakAxialPullN()).as(label).isCloseTo(fine.peakPullN, axial);
    assertThat(loads.peakAxialPushN()).as(label).isCloseTo(fine.peakPushN, axial);
  }
}
