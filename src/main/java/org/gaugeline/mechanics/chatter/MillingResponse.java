package org.gaugeline.mechanics.chatter;

import java.util.Arrays;
import org.gaugeline.mechanics.receptance.TipModel;

/**
 * Eigenvalues λ of [[α_xx G_x, α_xy G_y], [α_yx G_x, α_yy G_y]], with gain N K_t/4π: the
 * characteristic equation of the zeroth-order solution with its depth and delay taken out, because
 * only they change with the speed.
 */
final class MillingResponse implements OrientedResponse {
  private final MillingProcess process;
  private final TipModel tip;
  private final DirectionalFactors factors;
  private final double determinant;
  private final double[] g = new double[4];

  MillingResponse(MillingProcess process, TipModel tip) {
    this.process = process;
    this.tip = tip;
    factors = DirectionalFactors.of(process);
    determinant = factors.xx() * factors.yy() - factors.xy() * factors.yx();
  }

  @Override
  public int branches() {
    return 2;
  }

  @Override
  public double gainPa() {
    return process.teeth() * process.tangentialPa() / (4 * Math.PI);
  }

  @Override
  public int teeth() {
    return process.teeth();
  }

  @Override
  public double[] supportRadPerS() {
    double[] x = tip.x().supportRadPerS();
    return tip.x() == tip.y() ? x : merged(x, tip.y().supportRadPerS());
  }

  /** Frequencies near enough for the place of a crossing to show, which is then solved for. */
  double[] coarseSupportRadPerS() {
    double[] x = tip.x().coarseSupportRadPerS();
    return tip.x() == tip.y() ? x : merged(x, tip.y().coarseSupportRadPerS());
  }

  private static double[] merged(double[] x, double[] y) {
    double[] all = Arrays.copyOf(x, x.length + y.length);
    System.arraycopy(y, 0, all, x.length, y.length);
    Arrays.sort(all);
    return all;
  }

  @Override
  public void at(double omegaRadPerS, double[] lambda) {
    tip.x().at(omegaRadPerS, g, 0);
    if (tip.x() == tip.y()) {
      g[2] = g[0];
      g[3] = g[1];
    } else {
      tip.y().at(omegaRadPerS, g, 2);
    }
    double halfRe = (factors.xx() * g[0] + factors.yy() * g[2]) / 2;
    double halfIm = (factors.xx() * g[1] + factors.yy() * g[3]) / 2;
    double re = halfRe * halfRe - halfIm * halfIm - determinant * (g[0] * g[2] - g[1] * g[3]);
    double im = 2 * halfRe * halfIm - determinant * (g[0] * g[3] + g[1] * g[2]);
    double size = Math.sqrt(re * re + im * im);
    double rootRe = Math.sqrt(Math.max(0, (size + re) / 2));
    double rootIm = Math.copySign(Math.sqrt(Math.max(0, (size - re) / 2)), im);
    lambda[0] = halfRe + rootRe;
    lambda[1] = halfIm + rootIm;
    lambda[2] = halfRe - rootRe;
    lambda[3] = halfIm - rootIm;
  }
}
