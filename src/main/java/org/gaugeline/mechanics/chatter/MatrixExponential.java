package org.gaugeline.mechanics.chatter;

/**
 * e^M of a small dense matrix, row after row in one array, by its Taylor series after halving M
 * until its norm is below ½ and squaring back (Golub and Van Loan, Matrix Computations, ch. 9).
 */
final class MatrixExponential {
  private static final int TERMS = 12;

  private MatrixExponential() {}

  static double[] of(double[] matrix, int n) {
    int halvings = 0;
    double size = norm(matrix, n);
    while (size > 0.5) {
      size /= 2;
      halvings++;
    }
    double[] scaled = matrix.clone();
    double factor = Math.pow(2, -halvings);
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    // Horner: I + M/1(I + M/2(I + M/3(…)))
    double[] sum = new double[n * n];
    double[] product = new double[n * n];
    addIdentity(sum, n);
    for (int term = TERMS; term >= 1; term--) {
      multiply(scaled, sum, product, n);
      for (int i = 0; i < product.length; i++) {
        sum[i] = product[i] / term;
      }
      addIdentity(sum, n);
    }
    for (int i = 0; i < halvings; i++) {
      multiply(sum, sum, product, n);
      double[] other = sum;
      sum = product;
      product = other;
    }
    return sum;
  }

  private static void addIdentity(double[] m, int n) {
    for (int i = 0; i < n; i++) {
      m[i * n + i] += 1;
    }
  }

  private static double norm(double[] m, int n) {
    double most = 0;
    for (int i = 0; i < n; i++) {
      double row = 0;
      for (int j = 0; j < n; j++) {
        row += Math.abs(m[i * n + j]);
      }
      most = Math.max(most, row);
    }
    return most;
  }

  private static void multiply(double[] a, double[] b, double[] product, int n) {
    for (int i = 0; i < n; i++) {
      int row = i * n;
      for (int j = 0; j < n; j++) {
        product[row + j] = 0;
      }
      for (int k = 0; k < n; k++) {
        double factor = a[row + k];
        if (factor != 0) {
          int other = k * n;
          for (int j = 0; j < n; j++) {
            product[row + j] += factor * b[other + j];
          }
        }
      }
    }
  }
}
