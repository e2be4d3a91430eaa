package org.gaugeline.mechanics.beam;

import java.util.Arrays;

/**
 * Lanczos vectors of K⁻¹M of one chain, orthonormal in M, with their tridiagonal matrix. Reused
 * from chain to chain; grows when a chain needs more room.
 */
final class LanczosBasis {
  static final int MOST_STEPS = 24;

  /** Diagonal of the tridiagonal matrix. */
  final double[] alpha = new double[MOST_STEPS];

  /** Its off-diagonal; the last entry in use measures what the basis leaves out. */
  final double[] beta = new double[MOST_STEPS];

  /** Deflection of the tip in each vector. */
  final double[] tip = new double[MOST_STEPS];

  final FlexureModel model = new FlexureModel();
  private double[] basis = new double[0];
  private double[] images = new double[0];
  private int stride;

  /**
   * Meshes a chain and sets the first vector, the deflection under a force at the tip.
   *
   * @param steps how many are meant to follow at most, up to {@link #MOST_STEPS}
   */
  void start(BeamChain chain, int targetElements, int steps) {
    model.mesh(chain, targetElements);
    stride = model.vectorLength();
    reserve(steps);
    Arrays.fill(images, 0, stride, 0);
    images[stride - 2] = 1;
    model.applyFlexibility(images, 0, basis, 0);
    model.multiplyMass(basis, 0, images, 0);
    normalise(0);
  }

  private void reserve(int steps) {
    int needed = stride * (steps + 1);
    if (basis.length < needed) {
      basis = new double[needed];
      images = new double[needed];
    }
  }

  /** Writes the inertia M v of a vector over ω². */
  void copyInertia(int vector, double[] target) {
    System.arraycopy(images, vector * stride, target, 0, stride);
  }

  /** Runs Lanczos steps from one count to another; returns how many the space allowed. */
  int extend(int from, int to) {
    for (int j = from; j < to; j++) {
      int next = (j + 1) * stride;
      model.applyFlexibility(images, j * stride, basis, next);
      alpha[j] = subtractProjection(j, next);
      for (int i = j - 1; i >= 0; i--) {
        subtractProjection(i, next);
      }
      model.multiplyMass(basis, next, images, next);
      beta[j] = normalise(j + 1);
      if (!(beta[j] > 1e-9 * alpha[j])) {
        beta[j] = 0;
        return j + 1;
      }
    }
    return to;
  }

  private double subtractProjection(int i, int next) {
    int at = i * stride;
    double c = Products.dot(stride, images, at, basis, next);
    for (int k = 0; k < stride; k++) {
      basis[next + k] -= c * basis[at + k];
    }
    return c;
  }

  private double normalise(int j) {
    int at = j * stride;
    double norm = Math.sqrt(Math.max(0, Products.dot(stride, images, at, basis, at)));
    if (norm > 0) {
      double scale = 1 / norm;
      for (int k = at; k < at + stride; k++) {
        basis[k] *= scale;
        images[k] *= scale;
      }
    }
    if (j < MOST_STEPS) {
      tip[j] = basis[at + stride - 2];
    }
    return norm;
  }
}
