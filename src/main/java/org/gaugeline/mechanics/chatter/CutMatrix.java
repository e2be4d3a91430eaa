package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.cutting.MillingEngagement;

/**
 * The 2×2 matrix c·[(1 − e^{−iωT})·α + 2iω(ℓ/v)·ν] by which a cut of unit depth answers to motion
 * of its tip at a speed: chip and flanks together. Its product with the responses of the tip has
 * the eigenvalues q; the cut is at its limit where one of them is real, at the depth 1/q.
 */
final class CutMatrix {
  private final double gainPa;
  private final DirectionalFactors chip;
  private final DirectionalFactors rub;
  private final double chipSize;
  private final double rubSize;
  private final double chipDeterminant;
  private final double mixedDeterminant;
  private final double rubDeterminant;

  /** What p = 2ω·ℓ/v is of the phase ωT: the same at every speed. */
  private final double rubPerPhase;

  CutMatrix(MillingProcess process) {
    gainPa = process.teeth() * process.tangentialPa() / (4 * Math.PI);
    MillingEngagement arc = process.engagement();
    chip = DirectionalFactors.of(process);
    rub = DirectionalFactors.rubbing(arc.entryRad(), arc.exitRad());
    chipSize = size(chip);
    rubSize = size(rub);
    chipDeterminant = chip.xx() * chip.yy() - chip.xy() * chip.yx();
    rubDeterminant = rub.xx() * rub.yy() - rub.xy() * rub.yx();
    rubPerPhase = rubPerPhase(process);
    mixedDeterminant =
        chip.xx() * rub.yy() + chip.yy() * rub.xx() - chip.xy() * rub.yx() - chip.yx() * rub.xy();
  }

  private static double size(DirectionalFactors of) {
    return Math.sqrt(of.xx() * of.xx() + of.xy() * of.xy() + of.yx() * of.yx() + of.yy() * of.yy());
  }

  private static double rubPerPhase(MillingProcess process) {
    double any = 1; // speed, rad/s
    return 2 * process.damping().timeS(any) / process.toothPeriodS(any);
  }

  /** What |q| cannot exceed where no response is larger than 1. */
  double boundPa(double phaseRad) {
    return gainPa * (2 * chipSize + phaseRad * rubPerPhase * rubSize);
  }

  /**
   * Eigenvalues of the matrix alone along phases near to each other, each pair continuing the last.
   *
   * @param phase ωT, rad
   * @param sigma real and imaginary part of 1 − e^{−iωT} at each
   * @param kappa receives them
   */
  void eigenvalues(double[] phase, double[] sigma, Kappa kappa) {
    double chipHalf = gainPa * (chip.xx() + chip.yy()) / 2;
    double rubHalf = gainPa * (rub.xx() + rub.yy()) / 2;
    double square = gainPa * gainPa;
    double lastRe = 0;
    double lastIm = 0;
    for (int i = 0; i < phase.length; i++) {
      double sigmaRe = sigma[2 * i];
      double sigmaIm = sigma[2 * i + 1];
      double p = phase[i] * rubPerPhase;
      double halfRe = sigmaRe * chipHalf;
      double halfIm = sigmaIm * chipHalf + p * rubHalf;
      double re = halfRe * halfRe - halfIm * halfIm - square * determinantRe(p, sigmaRe, sigmaIm);
      double im = 2 * halfRe * halfIm - square * determinantIm(p, sigmaRe, sigmaIm);
      double large = Math.sqrt((Math.sqrt(re * re + im * im) + Math.abs(re)) / 2);
      double small = large > 0 ? im / (2 * large) : 0;
      double rootRe = re >= 0 ? large : small;
      double rootIm = re >= 0 ? small : large;
      double sign = rootRe * lastRe + rootIm * lastIm < 0 ? -1 : 1;
      lastRe = sign * rootRe;
      lastIm = sign * rootIm;
      kappa.firstRe[i] = halfRe + lastRe;
      kappa.firstIm[i] = halfIm + lastIm;
      kappa.secondRe[i] = halfRe - lastRe;
      kappa.secondIm[i] = halfIm - lastIm;
    }
  }

  private double determinantRe(double p, double sigmaRe, double sigmaIm) {
    return (sigmaRe * sigmaRe - sigmaIm * sigmaIm) * chipDeterminant
        - sigmaIm * p * mixedDeterminant
        - p * p * rubDeterminant;
  }

  private double determinantIm(double p, double sigmaRe, double sigmaIm) {
    return 2 * sigmaRe * sigmaIm * chipDeterminant + sigmaRe * p * mixedDeterminant;
  }

  /**
   * Eigenvalues of the matrix times diag(G_x, G_y), in no order.
   *
   * @param phase ωT, rad
   * @param g real and imaginary part of G_x, then of G_y, m/N
   * @param q receives both eigenvalues, 1/m
   */
  void eigenvalues(double phase, double[] g, double[] q) {
    double sigmaRe = 1 - Math.cos(phase);
    double sigmaIm = Math.sin(phase);
    double p = phase * rubPerPhase;
    double xxRe = sigmaRe * chip.xx();
    double xxIm = sigmaIm * chip.xx() + p * rub.xx();
    double yyRe = sigmaRe * chip.yy();
    double yyIm = sigmaIm * chip.yy() + p * rub.yy();
    double gxRe = g[0];
    double gxIm = g[1];
    double gyRe = g[2];
    double gyIm = g[3];
    double halfRe = (xxRe * gxRe - xxIm * gxIm + yyRe * gyRe - yyIm * gyIm) / 2;
    double halfIm = (xxRe * gxIm + xxIm * gxRe + yyRe * gyIm + yyIm * gyRe) / 2;
    // determinant: (σ²·|α| + iσp·mixed − p²·|ν|)·G_x·G_y
    double detRe = determinantRe(p, sigmaRe, sigmaIm);
    double detIm = determinantIm(p, sigmaRe, sigmaIm);
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
  static void keepBranches(double[] q, double[] last, int at) {
    keepBranches(q, last[at], last[at + 1], last[at + 2], last[at + 3]);
  }

  static void keepBranches(
      double[] q, double firstRe, double firstIm, double secondRe, double secondIm) {
    double straight =
        square(q[0] - firstRe, q[1] - firstIm) + square(q[2] - secondRe, q[3] - secondIm);
    double crossed =
        square(q[0] - secondRe, q[1] - secondIm) + square(q[2] - firstRe, q[3] - firstIm);
    if (crossed < straight) {
      double re = q[0];
      double im = q[1];
      q[0] = q[2];
      q[1] = q[3];
      q[2] = re;
      q[3] = im;
    }
  }

  private static double square(double re, double im) {
    return re * re + im * im;
  }
}
