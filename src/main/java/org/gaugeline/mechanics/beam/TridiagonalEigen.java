package org.gaugeline.mechanics.beam;

/**
 * Eigenvalues of a small symmetric tridiagonal matrix by the implicit QL method, carrying along a
 * few rows of the eigenvector matrix instead of all of it (Golub and Welsch, Math. Comp. 23 (1969);
 * EISPACK imtql2).
 */
final class TridiagonalEigen {
  private static final int MOST_SWEEPS = 60;

  private TridiagonalEigen() {}

  /**
   * Diagonalises in place.
   *
   * @param n order
   * @param d diagonal; afterwards the eigenvalues, in no order
   * @param e e[i] couples i and i + 1; destroyed
   * @param rows row vectors; afterwards their products with each eigenvector; entry i of row r is
   *     at {@code i * width + r}
   * @param width number of rows
   */
  static void solve(int n, double[] d, double[] e, double[] rows, int width) {
    e[n - 1] = 0;
    for (int l = 0; l < n; l++) {
      int sweeps = 0;
      int m = split(n, l, d, e);
      while (m != l) {
        if (sweeps++ == MOST_SWEEPS) {
          throw new ArithmeticException("the QL method did not converge");
        }
        sweep(l, m, d, e, rows, width);
        m = split(n, l, d, e);
      }
    }
  }

  private static int split(int n, int l, double[] d, double[] e) {
    int m = l;
    while (m < n - 1) {
      double scale = Math.abs(d[m]) + Math.abs(d[m + 1]);
      if (Math.abs(e[m]) <= 1e-14 * scale) {
        break;
      }
      m++;
    }
    return m;
  }

  private static void sweep(int l, int m, double[] d, double[] e, double[] rows, int width) {
    double g = (d[l + 1] - d[l]) / (2 * e[l]);
    double r = Math.sqrt(g * g + 1);
    g = d[m] - d[l] + e[l] / (g + Math.copySign(r, g));
    double s = 1;
    double c = 1;
    double p = 0;
    for (int i = m - 1; i >= l; i--) {
      double f = s * e[i];
      double b = c * e[i];
      r = Math.sqrt(f * f + g * g);
      e[i + 1] = r;
      if (r == 0) {
        d[i + 1] -= p;
        e[m] = 0;
        return;
      }
      double inverse = 1 / r;
      s = f * inverse;
      c = g * inverse;
      g = d[i + 1] - p;
      r = (d[i] - g) * s + 2 * c * b;
      p = s * r;
      d[i + 1] = g + p;
      g = c * r - b;
      rotate(rows, i * width, width, s, c);
    }
    d[l] -= p;
    e[l] = g;
    e[m] = 0;
  }

  private static void rotate(double[] rows, int at, int width, double s, double c) {
    for (int k = at; k < at + width; k++) {
      double f = rows[k + width];
      rows[k + width] = s * rows[k] + c * f;
      rows[k] = c * rows[k] - s * f;
    }
  }
}
