package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.beam.ElementMatrices;

/**
 * Carries a symmetric receptance R = [[h, l], [l, p]] from one node of a chain to the next at one
 * frequency; a workspace.
 *
 * <p>With the dynamic stiffness D of the element, X = (R⁻¹ + D11)⁻¹ and R′ = (D22 − D12ᵀ X D12)⁻¹.
 * X is taken as (R + det R · adj D11)/(1 + tr(R D11) + det R · det D11), which needs no inverse of
 * R, so that a wall (R = 0) is no special case. This is receptance coupling, G11 = R11 − R12a
 * (R2a2a + R2b2b + K⁻¹)⁻¹ R2a1, done element by element.
 */
final class ElementStep {
  double hRe;
  double hIm;
  double lRe;
  double lIm;
  double pRe;
  double pIm;

  private final double[] d = new double[ElementMatrices.ENTRIES];
  private final double[] k = new double[ElementMatrices.ENTRIES];
  private final double[] column = new double[4];

  void read(double[] values, int at) {
    hRe = values[at];
    hIm = values[at + 1];
    lRe = values[at + 2];
    lIm = values[at + 3];
    pRe = values[at + 4];
    pIm = values[at + 5];
  }

  void write(double[] values, int at) {
    values[at] = hRe;
    values[at + 1] = hIm;
    values[at + 2] = lRe;
    values[at + 3] = lIm;
    values[at + 4] = pRe;
    values[at + 5] = pIm;
  }

  /** Adds the compliance 1/(k(1 + iη) + iωc) of one direction to H or P. */
  void addSpring(boolean turning, double flexibility, double lossFactor, double omegaC) {
    double im = lossFactor + omegaC * flexibility;
    double scale = flexibility / (1 + im * im);
    if (turning) {
      pRe += scale;
      pIm -= scale * im;
    } else {
      hRe += scale;
      hIm -= scale * im;
    }
  }

  /**
   * R ← R − R e z eᵀ R/(1 + z h): a dynamic stiffness z that acts on the translation. Written as
   * h/(1 + zh), l/(1 + zh), p − zl²/(1 + zh), which keeps its digits where h is very large.
   */
  void hang(double zRe, double zIm) {
    double downRe = 1 + zRe * hRe - zIm * hIm;
    double downIm = zRe * hIm + zIm * hRe;
    double scale = 1 / (downRe * downRe + downIm * downIm);
    double lNextRe = (lRe * downRe + lIm * downIm) * scale;
    double lNextIm = (lIm * downRe - lRe * downIm) * scale;
    double zlRe = zRe * lRe - zIm * lIm;
    double zlIm = zRe * lIm + zIm * lRe;
    pRe -= zlRe * lNextRe - zlIm * lNextIm;
    pIm -= zlRe * lNextIm + zlIm * lNextRe;
    double hNextRe = (hRe * downRe + hIm * downIm) * scale;
    hIm = (hIm * downRe - hRe * downIm) * scale;
    hRe = hNextRe;
    lRe = lNextRe;
    lIm = lNextIm;
  }

  /** Crosses one segment's element. */
  void cross(ElementMatrices elements, int element, double omegaSquared, double lossFactor) {
    elements.stiffnessAt(element, omegaSquared, d, k);
    for (int i = 0; i < k.length; i++) {
      k[i] *= lossFactor;
    }
    condense();
    // Q = D12ᵀ X D12, column by column of D12 = [[d13, d14], [d23, d24]].
    product(2, 5);
    double haRe = d[7] - dot(2, 5, true);
    double haIm = k[7] - dot(2, 5, false);
    double laRe = d[8] - dot(3, 6, true);
    double laIm = k[8] - dot(3, 6, false);
    product(3, 6);
    double paRe = d[9] - dot(3, 6, true);
    double paIm = k[9] - dot(3, 6, false);
    invert(haRe, haIm, laRe, laIm, paRe, paIm);
  }

  /** R ← X. */
  private void condense() {
    double detRe = hRe * pRe - hIm * pIm - (lRe * lRe - lIm * lIm);
    double detIm = hRe * pIm + hIm * pRe - 2 * lRe * lIm;
    double stiffRe = d[0] * d[4] - k[0] * k[4] - (d[1] * d[1] - k[1] * k[1]);
    double stiffIm = d[0] * k[4] + k[0] * d[4] - 2 * d[1] * k[1];
    double downRe =
        1
            + (hRe * d[0] - hIm * k[0])
            + 2 * (lRe * d[1] - lIm * k[1])
            + (pRe * d[4] - pIm * k[4])
            + (detRe * stiffRe - detIm * stiffIm);
    double downIm =
        hRe * k[0]
            + hIm * d[0]
            + 2 * (lRe * k[1] + lIm * d[1])
            + (pRe * k[4] + pIm * d[4])
            + (detRe * stiffIm + detIm * stiffRe);
    double square = 1 / (downRe * downRe + downIm * downIm);
    double aRe = hRe + detRe * d[4] - detIm * k[4];
    double aIm = hIm + detRe * k[4] + detIm * d[4];
    double bRe = lRe - detRe * d[1] + detIm * k[1];
    double bIm = lIm - detRe * k[1] - detIm * d[1];
    double cRe = pRe + detRe * d[0] - detIm * k[0];
    double cIm = pIm + detRe * k[0] + detIm * d[0];
    hRe = (aRe * downRe + aIm * downIm) * square;
    hIm = (aIm * downRe - aRe * downIm) * square;
    lRe = (bRe * downRe + bIm * downIm) * square;
    lIm = (bIm * downRe - bRe * downIm) * square;
    pRe = (cRe * downRe + cIm * downIm) * square;
    pIm = (cIm * downRe - cRe * downIm) * square;
  }

  /** Column ← X·(d[i], d[j]). */
  private void product(int i, int j) {
    column[0] = hRe * d[i] - hIm * k[i] + lRe * d[j] - lIm * k[j];
    column[1] = hRe * k[i] + hIm * d[i] + lRe * k[j] + lIm * d[j];
    column[2] = lRe * d[i] - lIm * k[i] + pRe * d[j] - pIm * k[j];
    column[3] = lRe * k[i] + lIm * d[i] + pRe * k[j] + pIm * d[j];
  }

  private double dot(int i, int j, boolean real) {
    return real
        ? column[0] * d[i] - column[1] * k[i] + column[2] * d[j] - column[3] * k[j]
        : column[0] * k[i] + column[1] * d[i] + column[2] * k[j] + column[3] * d[j];
  }

  private void invert(double aRe, double aIm, double bRe, double bIm, double cRe, double cIm) {
    double detRe = aRe * cRe - aIm * cIm - (bRe * bRe - bIm * bIm);
    double detIm = aRe * cIm + aIm * cRe - 2 * bRe * bIm;
    double square = 1 / (detRe * detRe + detIm * detIm);
    hRe = (cRe * detRe + cIm * detIm) * square;
    hIm = (cIm * detRe - cRe * detIm) * square;
    lRe = -(bRe * detRe + bIm * detIm) * square;
    lIm = -(bIm * detRe - bRe * detIm) * square;
    pRe = (aRe * detRe + aIm * detIm) * square;
    pIm = (aIm * detRe - aRe * detIm) * square;
  }
}
