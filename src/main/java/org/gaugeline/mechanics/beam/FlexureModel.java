package org.gaugeline.mechanics.beam;

import java.util.Arrays;

/**
 * Two-node Timoshenko elements of one chain, as operators on nodal vectors [w0, θ0, w1, θ1, …].
 *
 * <p>A clamped chain is statically determinate, so the inverse of its stiffness matrix is applied
 * by summing forces from the tip and deformations from the base: no matrix is stored or factorised,
 * and the statics of cones stay exact whatever the mesh. Mass is consistent, translational and
 * rotary, with φ = 12EI/(κGA·l²) (matrices as in Schmitz and Duncan 2005; Przemieniecki 1968).
 */
final class FlexureModel {
  private static final int ENTRIES = 10;

  int elements;
  double[] length = new double[0];
  private double[] flex0 = length;
  private double[] flex1 = length;
  private double[] flex2 = length;
  private double[] mass = length;
  private double[] force = length;

  int vectorLength() {
    return 2 * (elements + 1);
  }

  /** Meshes a chain; cylinders longer than their share of the target are parted evenly. */
  void mesh(BeamChain chain, int targetElements) {
    double longest = chain.lengthM() / targetElements;
    reserve(chain.rows + targetElements);
    elements = 0;
    double[] t = chain.table;
    for (int at = 0, end = chain.rows * ChainRows.STRIDE; at < end; at += ChainRows.STRIDE) {
      int parts = 1;
      if (t[at + ChainRows.KIND] == ChainRows.UNIFORM) {
        parts = Math.max(1, (int) Math.ceil(t[at + ChainRows.LENGTH] / longest - 1e-6));
      }
      addElements(t, at, parts);
    }
  }

  private void addElements(double[] t, int at, int parts) {
    int e = elements;
    double share = 1.0 / parts;
    double l = t[at + ChainRows.LENGTH] * share;
    double shear = t[at + ChainRows.SHEAR] * share;
    length[e] = l;
    flex0[e] = t[at + ChainRows.FLEX_0] * share;
    flex1[e] = t[at + ChainRows.FLEX_1] * share * share;
    flex2[e] = t[at + ChainRows.FLEX_2] * share * share * share + shear;
    if (l == 0) {
      Arrays.fill(mass, ENTRIES * e, ENTRIES * (e + 1), 0);
    } else {
      double phi = 12 * shear / (flex0[e] * l * l);
      fillMass(mass, ENTRIES * e, l, phi, t[at + ChainRows.MASS], t[at + ChainRows.ROTARY]);
      double slope = t[at + ChainRows.MASS_SLOPE];
      addTaper(mass, ENTRIES * e, l, slope * t[at + ChainRows.MASS] * l);
    }
    for (int i = 1; i < parts; i++) {
      length[e + i] = l;
      flex0[e + i] = flex0[e];
      flex1[e + i] = flex1[e];
      flex2[e + i] = flex2[e];
      System.arraycopy(mass, ENTRIES * e, mass, ENTRIES * (e + i), ENTRIES);
    }
    elements += parts;
  }

  /**
   * The upper triangle of the consistent mass matrix of a uniform element, row by row: m11, m12,
   * m13, m14, m22, m23, m24, m33, m34, m44.
   */
  static void fillMass(double[] m, int at, double l, double phi, double rhoA, double rhoI) {
    double scale = 1 / ((1 + phi) * (1 + phi));
    double a = rhoA * l * scale;
    double r = rhoI / l * scale;
    double p2 = phi * phi;
    double m12 = l * (a * (11.0 / 210 + 11.0 / 120 * phi + p2 / 24) + r * (0.1 - 0.5 * phi));
    double m14 = l * (-a * (13.0 / 420 + 3.0 / 40 * phi + p2 / 24) + r * (0.1 - 0.5 * phi));
    double l2 = l * l;
    m[at] = a * (13.0 / 35 + 0.7 * phi + p2 / 3) + r * 1.2;
    m[at + 1] = m12;
    m[at + 2] = a * (9.0 / 70 + 0.3 * phi + p2 / 6) - r * 1.2;
    m[at + 3] = m14;
    m[at + 4] = l2 * (a * (1.0 / 105 + phi / 60 + p2 / 120) + r * (2.0 / 15 + phi / 6 + p2 / 3));
    m[at + 5] = -m14;
    m[at + 6] = l2 * (-a * (1.0 / 140 + phi / 60 + p2 / 120) - r * (1.0 / 30 + phi / 6 - p2 / 6));
    m[at + 7] = m[at];
    m[at + 8] = -m12;
    m[at + 9] = m[at + 4];
  }

