package org.gaugeline.mechanics.receptance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.gaugeline.mechanics.beam.ReducedModes;

/**
 * Response of the tip of a bar with a tuned mass at some place of it, from the bar's modes. Sums up
 * to receptance coupling of one spring (see {@link ReceptanceGrid#attach}). Immutable.
 *
 * <p>With the receptances H_tt, H_tp and H_pp of the bar alone between tip t and place p, and the
 * dynamic stiffness Z of the mass (see {@link TunedMass}), which pulls with −Z·x_p: x_p = H_tp·f −
 * H_pp·Z·x_p and x_t = H_tt·f − H_tp·Z·x_p, so that H = H_tt − Z·H_tp²/(1 + Z·H_pp). Each
 * receptance is Σφφ/(ω_n²(1 + 2iζ) − ω²) and a residual compliance; valid up to about the highest
 * of the modes.
 *
 * <p>Damping is hysteretic with the loss factor 2ζ, as in receptance coupling: where the mass moves
 * a resonance, what the bar loses in a cycle stays as it is.
 */
public final class TunedResponse implements TipResponse {
  private static final double BETWEEN_ENDS = 1.5;
  private static final double NEAR_HALF_WIDTHS = 4;
  private static final int BISECTIONS = 30;

  private final List<HostMode> modes;
  private final double tipResidual;
  private final double crossResidual;
  private final double placeResidual;
  private final TunedMass mass;

  private final double[] square;
  private final double[] loss;
  private final double[] tip;
  private final double[] cross;
  private final double[] place;

  /** Frequencies of the resonances, and their half widths. */
  private final double[] angular;

  private final double[] halfWidth;
  private final double[] peaks;

  /**
   * A response of given modes.
   *
   * @param modes modes of the bar without the mass, at least one
   * @param tipResidualMPerN compliance of the tip by the modes left out, m/N
   * @param crossResidualMPerN that between tip and place, m/N
   * @param placeResidualMPerN that of the place, m/N, 0 or more
   * @param mass the tuned mass
   * @throws IllegalArgumentException if there is no mode
   */
  public TunedResponse(
      List<HostMode> modes,
      double tipResidualMPerN,
      double crossResidualMPerN,
      double placeResidualMPerN,
      TunedMass mass) {
    if (modes.isEmpty()) {
      throw new IllegalArgumentException("a bar with a tuned mass needs at least one mode");
    }
    this.modes = List.copyOf(modes);
    this.tipResidual = tipResidualMPerN;
    this.crossResidual = crossResidualMPerN;
    this.placeResidual = placeResidualMPerN;
    this.mass = mass;
    int n = modes.size();
    square = new double[n];
    loss = new double[n];
    tip = new double[n];
    cross = new double[n];
    place = new double[n];
    for (int i = 0; i < n; i++) {
      HostMode mode = modes.get(i);
      double w = mode.angularFrequencyRadPerS();
      square[i] = w * w;
      loss[i] = 2 * mode.dampingRatio() * square[i];
      tip[i] = mode.tipShape() * mode.tipShape();
      cross[i] = mode.tipShape() * mode.placeShape();
      place[i] = mode.placeShape() * mode.placeShape();
    }
    boolean hangs = mass.massKg() > 0;
    angular = new double[hangs ? 2 * n + 1 : n];
    halfWidth = new double[angular.length];
    findResonances(hangs);
    peaks = byResponse();
  }

  /**
   * Solved modes of a reduced chain with a watched place, and a tuned mass there.
   *
   * @param modes of the bar without the mass, solved
   * @param dampingRatio ζ of a mode by the share of its strain energy in the base joint, above 0 to
   *     below 1
   * @param mass the tuned mass
   * @return the response
   */
  public static TunedResponse of(
      ReducedModes modes, DoubleUnaryOperator dampingRatio, TunedMass mass) {
    List<HostMode> host = new ArrayList<>(modes.count());
    for (int i = 0; i < modes.count(); i++) {
      host.add(
          new HostMode(
              modes.angularFrequencyRadPerS(i),
              dampingRatio.applyAsDouble(modes.baseEnergyShare(i)),
              modes.tipShape(i),
              modes.placeShape(i)));
    }
    return new TunedResponse(
        host,
        modes.tipResidualMPerN(),
        modes.crossResidualMPerN(),
        modes.placeResidualMPerN(),
        mass);
  }

  /**
   * The modes of the bar alone.
   *
   * @return as given
   */
  public List<HostMode> modes() {
    return modes;
  }

  /**
   * The tuned mass.
   *
   * @return as given
   */
  public TunedMass mass() {
    return mass;
  }

