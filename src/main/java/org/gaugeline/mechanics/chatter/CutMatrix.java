package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.cutting.MillingEngagement;

/**
 * The 2×2 matrix c·[(1 − e^{−iωT})·α + 2iω(ℓ/v)·ν] by which a cut of unit depth answers to motion
 * of its tip at a speed: chip and flanks together. Its product with the responses of the tip has
 * the eigenvalues q; the cut is at its limit where one of them is real, at the depth 1/q.
 */
final class CutMatrix {
  private final MillingProcess process;
  private final double gainPa;
  private final DirectionalFactors chip;
  private final DirectionalFactors rub;
  private final double chipSize;
  private final double rubSize;
  private final double chipDeterminant;
  private final double mixedDeterminant;
  private final double rubDeterminant;

  private double periodS;
  private double rubS;

  CutMatrix(MillingProcess process) {
    this.process = process;
    gainPa = process.teeth() * process.tangentialPa() / (4 * Math.PI);
    MillingEngagement arc = process.engagement();
    chip = DirectionalFactors.of(process);
    rub = DirectionalFactors.rubbing(arc.entryRad(), arc.exitRad());
    chipSize = size(chip);
    rubSize = size(rub);
    chipDeterminant = chip.xx() * chip.yy() - chip.xy() * chip.yx();
    rubDeterminant = rub.xx() * rub.yy() - rub.xy() * rub.yx();
    mixedDeterminant =
        chip.xx() * rub.yy() + chip.yy() * rub.xx() - chip.xy() * rub.yx() - chip.yx() * rub.xy();
  }

  private static double size(DirectionalFactors of) {
    return Math.sqrt(of.xx() * of.xx() + of.xy() * of.xy() + of.yx() * of.yx() + of.yy() * of.yy());
  }

  void turnAt(double spindleRadPerS) {
    periodS = process.toothPeriodS(spindleRadPerS);
    rubS = 2 * process.damping().timeS(spindleRadPerS);
  }

  /** Time between teeth, s. */
  double periodS() {
    return periodS;
  }

  /** What |q| cannot exceed where no response is larger than 1. */
  double boundPa(double omegaRadPerS) {
    return gainPa * (2 * chipSize + omegaRadPerS * rubS * rubSize);
  }

  /**
   * Eigenvalues of the matrix times diag(G_x, G_y), in no order.
   *
   * @param w ω, rad/s
   * @param g real and imaginary part of G_x, then of G_y, m/N
   * @param at where they stand
   * @param q receives both eigenvalues, 1/m
   */
  void eigenvalues(double w, double[] g, int at, double[] q) {
    double phase = w * periodS;
    double sigmaRe = 1 - Math.cos(phase);
    double sigmaIm = Math.sin(phase);
    double p = w * rubS;
    double xxRe = sigmaRe * chip.xx();
    double xxIm = sigmaIm * chip.xx() + p * rub.xx();
    double yyRe = sigmaRe * chip.yy();
    double yyIm = sigmaIm * chip.yy() + p * rub.yy();
    double gxRe = g[at];
    double gxIm = g[at + 1];
    double gyRe = g[at + 2];
    double gyIm = g[at + 3];
    double halfRe = (xxRe * gxRe - xxIm * gxIm + yyRe * gyRe - yyIm * gyIm) / 2;
    double halfIm = (xxRe * gxIm + xxIm * gxRe + yyRe * gyIm + yyIm * gyRe) / 2;
    // determinant: (σ²·|α| + iσp·mixed − p²·|ν|)·G_x·G_y
    double detRe =
        (sigmaRe * sigmaRe - sigmaIm * sigmaIm) * chipDeterminant
            - sigmaIm * p * mixedDeterminant
            - p * p * rubDeterminant;
    double detIm = 2 * sigmaRe * sigmaIm * chipDeterminant + sigmaRe * p * mixedDeterminant;
    double ggRe = gxRe * gyRe - gxIm * gyIm;
    double ggIm = gxRe * gyIm + gxIm * gyRe;
    double re = halfRe * halfRe - halfIm * halfIm - (detRe * ggRe - detIm * ggIm);
    double im = 2 * halfRe * halfIm - (detRe * ggIm + detIm * ggRe);
    double size = Math.sqrt(re * re + im * im);
    double rootRe = Math.sqrt(Math.max(0, (size + re) / 2));
    double rootIm = Math.copySign(Math.sqrt(Math.max(0, (size - re) / 2)), im);
    q[0] = gainPa * (halfRe + rootRe);
    q[1] = gainPa * (halfIm + rootIm);
    q[2] = gainPa * (halfRe - rootRe);
    q[3] = gainPa * (halfIm - rootIm);
  }

  /** Exchanges a pair of eigenvalues where that continues another pair better. */
  static void keepBranches(double[] q, double[] last) {
    double straight = distance(q, 0, last, 0) + distance(q, 2, last, 2);
    double crossed = distance(q, 0, last, 2) + distance(q, 2, last, 0);
    if (crossed < straight) {
      double re = q[0];
      double im = q[1];
      q[0] = q[2];
      q[1] = q[3];
      q[2] = re;
      q[3] = im;
    }
  }

  private static double distance(double[] now, int at, double[] then, int there) {
    double re = now[at] - then[there];
    double im = now[at + 1] - then[there + 1];
    return re * re + im * im;
  }
}