  /** Moves mass towards the heavier end of a tapered element (cubic shapes, linear ρA). */
  private static void addTaper(double[] m, int at, double l, double shifted) {
    m[at] += shifted / 5;
    m[at + 1] += shifted * l * 2 / 105;
    m[at + 3] -= shifted * l / 420;
    m[at + 4] += shifted * l * l / 420;
    m[at + 5] -= shifted * l / 420;
    m[at + 7] -= shifted / 5;
    m[at + 8] += shifted * l * 2 / 105;
    m[at + 9] -= shifted * l * l / 420;
  }

  /** p ← M x. */
  void multiplyMass(double[] x, int xo, double[] p, int po) {
    double leftW = 0;
    double leftT = 0;
    double w0 = x[xo];
    double t0 = x[xo + 1];
    for (int e = 0, m = 0; e < elements; e++, m += ENTRIES) {
      double w1 = x[xo + 2 * e + 2];
      double t1 = x[xo + 2 * e + 3];
      double m12 = mass[m + 1];
      double m13 = mass[m + 2];
      double m14 = mass[m + 3];
      double m23 = mass[m + 5];
      double m24 = mass[m + 6];
      double m34 = mass[m + 8];
      p[po + 2 * e] = leftW + mass[m] * w0 + m12 * t0 + m13 * w1 + m14 * t1;
      p[po + 2 * e + 1] = leftT + m12 * w0 + mass[m + 4] * t0 + m23 * w1 + m24 * t1;
      leftW = m13 * w0 + m23 * t0 + mass[m + 7] * w1 + m34 * t1;
      leftT = m14 * w0 + m24 * t0 + m34 * w1 + mass[m + 9] * t1;
      w0 = w1;
      t0 = t1;
    }
    p[po + 2 * elements] = leftW;
    p[po + 2 * elements + 1] = leftT;
  }

  /** r ← K⁻¹ p with the base clamped. */
  void applyFlexibility(double[] p, int po, double[] r, int ro) {
    double shear = 0;
    double moment = 0;
    for (int e = elements - 1; e >= 0; e--) {
      shear += p[po + 2 * e + 2];
      moment += p[po + 2 * e + 3];
      force[2 * e] = shear;
      force[2 * e + 1] = moment;
      moment += shear * length[e];
    }
    double w = 0;
    double theta = 0;
    r[ro] = 0;
    r[ro + 1] = 0;
    for (int e = 0; e < elements; e++) {
      double v = force[2 * e];
      double m = force[2 * e + 1];
      w += length[e] * theta + flex1[e] * m + flex2[e] * v;
      theta += flex0[e] * m + flex1[e] * v;
      r[ro + 2 * e + 2] = w;
      r[ro + 2 * e + 3] = theta;
    }
  }

  /**
   * Adds to a row what makes its product with a nodal vector the deflection at a place: cubic
   * between nodes, shear left out; at a joint the side towards the base.
   */
  void addShapeAt(double fromBaseM, double[] row) {
    double start = 0;
    int e = 0;
    while (e + 1 < elements && start + length[e] < fromBaseM) {
      start += length[e];
      e++;
    }
    double l = length[e];
    double t = l > 0 ? Math.min(1, (fromBaseM - start) / l) : 0;
    double rest = 1 - t;
    row[2 * e] += rest * rest * (1 + 2 * t);
    row[2 * e + 1] += t * rest * rest * l;
    row[2 * e + 2] += t * t * (1 + 2 * rest);
    row[2 * e + 3] -= t * t * rest * l;
  }

  /** ∫x^power dx/EI of an element from its tip end, with shear for power 2. */
  double tipFlexibility(int element, int power) {
    return (power == 0 ? flex0 : power == 1 ? flex1 : flex2)[element];
  }

  void copyMass(int element, double[] target, int at) {
    System.arraycopy(mass, ENTRIES * element, target, at, ENTRIES);
  }

  private void reserve(int most) {
    if (length.length >= most) {
      return;
    }
    length = new double[most];
    flex0 = new double[most];
    flex1 = new double[most];
    flex2 = new double[most];
    mass = new double[ENTRIES * most];
    force = new double[2 * most];
  }
}
