package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class EndCutTest {
  private static final long SEED = 61;

  /** Conservation of energy: torque times speed is kc times the volume that the step loses. */
  @Test
  void powerIsSpecificForceTimesRemovalRate() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      double d = 0.005 + 0.06 * random.nextDouble();
      double ae = d * (0.02 + 0.98 * random.nextDouble());
      int z = 1 + random.nextInt(8);
      double fz = 1e-5 + 2e-4 * random.nextDouble();
      double kcPa = 1e9 + 2e9 * random.nextDouble();
      double omega = 100 + 900 * random.nextDouble();
      EndCut cut = new EndCut(d, z, ae);
      double feedRate = fz * z * omega / (2 * Math.PI);
      assertThat(cut.meanTorqueNm(kcPa * fz) * omega)
          .as("seed %d round %d", SEED, i)
          .isCloseTo(
              kcPa * cut.removalRateM3PerS(feedRate),
              within(1e-9 * kcPa * cut.areaM2() * feedRate));
    }
  }

  /** Geometry of the circle: a full plunge, one over half the cutter. */
  @Test
  void areasAreThoseOfTheCircle() {
    assertThat(new EndCut(0.02, 2, 0.02).areaM2()).isCloseTo(Math.PI * 1e-4, within(1e-12));
    assertThat(new EndCut(0.02, 2, 0.01).areaM2()).isCloseTo(Math.PI * 0.5e-4, within(1e-12));
  }

  /** Second calculation: points of a polar grid that lie in the step, summed one by one. */
  @Test
  void loadsAreThoseOfPointsSummedOneByOne() {
    Random random = new Random(SEED);
    for (int i = 0; i < 12; i++) {
      double d = 0.01 + 0.04 * random.nextDouble();
      double ae = d * (0.1 + 0.85 * random.nextDouble());
      int z = 1 + random.nextInt(5);
      EndCut cut = new EndCut(d, z, ae);
      Points points = new Points(d / 2, ae, z);
      String as = String.format("seed %d round %d: D %.4f, ae %.4f, z %d", SEED, i, d, ae, z);
      assertThat(cut.meanTorqueNm(1))
          .as(as)
          .isCloseTo(points.meanTorque, relative(points.meanTorque));
      assertThat(cut.peakTorqueNm(1))
          .as(as)
          .isCloseTo(points.peakTorque, relative(points.peakTorque));
      assertThat(cut.peakLateralForceN(1)).as(as).isCloseTo(points.lateral, within(0.012 * d));
      assertThat(cut.peakWallForceN(1)).as(as).isCloseTo(points.wall, within(0.012 * d));
      assertThat(cut.mostWidthM()).as(as).isCloseTo(points.most, within(0.012 * d));
      assertThat(cut.leastWidthM()).as(as).isCloseTo(points.least, within(0.012 * d));
      assertThat(cut.meanWidthM()).as(as).isBetween(cut.leastWidthM(), cut.mostWidthM());
    }
  }

  private static org.assertj.core.data.Offset<Double> relative(double value) {
    return within(0.012 * value);
  }

  /** Symmetry: teeth evenly around a full plunge balance; a single one does not. */
  @Test
  void aFullPlungeIsBalanced() {
    assertThat(new EndCut(0.02, 3, 0.02).peakLateralForceN(1e5)).isCloseTo(0, within(1e-9));
    assertThat(new EndCut(0.02, 1, 0.02).peakLateralForceN(1e5)).isCloseTo(1000, within(1e-6));
    assertThat(new EndCut(0.02, 3, 0.02).mostWidthM()).isCloseTo(0.03, within(1e-12));
    assertThat(new EndCut(0.02, 3, 0.02).leastWidthM()).isCloseTo(0.03, within(1e-12));
  }

  @Test
  void loadsGrowWithTheStepAndScaleWithTheSize() {
    EndCut last = new EndCut(0.02, 3, 0.0005);
    for (int i = 2; i <= 40; i++) {
      EndCut next = new EndCut(0.02, 3, 0.0005 * i);
      assertThat(next.meanTorqueNm(1)).isGreaterThan(last.meanTorqueNm(1));
      assertThat(next.peakTorqueNm(1)).isGreaterThanOrEqualTo(last.peakTorqueNm(1) * (1 - 1e-12));
      assertThat(next.mostWidthM()).isGreaterThanOrEqualTo(last.mostWidthM() * (1 - 1e-12));
      last = next;
    }
    EndCut twice = new EndCut(0.04, 3, 0.012);
    EndCut once = new EndCut(0.02, 3, 0.006);
    assertThat(twice.peakTorqueNm(1)).isCloseTo(4 * once.peakTorqueNm(1), within(1e-12));
    assertThat(twice.peakLateralForceN(1)).isCloseTo(2 * once.peakLateralForceN(1), within(1e-12));
  }

  @Test
  void aStepWiderThanTheCutterIsRefused() {
    assertThatThrownBy(() -> new EndCut(0.02, 2, 0.021)).hasMessageContaining("radialDepthM");
  }

  /** The step's edge at x = R − ae; a tooth is a ray of points from the axis outwards. */
  private static final class Points {
    private static final int TURN = 1200;
    private static final int RAY = 1200;
    private double meanTorque;
    private double peakTorque;
    private double lateral;
    private double wall;
    private double most;
    private double least = Double.MAX_VALUE;

    Points(double radius, double ae, int teeth) {
      double dr = radius / RAY;
      for (int turn = 0; turn < TURN; turn++) {
        double torque = 0;
        double x = 0;
        double y = 0;
        double width = 0;
        for (int tooth = 0; tooth < teeth; tooth++) {
          double phi = 2 * Math.PI * ((double) turn / TURN + (double) tooth / teeth);
          for (int i = 0; i < RAY; i++) {
            double r = (i + 0.5) * dr;
            if (r * Math.cos(phi) > radius - ae) {
              torque += r * dr;
              x += dr * Math.sin(phi);
              y -= dr * Math.cos(phi);
              width += dr;
            }
          }
        }
        meanTorque += torque / TURN;
        peakTorque = Math.max(peakTorque, torque);
        lateral = Math.max(lateral, Math.hypot(x, y));
        wall = Math.max(wall, Math.abs(x));
        most = Math.max(most, width);
        least = Math.min(least, width);
      }
    }
  }
}
