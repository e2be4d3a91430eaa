package org.gaugeline.mechanics.beam;

/**
 * A growing set of deflections of one meshed chain, orthonormal in M, each with the nodal loads p =
 * Kv that cause it. A vector that adds nothing is left out.
 */
final class RitzBasis {
  /** Part of a vector, in M, that must be left when the others are taken out of it. */
  private static final double LEAST_NEW = 1e-6;

  final FlexureModel model;
  final int stride;
  final double[] deflection;
  final double[] load;
  private final double[] image;
  private final int most;
  int size;

  RitzBasis(FlexureModel model, int most) {
    this.model = model;
    this.stride = model.vectorLength();
    this.most = most;
    deflection = new double[most * stride];
    load = new double[most * stride];
    image = new double[most * stride];
  }

  /** Adds the deflection K⁻¹p under nodal loads; false if it was there already. */
  boolean addUnder(double[] p) {
    if (size == most) {
      throw new IllegalStateException("there is room for " + most + " vectors only");
    }
    int at = size * stride;
    System.arraycopy(p, 0, load, at, stride);
    model.applyFlexibility(load, at, deflection, at);
    double whole = norm(at);
    // Once more, because the first pass leaves what rounding makes of nearly parallel vectors.
    subtractOthers(at);
    subtractOthers(at);
    double left = norm(at);
    if (!(left > LEAST_NEW * whole)) {
      return false;
    }
    double scale = 1 / left;
    for (int k = at; k < at + stride; k++) {
      deflection[k] *= scale;
      load[k] *= scale;
      image[k] *= scale;
    }
    size++;
    return true;
  }

  private double norm(int at) {
    model.multiplyMass(deflection, at, image, at);
    return Math.sqrt(Math.max(0, dot(image, at, deflection, at)));
  }

  private void subtractOthers(int at) {
    for (int i = 0; i < size; i++) {
      int other = i * stride;
      double c = dot(image, other, deflection, at);
      for (int k = 0; k < stride; k++) {
        deflection[at + k] -= c * deflection[other + k];
        load[at + k] -= c * load[other + k];
      }
    }
  }

  /** The stiffness VᵀKV, row by row. */
  double[] stiffness() {
    double[] k = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double entry =
            (dot(deflection, i * stride, load, j * stride)
                    + dot(deflection, j * stride, load, i * stride))
                / 2;
        k[i * size + j] = entry;
        k[j * size + i] = entry;
      }
    }
    return k;
  }

  private double dot(double[] a, int ao, double[] b, int bo) {
    double even = 0;
    double odd = 0;
    for (int k = 0; k < stride; k += 2) {
      even += a[ao + k] * b[bo + k];
      odd += a[ao + k + 1] * b[bo + k + 1];
    }
    return even + odd;
  }
}
