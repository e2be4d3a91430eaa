package org.gaugeline.mechanics.beam;

/**
 * Brings a small symmetric matrix into tridiagonal form by reflections, carrying along a few row
 * vectors (Householder; Golub and Van Loan, Matrix Computations, ch. 8; memory). Allocates nothing.
 */
final class HouseholderReduction {
  private HouseholderReduction() {}

  /**
   * Reduces in place: Qᵀ A Q tridiagonal, rows ← rows·Q.
   *
   * @param n order
   * @param a the matrix, both triangles, row by row; destroyed
   * @param d receives the diagonal
   * @param e receives the off-diagonal; e[i] couples i and i + 1
   * @param rows row vectors; entry i of row r is at {@code i * width + r}
   * @param width number of rows
   * @param work room for 2n numbers
   */
  static void reduce(
      int n, double[] a, double[] d, double[] e, double[] rows, int width, double[] work) {
    for (int k = 0; k + 2 < n; k++) {
      d[k] = a[k * n + k];
      double square = 0;
      for (int i = k + 1; i < n; i++) {
        double x = a[k * n + i];
        work[i] = x;
        square += x * x;
      }
      double first = work[k + 1];
      double size = Math.sqrt(square);
      e[k] = first > 0 ? -size : size;
      double scale = square - first * e[k];
      if (scale > 0) {
        work[k + 1] = first - e[k];
        reflect(n, k + 1, a, work, 1 / scale);
        reflectRows(n, k + 1, rows, width, work, 1 / scale);
      }
    }
    if (n > 1) {
      d[n - 2] = a[(n - 2) * n + n - 2];
      e[n - 2] = a[(n - 2) * n + n - 1];
    }
    d[n - 1] = a[n * n - 1];
  }

  /** A ← A − v wᵀ − w vᵀ on the block from {@code from}, with w = b(Av − (b/2)(vᵀAv)v). */
  private static void reflect(int n, int from, double[] a, double[] v, double b) {
    double along = 0;
    for (int i = from; i < n; i++) {
      double sum = 0;
      for (int j = from; j < n; j++) {
        sum += a[i * n + j] * v[j];
      }
      v[n + i] = b * sum;
      along += v[n + i] * v[i];
    }
    double half = b * along / 2;
    for (int i = from; i < n; i++) {
      v[n + i] -= half * v[i];
    }
    for (int i = from; i < n; i++) {
      double vi = v[i];
      double wi = v[n + i];
      for (int j = from; j < n; j++) {
        a[i * n + j] -= vi * v[n + j] + wi * v[j];
      }
    }
  }

  private static void reflectRows(int n, int from, double[] rows, int width, double[] v, double b) {
    for (int r = 0; r < width; r++) {
      double sum = 0;
      for (int i = from; i < n; i++) {
        sum += rows[i * width + r] * v[i];
      }
      sum *= b;
      for (int i = from; i < n; i++) {
        rows[i * width + r] -= sum * v[i];
      }
    }
  }
}
