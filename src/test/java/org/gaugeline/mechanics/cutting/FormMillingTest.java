package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FormMillingTest {
  private static final long SEED = 67;
  private static final SpecificForce CONSTANT =
      new SpecificForce(2e9, 0, 1, 1e-4, new ThinChipRoute.PowerLaw());
  private static final SpecificForce STEEL =
      new SpecificForce(2e9, 0.25, 1, 1e-4, new ThinChipRoute.PowerLaw());

  /** ISO 68-1 by hand: depth 5/8 of the triangle, ¾ wide at the minor, ⅛ at the major diameter. */
  @Test
  void threadProfileIsThatOfTheStandard() {
    assertThat(FormEdge.THREAD_DEPTH_PER_PITCH).isCloseTo(0.5413, within(5e-5));
    double trapezoid = 0.541266 * (0.75 + 0.125) / 2;
    assertThat(FormEdge.THREAD_AREA_PER_PITCH_SQUARED).isCloseTo(trapezoid, within(1e-6));
    double pitch = 0.0015;
    double projected = 0;
    for (FormEdge.Slice slice : FormEdge.internalThread(0.0075, 0.010, pitch, pitch).slices()) {
      projected += slice.lengthM() * slice.leadSine();
    }
    assertThat(projected).isCloseTo(0.75 * pitch, within(1e-9));
  }

  /** The groove's volume per turn of the thread over the path of the cutter's centre. */
  @Test
  void threadSectionIsTheVolumeOfTheGrooveOverThePath() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      double major = 0.006 + 0.05 * random.nextDouble();
      double pitch = major * (0.05 + 0.1 * random.nextDouble());
      double minor = major - 2 * FormEdge.THREAD_DEPTH_PER_PITCH * pitch;
      double mill = minor * (0.5 + 0.4 * random.nextDouble());
      int pitches = 1 + random.nextInt(10);
      double volume = 0;
      int rings = 20_000;
      for (int k = 0; k < rings; k++) {
        double r = minor / 2 + (major - minor) / 2 * (k + 0.5) / rings;
        double width = pitch / 8 + 2 * (major / 2 - r) * Math.tan(Math.PI / 6);
        volume += 2 * Math.PI * r * width * (major - minor) / 2 / rings;
      }
      double path = Math.PI * (major - mill);
      assertThat(FormEdge.internalThread(mill, major, pitch, pitches * pitch).sectionM2())
          .as("seed %d round %d", SEED, i)
          .isCloseTo(pitches * volume / path, within(2e-3 * pitches * volume / path));
    }
  }

  /** A chamfer is half of its rectangle. */
  @Test
  void chamferSectionIsATriangle() {
    assertThat(FormEdge.chamfer(0.006, 0.001, 0.0015).sectionM2())
        .isCloseTo(0.75e-6, within(1e-15));
  }

  /** Conservation of energy at a specific force that does not depend on the chip. */
  @Test
  void powerIsSpecificForceTimesRemovalRate() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      FormEdge edge = edge(random);
      int z = 1 + random.nextInt(8);
      double fz = 1e-5 + 1e-4 * random.nextDouble();
      FormMilling loads = FormMilling.of(edge, z, fz, CONSTANT, 0.3, random.nextBoolean());
      double perTurn = CONSTANT.kc11Pa() * edge.sectionM2() * fz * z;
      assertThat(2 * Math.PI * loads.meanTorqueNm())
          .as("seed %d round %d", SEED, i)
          .isCloseTo(perTurn, within(4e-3 * perTurn));
    }
  }

  /** Second calculation: every point of a cone that still stands in the corner, summed. */
  @Test
  void chamferLoadsAreThoseOfPointsSummedOneByOne() {
    double middle = 0.006;
    double height = 0.0012;
    double width = 0.0009;
    double fz = 4e-5;
    FormMilling loads =
        FormMilling.of(FormEdge.chamfer(middle, height, width), 1, fz, STEEL, 0.3, true);
    int n = 1500;
    double edge = Math.hypot(height, width);
    double mean = 0;
    double peak = 0;
    double push = 0;
    double turn = Math.PI / 2;
    for (int i = 0; i < n; i++) {
      double theta = turn * (i + 0.5) / n;
      double torque = 0;
      double tangential = 0;
      for (int k = 0; k < n; k++) {
        double share = (k + 0.5) / n;
        double r = middle / 2 - width / 2 + width * share;
        boolean stands = r * Math.cos(theta) > r - width * share;
        if (stands) {
          double h = fz * Math.sin(theta) * height / edge;
          double force = STEEL.forcePerWidthNPerM(h) * edge / n;
          torque += force * r;
          tangential += force;
        }
      }
      mean += torque * turn / n / (2 * Math.PI);
      peak = Math.max(peak, torque);
      push = Math.max(push, 0.3 * tangential * width / edge);
    }
    assertThat(loads.meanTorqueNm()).isCloseTo(mean, within(0.01 * mean));
    assertThat(loads.peakTorqueNm()).isCloseTo(peak, within(0.02 * peak));
    assertThat(loads.peakPushN()).isCloseTo(push, within(0.02 * push));
  }

  @Test
  void loadsGrowWithLengthAndFeedAndScaleWithSize() {
    FormMilling one = thread(0.0015, 5e-5);
    FormMilling ten = thread(0.015, 5e-5);
    assertThat(ten.peakLateralForceN()).isCloseTo(10 * one.peakLateralForceN(), within(1e-6));
    assertThat(ten.meanTorqueNm()).isCloseTo(10 * one.meanTorqueNm(), within(1e-9));
    assertThat(thread(0.015, 6e-5).peakTorqueNm()).isGreaterThan(ten.peakTorqueNm());
    FormMilling small =
        FormMilling.of(FormEdge.chamfer(0.006, 0.001, 0.001), 3, 4e-5, CONSTANT, 0.3, true);
    FormMilling twice =
        FormMilling.of(FormEdge.chamfer(0.012, 0.002, 0.002), 3, 8e-5, CONSTANT, 0.3, true);
    assertThat(twice.peakLateralForceN()).isCloseTo(4 * small.peakLateralForceN(), within(1e-6));
    assertThat(twice.meanTorqueNm()).isCloseTo(8 * small.meanTorqueNm(), within(1e-9));
  }

  /** Flanks of a thread balance along the axis, a cone does not (statics). */
  @Test
  void onlyConesPush() {
    assertThat(thread(0.015, 5e-5).peakPushN()).isZero();
    assertThat(
            FormMilling.of(FormEdge.chamfer(0.006, 0.001, 0.001), 3, 4e-5, STEEL, 0.3, true)
                .peakPushN())
        .isPositive();
  }

  /** Up and down cut the same chip, so that only the side forces differ; down drags along. */
  @Test
  void directionTurnsTheSideForceOnly() {
    FormEdge edge = FormEdge.chamfer(0.006, 0.001, 0.001);
    FormMilling down = FormMilling.of(edge, 3, 4e-5, STEEL, 0.3, true);
    FormMilling up = FormMilling.of(edge, 3, 4e-5, STEEL, 0.3, false);
    assertThat(up.meanTorqueNm()).isEqualTo(down.meanTorqueNm());
    assertThat(down.meanFeedForceN()).isNegative();
    assertThat(up.meanFeedForceN()).isPositive();
    assertThat(down.peakWallForceN()).isGreaterThan(up.peakWallForceN());
  }

  @Test
  void aMillThatDoesNotEnterTheHoleIsRefused() {
    assertThatThrownBy(() -> FormEdge.internalThread(0.0085, 0.010, 0.0015, 0.0015))
        .hasMessageContaining("toolDiameterM");
  }

  private static FormMilling thread(double lengthM, double fz) {
    return FormMilling.of(
        FormEdge.internalThread(0.0075, 0.010, 0.0015, lengthM), 4, fz, STEEL, 0.3, true);
  }

  private static FormEdge edge(Random random) {
    if (random.nextBoolean()) {
      double middle = 0.004 + 0.01 * random.nextDouble();
      double width = middle * (0.05 + 0.5 * random.nextDouble());
      return FormEdge.chamfer(middle, width * (0.3 + 2 * random.nextDouble()), width);
    }
    double major = 0.006 + 0.05 * random.nextDouble();
    double pitch = major * (0.05 + 0.1 * random.nextDouble());
    double minor = major - 2 * FormEdge.THREAD_DEPTH_PER_PITCH * pitch;
    double mill = minor * (0.5 + 0.35 * random.nextDouble());
    return FormEdge.internalThread(mill, major, pitch, pitch * (1 + random.nextInt(8)));
  }
}
