package org.gaugeline.mechanics.chatter;

/**
 * Eigenvalues of a real upper Hessenberg matrix by the shifted QR method in complex arithmetic,
 * with Wilkinson's shift and deflation (Golub and Van Loan, Matrix Computations, ch. 7; EISPACK
 * comqr).
 */
final class HessenbergEigenvalues {
  private static final double EPSILON = Math.ulp(1.0);
  private static final int MOST_SWEEPS = 60;

  private final int n;
  private final double[][] re;
  private final double[][] im;

  /** Cosine and complex sine of each rotation of a sweep. */
  private final double[] cosine;

  private final double[] sineRe;
  private final double[] sineIm;
  private double shiftRe;
  private double shiftIm;

  private HessenbergEigenvalues(int n, double[][] hessenberg) {
    this.n = n;
    re = new double[n][n];
    im = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = Math.max(0, i - 1); j < n; j++) {
        re[i][j] = hessenberg[i][j];
      }
    }
    cosine = new double[n];
    sineRe = new double[n];
    sineIm = new double[n];
  }

  /**
   * Solves for all eigenvalues.
   *
   * @param n order
   * @param hessenberg the matrix, at least n rows and columns; what lies below the subdiagonal is
   *     not read
   * @return real and imaginary parts in turn
   * @throws ArithmeticException if the iteration does not converge
   */
  static double[] of(int n, double[][] hessenberg) {
    HessenbergEigenvalues solver = new HessenbergEigenvalues(n, hessenberg);
    solver.iterate();
    double[] values = new double[2 * n];
    for (int i = 0; i < n; i++) {
      values[2 * i] = solver.re[i][i];
      values[2 * i + 1] = solver.im[i][i];
    }
    return values;
  }

  private void iterate() {
    int high = n - 1;
    int sweeps = 0;
    while (high > 0) {
      int low = high;
      while (low > 0 && !isNegligible(low)) {
        low--;
      }
      if (low == high) {
        high--;
        sweeps = 0;
      } else if (sweeps++ < MOST_SWEEPS) {
        chooseShift(high, sweeps);
        sweep(low, high);
      } else {
        throw new ArithmeticException("the QR method did not converge");
      }
    }
  }

  private boolean isNegligible(int i) {
    double scale = size(i, i) + size(i - 1, i - 1);
    boolean small = size(i, i - 1) <= EPSILON * scale || size(i, i - 1) < 1e-300;
    if (small) {
      re[i][i - 1] = 0;
      im[i][i - 1] = 0;
    }
    return small;
  }

  private double size(int i, int j) {
    return Math.abs(re[i][j]) + Math.abs(im[i][j]);
  }

  /** The eigenvalue of the trailing 2×2 block nearer to its last entry; now and then another. */
  private void chooseShift(int high, int sweeps) {
    int k = high - 1;
    shiftRe = re[high][high];
    shiftIm = im[high][high];
    if (sweeps % 10 == 0) {
      shiftRe += size(high, k);
      return;
    }
    double halfRe = (re[k][k] - shiftRe) / 2;
    double halfIm = (im[k][k] - shiftIm) / 2;
    double bcRe = re[k][high] * re[high][k] - im[k][high] * im[high][k];
    double bcIm = re[k][high] * im[high][k] + im[k][high] * re[high][k];
    double squareRe = halfRe * halfRe - halfIm * halfIm + bcRe;
    double squareIm = 2 * halfRe * halfIm + bcIm;
    double length = Math.hypot(squareRe, squareIm);
    double rootRe = Math.sqrt(Math.max(0, (length + squareRe) / 2));
    double rootIm = Math.copySign(Math.sqrt(Math.max(0, (length - squareRe) / 2)), squareIm);
    if (halfRe * rootRe + halfIm * rootIm < 0) {
      rootRe = -rootRe;
      rootIm = -rootIm;
    }
    double downRe = halfRe + rootRe;
    double downIm = halfIm + rootIm;
    double square = downRe * downRe + downIm * downIm;
    if (square > 0) {
      shiftRe -= (bcRe * downRe + bcIm * downIm) / square;
      shiftIm -= (bcIm * downRe - bcRe * downIm) / square;
    }
  }

  /** One QR step on the block low to high: H − σ = QR, H ← RQ + σ. */
  private void sweep(int low, int high) {
    for (int i = low; i <= high; i++) {
      re[i][i] -= shiftRe;
      im[i][i] -= shiftIm;
    }
    for (int i = low; i < high; i++) {
      setRotation(i);
      for (int j = i; j <= high; j++) {
        rotate(i, j, i + 1, j, i, 1);
      }
    }
    for (int i = low; i < high; i++) {
      for (int row = low; row <= Math.min(i + 1, high); row++) {
        rotate(row, i, row, i + 1, i, -1);
      }
    }
    for (int i = low; i <= high; i++) {
      re[i][i] += shiftRe;
      im[i][i] += shiftIm;
    }
  }

  /** Rotation that turns (h_ii, h_i+1,i) into (r, 0): c real, s complex. */
  private void setRotation(int i) {
    double a = Math.hypot(re[i][i], im[i][i]);
    double b = Math.hypot(re[i + 1][i], im[i + 1][i]);
    double r = Math.hypot(a, b);
    if (a == 0) {
      cosine[i] = 0;
      sineRe[i] = b == 0 ? 1 : re[i + 1][i] / b;
      sineIm[i] = b == 0 ? 0 : -im[i + 1][i] / b;
      return;
    }
    cosine[i] = a / r;
    // s = (a/|a|)·conj(b)/r
    double phaseRe = re[i][i] / a;
    double phaseIm = im[i][i] / a;
    sineRe[i] = (phaseRe * re[i + 1][i] + phaseIm * im[i + 1][i]) / r;
    sineIm[i] = (phaseIm * re[i + 1][i] - phaseRe * im[i + 1][i]) / r;
  }

  /**
   * Rotates two entries: from the left (sense 1) x ← cx + sy, y ← −s̄x + cy; from the right by the
   * adjoint (sense −1) x ← cx + s̄y, y ← −sx + cy.
   */
  private void rotate(int xRow, int xColumn, int yRow, int yColumn, int rotation, int sense) {
    double c = cosine[rotation];
    double sRe = sineRe[rotation];
    double sIm = sense * sineIm[rotation];
    double xRe = re[xRow][xColumn];
    double xIm = im[xRow][xColumn];
    double yRe = re[yRow][yColumn];
    double yIm = im[yRow][yColumn];
    re[xRow][xColumn] = c * xRe + sRe * yRe - sIm * yIm;
    im[xRow][xColumn] = c * xIm + sRe * yIm + sIm * yRe;
    re[yRow][yColumn] = c * yRe - (sRe * xRe + sIm * xIm);
    im[yRow][yColumn] = c * yIm - (sRe * xIm - sIm * xRe);
  }
}
