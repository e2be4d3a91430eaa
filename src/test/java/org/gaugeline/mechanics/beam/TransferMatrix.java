package org.gaugeline.mechanics.beam;

import java.util.List;

/**
 * Frequencies of a clamped chain from the 4×4 transfer matrix of the Timoshenko beam: state [y, ψ,
 * M, Q], y′ = ψ + Q/κGA, ψ′ = M/EI, M′ = −Q − ρIω²ψ, Q′ = −ρAω²y; no elements, no mass matrix.
 * Exact for cylinders; cones are cut into many.
 */
final class TransferMatrix {
  private static final int CONE_CUTS = 80;
  private final List<ChainElement> elements;
  private final boolean euler;

  TransferMatrix(List<ChainElement> elements, boolean euler) {
    this.elements = elements;
    this.euler = euler;
  }

  /** Roots of the tip condition found by scanning upwards from a frequency known to be below. */
  double[] frequenciesHz(int count, double belowHz) {
    double[] roots = new double[count];
    int found = 0;
    double step = belowHz * 0.02;
    double low = belowHz * 0.5;
    double atLow = determinant(low);
    while (found < count) {
      double high = low + step;
      double atHigh = determinant(high);
      if (atLow * atHigh < 0) {
        roots[found++] = bisect(low, high, atLow);
      }
      low = high;
      atLow = atHigh;
    }
    return roots;
  }

  private double bisect(double from, double to, double atFrom) {
    double low = from;
    double high = to;
    for (int i = 0; i < 45; i++) {
      double middle = (low + high) / 2;
      if (determinant(middle) * atFrom > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private double determinant(double hz) {
    double omega2 = Math.pow(2 * Math.PI * hz, 2);
    double[][] columns = {{0, 0, 1, 0}, {0, 0, 0, 1}};
    for (ChainElement element : elements) {
      if (element instanceof ElasticJoint joint) {
        for (double[] c : columns) {
          c[0] += c[3] / joint.translationNPerM();
          c[1] += c[2] / joint.rotationNmPerRad();
        }
      } else if (element instanceof BeamSegment segment) {
        cross(segment, omega2, columns);
      }
    }
    return columns[0][2] * columns[1][3] - columns[0][3] * columns[1][2];
  }

  private void cross(BeamSegment s, double omega2, double[][] columns) {
    int cuts = s.startDiameterM() == s.endDiameterM() ? 1 : CONE_CUTS;
    for (int i = 0; i < cuts; i++) {
      double d = s.startDiameterM() + (s.endDiameterM() - s.startDiameterM()) * (i + 0.5) / cuts;
      double bend = 1 / Section.bendingStiffnessNm2(s, d);
      double shear = euler ? 0 : 1 / Section.shearStiffnessN(s, d);
      double mass = omega2 * Section.massKgPerM(s, d);
      double rotary = euler ? 0 : omega2 * Section.rotaryInertiaKgM(s, d);
      for (double[] c : columns) {
        exponential(c, s.lengthM() / cuts, cuts == 1 ? 8 : 1, bend, shear, mass, rotary);
      }
    }
  }

  /** Applies exp(A·l) to a state by its power series, in steps short enough to converge fast. */
  private static void exponential(
      double[] c, double l, int steps, double bend, double shear, double mass, double rotary) {
    double h = l / steps;
    for (int step = 0; step < steps; step++) {
      double[] term = c.clone();
      for (int k = 1; k <= 12; k++) {
        double f = h / k;
        term =
            new double[] {
              f * (term[1] + shear * term[3]),
              f * bend * term[2],
              f * (-term[3] - rotary * term[1]),
              -f * mass * term[0]
            };
        for (int i = 0; i < 4; i++) {
          c[i] += term[i];
        }
      }
    }
  }
}
