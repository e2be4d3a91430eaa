package org.gaugeline.mechanics.beam;

/** Products of vectors that lie in longer arrays. */
final class Products {
  private Products() {}

  /** Scalar product; four sums, because one would wait for each addition in turn. */
  static double dot(int length, double[] a, int ao, double[] b, int bo) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int k = 0;
    for (; k + 3 < length; k += 4) {
      s0 += a[ao + k] * b[bo + k];
      s1 += a[ao + k + 1] * b[bo + k + 1];
      s2 += a[ao + k + 2] * b[bo + k + 2];
      s3 += a[ao + k + 3] * b[bo + k + 3];
    }
    for (; k < length; k++) {
      s0 += a[ao + k] * b[bo + k];
    }
    return s0 + s1 + (s2 + s3);
  }
}
