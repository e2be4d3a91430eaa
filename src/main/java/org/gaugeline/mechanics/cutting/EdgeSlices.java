package org.gaugeline.mechanics.cutting;

/**
 * How the rounded part of an edge is parted along its angle κ, from the tip at 0 to the straight
 * part at π/2. A slice is taken as a short straight edge of its own κ.
 */
final class EdgeSlices {
  /** Slices of equal angle: close together everywhere, for any depth within the rounding. */
  static final EdgeSlices EVEN = even(24);

  /**
   * Points and weights of the five-point Gauss rule, for the rounding as a whole. Its points lie
   * each within its own weight (Chebyshev, Markov, Stieltjes), so that the weights are the slices.
   */
  static final EdgeSlices OF_THE_WHOLE =
      gauss(
          new double[] {
            -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
          },
          new double[] {
            0.236926885056189,
            0.478628670499366,
            0.568888888888889,
            0.478628670499366,
            0.236926885056189
          });

  final int count;
  final double[] sine;
  final double[] cosine;
  final double[] widthRad;

  /** Heights of the ends over the radius, 1 − cos κ, from 0 to 1. */
  final double[] height;

  private EdgeSlices(double[] kappaRad, double[] widthRad) {
    this.count = kappaRad.length;
    this.widthRad = widthRad;
    this.sine = new double[count];
    this.cosine = new double[count];
    this.height = new double[count + 1];
    double upTo = 0;
    for (int k = 0; k < count; k++) {
      sine[k] = Math.sin(kappaRad[k]);
      cosine[k] = Math.cos(kappaRad[k]);
      upTo += widthRad[k];
      height[k + 1] = 1 - Math.cos(upTo);
    }
    height[count] = 1;
  }

  private static EdgeSlices even(int count) {
    double width = Math.PI / 2 / count;
    double[] kappa = new double[count];
    double[] widths = new double[count];
    for (int k = 0; k < count; k++) {
      kappa[k] = (k + 0.5) * width;
      widths[k] = width;
    }
    return new EdgeSlices(kappa, widths);
  }

  private static EdgeSlices gauss(double[] points, double[] weights) {
    double[] kappa = new double[points.length];
    double[] widths = new double[points.length];
    for (int k = 0; k < points.length; k++) {
      kappa[k] = Math.PI / 4 * (1 + points[k]);
      widths[k] = Math.PI / 4 * weights[k];
    }
    return new EdgeSlices(kappa, widths);
  }

  /** The slice in which a height over the radius lies, 0 to 1. */
  int at(double heightOverRadius) {
    int k = 0;
    while (k < count - 1 && height[k + 1] <= heightOverRadius) {
      k++;
    }
    return k;
  }
}
