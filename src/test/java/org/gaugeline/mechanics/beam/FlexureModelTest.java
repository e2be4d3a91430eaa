package org.gaugeline.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class FlexureModelTest {
  /** NAFEMS FV5, deep pinned–pinned beam; the shear coefficient is our choice, see the table. */
  @Test
  void massMatrixPassesTheDeepBeamBenchmark() {
    JsonNode table = Reference.beam("deepPinnedBeam");
    double side = table.required("sideM").asDouble();
    double area = side * side;
    double inertia = area * area / 12;
    BeamMaterial steel = Reference.material(table);
    double bending = steel.youngPa() * inertia;
    double shear = table.required("shearCoefficient").asDouble() * steel.shearModulusPa() * area;
    int n = 120;
    double l = table.required("lengthM").asDouble() / n;
    double phi = 12 * bending / (shear * l * l);
    double[] m = new double[10];
    double rho = steel.densityKgPerM3();
    FlexureModel.fillMass(m, 0, l, phi, rho * area, rho * inertia);
    double[] hz =
        frequenciesHz(
            pinned(assemble(n, stiffness(bending, phi, l))), pinned(assemble(n, full(m))));
    double[] ours = {42.645, 148.151, 283.479};
    for (int i = 0; i < 3; i++) {
      double published = table.required("frequencyHz").get(i).asDouble();
      assertThat(hz[i]).as("mode %s", i).isCloseTo(published, withinPercentage(0.02));
      assertThat(hz[i]).as("mode %s", i).isCloseTo(ours[i], withinPercentage(0.01));
    }
  }

  @Test
  void flexibilityIsTheInverseOfTheStiffnessMatrix() {
    long seed = 61;
    SplittableRandom random = new SplittableRandom(seed);
    BeamSegment bar = BeamSegment.cylinder(0.2, 0.03, RandomChains.STEEL);
    FlexureModel model = new FlexureModel();
    int n = 8;
    model.mesh(BeamChain.of(bar), n);
    double bending = Section.bendingStiffnessNm2(bar, 0.03);
    double l = 0.2 / n;
    double phi = 12 * bending / (Section.shearStiffnessN(bar, 0.03) * l * l);
    RealMatrix k = assemble(n, stiffness(bending, phi, l));
    double[] force = random.doubles(2L * (n + 1), -1, 1).toArray();
    double[] shape = new double[force.length];
    model.applyFlexibility(force, 0, shape, 0);
    double[] back = k.operate(shape);
    for (int i = 2; i < force.length; i++) {
      assertThat(back[i]).as("seed %s row %s", seed, i).isCloseTo(force[i], within(1e-8));
    }
  }

  /** A rigid translation and rotation must meet the mass and moment of inertia of the bar. */
  @Test
  void rigidMotionHasTheWholeMass() {
    BeamSegment bar = BeamSegment.cylinder(0.2, 0.03, RandomChains.STEEL);
    BeamChain chain = BeamChain.of(bar);
    FlexureModel model = new FlexureModel();
    model.mesh(chain, 7);
    double[] turn = new double[model.vectorLength()];
    double[] image = new double[turn.length];
    for (int i = 0; i <= model.elements; i++) {
      turn[2 * i] = 0.2 * i / model.elements;
      turn[2 * i + 1] = 1;
    }
    model.multiplyMass(turn, 0, image, 0);
    double sum = 0;
    for (int i = 0; i < turn.length; i++) {
      sum += turn[i] * image[i];
    }
    double mass = chain.massKg();
    double expected = mass * (0.2 * 0.2 / 3 + 0.03 * 0.03 / 16);
    assertThat(sum).isCloseTo(expected, within(1e-12 * expected));
  }

  private static double[][] stiffness(double bending, double phi, double l) {
    double a = bending / (l * l * l * (1 + phi));
    double[][] k = {
      {12, 6 * l, -12, 6 * l},
      {6 * l, (4 + phi) * l * l, -6 * l, (2 - phi) * l * l},
      {-12, -6 * l, 12, -6 * l},
      {6 * l, (2 - phi) * l * l, -6 * l, (4 + phi) * l * l}
    };
    return new Array2DRowRealMatrix(k).scalarMultiply(a).getData();
  }

  private static double[][] full(double[] m) {
    return new double[][] {
      {m[0], m[1], m[2], m[3]},
      {m[1], m[4], m[5], m[6]},
      {m[2], m[5], m[7], m[8]},
      {m[3], m[6], m[8], m[9]}
    };
  }

  private static RealMatrix assemble(int n, double[][] element) {
    RealMatrix sum = MatrixUtils.createRealMatrix(2 * (n + 1), 2 * (n + 1));
    for (int e = 0; e < n; e++) {
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          sum.addToEntry(2 * e + i, 2 * e + j, element[i][j]);
        }
      }
    }
    return sum;
  }

  private static RealMatrix pinned(RealMatrix free) {
    int last = free.getRowDimension() - 2;
    int[] kept = java.util.stream.IntStream.range(1, last + 2).filter(i -> i != last).toArray();
    return free.getSubMatrix(kept, kept);
  }

  private static double[] frequenciesHz(RealMatrix k, RealMatrix m) {
    RealMatrix lower = new CholeskyDecomposition(k, 1e-9, 1e-12).getL();
    RealMatrix inverse = MatrixUtils.inverse(lower);
    RealMatrix a = inverse.multiply(m).multiply(inverse.transpose());
    RealMatrix even = a.add(a.transpose()).scalarMultiply(0.5);
    double[] values = new EigenDecompositionSymmetric(even).getEigenvalues();
    Arrays.sort(values);
    double[] hz = new double[3];
    for (int i = 0; i < 3; i++) {
      hz[i] = 1 / (2 * Math.PI * Math.sqrt(values[values.length - 1 - i]));
    }
    return hz;
  }
}
