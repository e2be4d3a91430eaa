package org.gaugeline.mechanics.beam;

/**
 * A growing set of deflections of one meshed chain, orthonormal in M, each with the nodal loads p =
 * Kv that cause it. A vector that adds nothing is left out.
 */
final class RitzBasis {
  /** Part of a vector, in M, that must be left when the others are taken out of it. */
  private static final double LEAST_NEW = 1e-6;

  /** Share of what was taken out, as squares, below which the rest has lost three digits. */
  private static final double MUCH_TAKEN = 1e-6;

  final FlexureModel model;
  final int stride;
  final double[][] deflection;
  private final double[][] load;
  private final double[][] image;
  int size;

  RitzBasis(FlexureModel model, int most) {
    this.model = model;
    this.stride = model.vectorLength();
    deflection = new double[most][stride];
    load = new double[most][stride];
    image = new double[most][stride];
  }

  /** Adds the deflection K⁻¹p under nodal loads; false if it was there already. */
  boolean addUnder(double[] p) {
    if (size == deflection.length) {
      throw new IllegalStateException("there is room for " + size + " vectors only");
    }
    System.arraycopy(p, 0, load[size], 0, stride);
    model.applyFlexibility(p, 0, deflection[size], 0);
    double taken = subtractOthers();
    double left = normalSquare();
    if (left < MUCH_TAKEN * taken) {
      // Once more, because rounding leaves much of nearly parallel vectors.
      subtractOthers();
      left = normalSquare();
    }
    double norm = Math.sqrt(left);
    if (!(norm > LEAST_NEW * Math.sqrt(taken + left))) {
      return false;
    }
    scale(1 / norm, deflection[size]);
    scale(1 / norm, load[size]);
    scale(1 / norm, image[size]);
    size++;
    return true;
  }

  /** Square of the norm in M of the next vector, of which it keeps the image M v. */
  private double normalSquare() {
    model.multiplyMass(deflection[size], 0, image[size], 0);
    return Math.max(0, Products.dot(stride, image[size], 0, deflection[size], 0));
  }

  private static void scale(double by, double[] vector) {
    for (int k = 0; k < vector.length; k++) {
      vector[k] *= by;
    }
  }

  /** Takes the others out of the next vector; returns the square of what it was of them. */
  private double subtractOthers() {
    double square = 0;
    for (int i = 0; i < size; i++) {
      double c = Products.dot(stride, image[i], 0, deflection[size], 0);
      square += c * c;
      subtract(c, deflection[i], deflection[size]);
      subtract(c, load[i], load[size]);
    }
    return square;
  }

  private static void subtract(double c, double[] other, double[] from) {
    for (int k = 0; k < from.length; k++) {
      from[k] -= c * other[k];
    }
  }

  /** The stiffness VᵀKV, row by row. */
  double[] stiffness() {
    double[] k = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double entry = Products.dot(stride, deflection[j], 0, load[i], 0);
        k[i * size + j] = entry;
        k[j * size + i] = entry;
      }
    }
    return k;
  }
}