  @Override
  public void at(double omegaRadPerS, double[] target, int at) {
    double w2 = omegaRadPerS * omegaRadPerS;
    double ttRe = tipResidual;
    double ttIm = 0;
    double tpRe = crossResidual;
    double tpIm = 0;
    double ppRe = placeResidual;
    double ppIm = 0;
    for (int i = 0; i < square.length; i++) {
      double downRe = square[i] - w2;
      double downIm = loss[i];
      double scale = 1 / (downRe * downRe + downIm * downIm);
      double re = downRe * scale;
      double im = -downIm * scale;
      ttRe += tip[i] * re;
      ttIm += tip[i] * im;
      tpRe += cross[i] * re;
      tpIm += cross[i] * im;
      ppRe += place[i] * re;
      ppIm += place[i] * im;
    }
    // H_tt − Z·H_tp²/(1 + Z·H_pp), with Z = up/down of the mass
    double r = omegaRadPerS / mass.angularFrequencyRadPerS();
    double springIm = 2 * mass.dampingRatio() * r;
    double leftRe = 1 - r * r;
    double pull = -w2 * mass.massKg();
    double upIm = pull * springIm;
    double downRe = leftRe + pull * ppRe - upIm * ppIm;
    double downIm = springIm + pull * ppIm + upIm * ppRe;
    double scale = 1 / (downRe * downRe + downIm * downIm);
    double shareRe = (pull * downRe + upIm * downIm) * scale;
    double shareIm = (upIm * downRe - pull * downIm) * scale;
    double squareRe = tpRe * tpRe - tpIm * tpIm;
    double squareIm = 2 * tpRe * tpIm;
    target[at] = ttRe - (shareRe * squareRe - shareIm * squareIm);
    target[at + 1] = ttIm - (shareRe * squareIm + shareIm * squareRe);
  }

  /**
   * Steps as for modes alone, around the modes of bar and mass together, and around those with the
   * mass stuck to the bar: the former are the resonances where the mass is damped little, the
   * latter where it is damped so much that it cannot move.
   */
  @Override
  public double[] supportRadPerS() {
    return grid(SupportGrid.FINE_STEPS_PER_HALF_WIDTH);
  }

  @Override
  public double[] coarseSupportRadPerS() {
    return grid(SupportGrid.COARSE_STEPS_PER_HALF_WIDTH);
  }

  @Override
  public double[] peaksRadPerS() {
    return peaks.clone();
  }

  @Override
  public double leastDampingRatio() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < angular.length; i++) {
      least = Math.min(least, halfWidth[i] / angular[i]);
    }
    return least;
  }

  /**
   * Away from the resonances |H| is convex, so that the larger end bounds it but for a share; near
   * one nothing is said.
   */
  @Override
  public double mostMPerN(double lowRadPerS, double highRadPerS) {
    for (int i = 0; i < angular.length; i++) {
      double near = NEAR_HALF_WIDTHS * halfWidth[i];
      if (angular[i] + near >= lowRadPerS && angular[i] - near <= highRadPerS) {
        return Double.POSITIVE_INFINITY;
      }
    }
    double[] ends = new double[4];
    at(lowRadPerS, ends, 0);
    at(highRadPerS, ends, 2);
    double low = Math.sqrt(ends[0] * ends[0] + ends[1] * ends[1]);
    double high = Math.sqrt(ends[2] * ends[2] + ends[3] * ends[3]);
    return BETWEEN_ENDS * Math.max(low, high);
  }

  private void findResonances(boolean hangs) {
    int n = square.length;
    double own = mass.angularFrequencyRadPerS() * mass.angularFrequencyRadPerS();
    for (int i = 0; i < n; i++) {
      angular[i] = Math.sqrt(hangs ? coupledSquare(i, 0, square[i]) : square[i]);
      halfWidth[i] = loss[i] / (2 * angular[i]);
    }
    for (int i = n; i < angular.length; i++) {
      double most =
          i < 2 * n
              ? square[i - n]
              : square[n - 1] + own * (1 + mass.massKg() * Arrays.stream(place).sum());
      double root = coupledSquare(i - n, 1 / (mass.massKg() * own), most);
      angular[i] = Math.sqrt(root);
      halfWidth[i] = coupledHalfWidth(root);
    }
  }

  /** Frequencies of the resonances, that with the largest response first. */
  private double[] byResponse() {
    double[] ordered = angular.clone();
    double[] size = new double[ordered.length];
    double[] h = new double[2];
    for (int i = 0; i < ordered.length; i++) {
      at(angular[i], h, 0);
      double now = h[0] * h[0] + h[1] * h[1];
      int k = i;
      for (; k > 0 && size[k - 1] < now; k--) {
        size[k] = size[k - 1];
        ordered[k] = ordered[k - 1];
      }
      size[k] = now;
      ordered[k] = angular[i];
    }
    return ordered;
  }

  private double[] grid(double stepsPerHalfWidth) {
    return SupportGrid.of(angular, halfWidth, stepsPerHalfWidth);
  }

  /**
   * Undamped ω² of bar and mass together: the zeros of H_pp + 1/Z = H_pp + 1/k₂ − 1/(m₂ω²), which
   * grows between its poles at 0 and the modes of the bar, and becomes positive above the last.
   */
  private double coupledSquare(int index, double springMPerN, double most) {
    double low = index == 0 ? 0 : square[index - 1];
    double high = most;
    for (int step = 0; step < BISECTIONS; step++) {
      double middle = (low + high) / 2;
      double sum = placeResidual + springMPerN - 1 / (mass.massKg() * middle);
      for (int i = 0; i < square.length; i++) {
        sum += place[i] / (square[i] - middle);
      }
      if (sum > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Half the damping that bar and mass give an undamped mode of both (Rayleigh's quotient). */
  private double coupledHalfWidth(double root) {
    double own = mass.angularFrequencyRadPerS();
    double omega = Math.sqrt(root);
    double lost = 2 * mass.dampingRatio() / (mass.massKg() * own * own * own);
    double inertia = 1 / (mass.massKg() * root * root);
    for (int i = 0; i < square.length; i++) {
      double weight = place[i] / ((square[i] - root) * (square[i] - root));
      lost += weight * loss[i] / omega;
      inertia += weight;
    }
    return lost / (2 * inertia);
  }
}
