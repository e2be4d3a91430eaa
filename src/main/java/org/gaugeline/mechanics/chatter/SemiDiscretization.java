package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.receptance.ModalResponse;

/**
 * Stability of milling from the largest Floquet multiplier over one tooth period, by first-order
 * semi-discretization; shows period doubling and holds at any immersion, at a thousand times the
 * cost of {@link StabilityLobes}.
 *
 * <p>The tooth period τ = 2π/(NΩ) is parted into k steps. Within a step the directional factors are
 * replaced by their exact mean, the delayed displacement by a straight line, and z′ = A z + B H (C
 * z − u(t − τ)) is solved exactly; the product over the steps is the period map (Insperger and
 * Stépán, Int. J. Numer. Methods Eng. 61 (2004) 117; memory). Modes of any number in both
 * directions; residual compliances are left out. Teeth equally spaced, no helix. Damping by the
 * flanks as the process has it, as a velocity force with the mean factors of each step.
 */
public final class SemiDiscretization {
  /** Steps per period used unless another number is given. */
  public static final int DEFAULT_STEPS = 80;

  private static final double SEARCH_FACTOR = 1.15;
  private static final double CLOSE_ENOUGH = 5e-4;

  private final MillingProcess process;
  private final ModalStates states;
  private final int steps;
  private final double[] factors;
  private final double[] rubbing;

  /**
   * Prepares a cut and a tip.
   *
   * @param process the cut
   * @param x modes along the feed
   * @param y modes along the normal; a direction without modes is rigid
   * @param steps k, 20 to 1000; 80 or more, and at least 10 in each period of the fastest vibration
   */
  public SemiDiscretization(MillingProcess process, ModalResponse x, ModalResponse y, int steps) {
    Require.within("steps", steps, 20, 1000);
    Require.atLeastOne("number of modes", x.modes().size() + y.modes().size());
    this.process = process;
    this.states = new ModalStates(x.modes(), y.modes());
    this.steps = steps;
    double ratio = process.radialRatio();
    this.factors = means(process, steps, (from, to) -> DirectionalFactors.over(from, to, ratio));
    this.rubbing = means(process, steps, DirectionalFactors::rubbing);
  }

  /** Factors of an arc. */
  private interface OverArc {
    DirectionalFactors of(double fromRad, double toRad);
  }

  /** Mean of factors over each step of one tooth period, all teeth added up. */
  private static double[] means(MillingProcess process, int steps, OverArc over) {
    double entry = process.engagement().entryRad();
    double exit = process.engagement().exitRad();
    double pitch = 2 * Math.PI / process.teeth();
    double width = pitch / steps;
    double[] mean = new double[4 * steps];
    for (int i = 0; i < steps; i++) {
      for (int tooth = 0; tooth < process.teeth(); tooth++) {
        double from = Math.max(entry, tooth * pitch + i * width);
        double to = Math.min(exit, tooth * pitch + (i + 1) * width);
        if (to > from) {
          DirectionalFactors part = over.of(from, to);
          mean[4 * i] += part.xx() / width;
          mean[4 * i + 1] += part.xy() / width;
          mean[4 * i + 2] += part.yx() / width;
          mean[4 * i + 3] += part.yy() / width;
        }
      }
    }
    return mean;
  }

  /**
   * Largest multiplier at a speed and depth.
   *
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @param depthM axial depth a, m, 0 or more
   * @return µ
   */
  public FloquetMultiplier multiplier(double spindleRadPerS, double depthM) {
    PeriodMap map = map(spindleRadPerS, depthM);
    double[] largest = KrylovSpectrum.dominant(map.length(), map);
    return new FloquetMultiplier(largest[0], largest[1]);
  }

  PeriodMap map(double spindleRadPerS, double depthM) {
    double force = Require.notNegative("depthM", depthM) * process.tangentialPa() / 2;
    double velocityS = 2 * process.damping().timeS(spindleRadPerS);
    return new PeriodMap(
        states,
        new PeriodMap.Factors(factors, rubbing, velocityS),
        force,
        process.toothPeriodS(spindleRadPerS) / steps);
  }

  /**
   * Least depth that chatters at a speed: depths are tried upwards by 15 %, then halved to 0.05 %.
   *
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @param lowM depth to start from, m, greater than 0; returned if it is unstable already
   * @param highM largest depth of interest, m, above the lowest
   * @return the limit
   */
  public SemiDiscreteLimit limit(double spindleRadPerS, double lowM, double highM) {
    Require.positive("lowM", lowM);
    Require.positive("highM - lowM", highM - lowM);
    double stable = lowM;
    double tried = lowM;
    FloquetMultiplier beyond = multiplier(spindleRadPerS, tried);
    while (beyond.isStable() && tried < highM) {
      stable = tried;
      tried = Math.min(highM, tried * SEARCH_FACTOR);
      beyond = multiplier(spindleRadPerS, tried);
    }
    if (beyond.isStable()) {
      return new SemiDiscreteLimit(highM, false, beyond);
    }
    double unstable = tried;
    while (unstable - stable > CLOSE_ENOUGH * unstable) {
      double middle = (stable + unstable) / 2;
      FloquetMultiplier at = multiplier(spindleRadPerS, middle);
      if (at.isStable()) {
        stable = middle;
      } else {
        unstable = middle;
        beyond = at;
      }
    }
    return new SemiDiscreteLimit(stable, true, beyond);
  }
}
