package org.gaugeline.mechanics.receptance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.gaugeline.mechanics.beam.TipCompliance;

/**
 * A response as a sum of modes and a residual compliance, H = Σ(α + iωβ)/(ω_n² − ω² + 2iζω_nω) + c
 * (Ewins, Modal Testing; memory). Immutable.
 */
public final class ModalResponse implements TipResponse {
  private final List<TipMode> modes;
  private final double residualMPerN;
  private final double[] angular;
  private final double[] square;
  private final double[] twiceDamping;
  private final double[] alpha;
  private final double[] beta;

  /**
   * A response of given modes.
   *
   * @param modes any number; none is a rigid direction
   * @param residualMPerN compliance c of the modes left out, m/N
   */
  public ModalResponse(List<TipMode> modes, double residualMPerN) {
    this.modes = List.copyOf(modes);
    this.residualMPerN = residualMPerN;
    int n = modes.size();
    angular = new double[n];
    square = new double[n];
    twiceDamping = new double[n];
    alpha = new double[n];
    beta = new double[n];
    for (int i = 0; i < n; i++) {
      TipMode mode = modes.get(i);
      angular[i] = mode.angularFrequencyRadPerS();
      square[i] = angular[i] * angular[i];
      twiceDamping[i] = 2 * mode.dampingRatio() * angular[i];
      alpha[i] = mode.inverseMassPerKg();
      beta[i] = mode.velocityShareSPerKg();
    }
  }

  /**
   * A response of given modes without residual compliance.
   *
   * @param modes any number; none is a rigid direction
   * @return the response
   */
  public static ModalResponse of(TipMode... modes) {
    return new ModalResponse(List.of(modes), 0);
  }

  /**
   * Solved modes of a reduced chain at its tip; the residual makes the static compliance exact.
   *
   * @param modes solved
   * @param dampingRatio ζ of a mode by the share of its strain energy in the base joint, above 0 to
   *     below 1
   * @return the response
   */
  public static ModalResponse of(ReducedModes modes, DoubleUnaryOperator dampingRatio) {
    List<TipMode> tip = new ArrayList<>(modes.count());
    for (int i = 0; i < modes.count(); i++) {
      double shape = modes.tipShape(i);
      tip.add(
          new TipMode(
              modes.angularFrequencyRadPerS(i),
              dampingRatio.applyAsDouble(modes.baseEnergyShare(i)),
              shape * shape,
              0));
    }
    return new ModalResponse(tip, modes.tipResidualMPerN());
  }

  /**
   * The lowest modes of a chain, each with the same damping ratio; the residual makes the static
   * compliance exact, c = C − Σ1/k.
   *
   * @param chain the chain, with mass
   * @param modeCount 1 to 3
   * @param dampingRatio ζ of each, above 0 to below 1; an input, because it cannot be predicted
   * @return the response
   */
  public static ModalResponse of(BeamChain chain, int modeCount, double dampingRatio) {
    BendingModes solved = new BendingModes();
    solved.solve(chain, modeCount);
    List<TipMode> modes =
        solved.toList().stream().map(mode -> TipMode.of(mode, dampingRatio)).toList();
    double modal = modes.stream().mapToDouble(mode -> 1 / mode.stiffnessNPerM()).sum();
    return new ModalResponse(modes, TipCompliance.of(chain) - modal);
  }

  /**
   * The modes.
   *
   * @return as given
   */
  public List<TipMode> modes() {
    return modes;
  }

  /**
   * Compliance of the modes left out.
   *
   * @return c, m/N
   */
  public double residualMPerN() {
    return residualMPerN;
  }

  @Override
  public void at(double omegaRadPerS, double[] target, int at) {
    double re = residualMPerN;
    double im = 0;
    double w2 = omegaRadPerS * omegaRadPerS;
    for (int i = 0; i < square.length; i++) {
      double downRe = square[i] - w2;
      double downIm = twiceDamping[i] * omegaRadPerS;
      double scale = 1 / (downRe * downRe + downIm * downIm);
      double upIm = omegaRadPerS * beta[i];
      re += (alpha[i] * downRe + upIm * downIm) * scale;
      im += (upIm * downRe - alpha[i] * downIm) * scale;
    }
    target[at] = re;
    target[at + 1] = im;
  }

  /** Mode by mode, so that the processor can work on several frequencies at a time. */
  @Override
  public void at(double[] omegaRadPerS, int count, double[] re, double[] im) {
    for (int i = 0; i < count; i++) {
      re[i] = residualMPerN;
      im[i] = 0;
    }
    for (int mode = 0; mode < square.length; mode++) {
      double natural = square[mode];
      double loss = twiceDamping[mode];
      double a = alpha[mode];
      double b = beta[mode];
      for (int i = 0; i < count; i++) {
        double w = omegaRadPerS[i];
        double downRe = natural - w * w;
        double downIm = loss * w;
        double scale = 1 / (downRe * downRe + downIm * downIm);
        double upIm = w * b;
        re[i] += (a * downRe + upIm * downIm) * scale;
        im[i] += (upIm * downRe - a * downIm) * scale;
      }
    }
  }

  @Override
  public double[] peaksRadPerS() {
    double[] peaks = angular.clone();
    for (int i = 1; i < peaks.length; i++) {
      for (int k = i; k > 0 && atResonance(peaks[k]) > atResonance(peaks[k - 1]); k--) {
        double other = peaks[k];
        peaks[k] = peaks[k - 1];
        peaks[k - 1] = other;
      }
    }
    return peaks;
  }

  /** What the mode of a frequency adds there. */
  private double atResonance(double angularRadPerS) {
    for (int i = 0; i < angular.length; i++) {
      if (angular[i] == angularRadPerS) {
        return Math.abs(alpha[i]) / (twiceDamping[i] * angular[i]);
      }
    }
    return 0;
  }

  @Override
  public double leastDampingRatio() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < angular.length; i++) {
      least = Math.min(least, twiceDamping[i] / (2 * angular[i]));
    }
    return least;
  }

  /** The sum of what each mode does not exceed. */
  @Override
  public double mostMPerN(double lowRadPerS, double highRadPerS) {
    double most = Math.abs(residualMPerN);
    double low = lowRadPerS * lowRadPerS;
    double high = highRadPerS * highRadPerS;
    for (int i = 0; i < square.length; i++) {
      double away = Math.max(0, Math.max(low - square[i], square[i] - high));
      double loss = twiceDamping[i] * lowRadPerS;
      double size =
          beta[i] == 0 ? Math.abs(alpha[i]) : Math.abs(alpha[i]) + highRadPerS * Math.abs(beta[i]);
      most += size / Math.sqrt(away * away + loss * loss);
    }
    return most;
  }

  /**
   * Steps of a tenth of the half width ζω_n at each mode, growing with the distance from it; from
   * 0.02 of the lowest to 4 times the highest frequency.
   */
  @Override
  public double[] supportRadPerS() {
    return grid(SupportGrid.FINE_STEPS_PER_HALF_WIDTH);
  }

  /** The same in steps of a third of the half width. */
  @Override
  public double[] coarseSupportRadPerS() {
    return grid(SupportGrid.COARSE_STEPS_PER_HALF_WIDTH);
  }

  private double[] grid(double stepsPerHalfWidth) {
    double[] halfWidth = new double[angular.length];
    for (int i = 0; i < halfWidth.length; i++) {
      halfWidth[i] = twiceDamping[i] / 2;
    }
    return SupportGrid.of(angular, halfWidth, stepsPerHalfWidth);
  }
}
