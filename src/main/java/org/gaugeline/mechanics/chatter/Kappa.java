package org.gaugeline.mechanics.chatter;

/** Both eigenvalues κ of a cut at places in a row, Pa; each branch continuous. */
final class Kappa {
  static final Kappa NONE = new Kappa(0);

  final double[] firstRe;
  final double[] firstIm;
  final double[] secondRe;
  final double[] secondIm;

  Kappa(int count) {
    firstRe = new double[count];
    firstIm = new double[count];
    secondRe = new double[count];
    secondIm = new double[count];
  }

  /**
   * What |κ| does not exceed where it may make q = G·κ real and positive: the response of what
   * dissipates lags, Im G &lt; 0, so that this takes Im κ &gt; 0 there or at the place before or
   * after.
   */
  double mostDriving() {
    return Math.sqrt(Math.max(square(firstRe, firstIm), square(secondRe, secondIm)));
  }

  private static double square(double[] re, double[] im) {
    double most = 0;
    for (int i = 0; i < re.length; i++) {
      if (im[i] > 0) {
        for (int k = Math.max(0, i - 1); k <= Math.min(re.length - 1, i + 1); k++) {
          most = Math.max(most, re[k] * re[k] + im[k] * im[k]);
        }
      }
    }
    return most;
  }
}
