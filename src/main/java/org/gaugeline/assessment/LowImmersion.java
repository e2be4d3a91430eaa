package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.SemiDiscreteLimit;
import org.gaugeline.mechanics.chatter.SemiDiscretization;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;

/**
 * Depth limits by semi-discretization around those of the zeroth-order solution, with so many steps
 * a tooth period that the fastest mode that matters is followed.
 */
final class LowImmersion {
  /** A chip that thin is none: the search for a stable depth ends here. */
  private static final double LEAST_M = 1e-7;

  private static final double LEAST_SHARE = 0.25;
  private static final double MOST_SHARE = 4;
  private static final double STIFF_ENOUGH = 10;
  private static final int STEPS_PER_VIBRATION = 10;
  private static final int MOST_STEPS = 400;

  private final MillingProcess process;
  private final ModalResponse x;
  private final ModalResponse y;
  private final double fastestRadPerS;

  private LowImmersion(MillingProcess process, ModalResponse x, ModalResponse y) {
    this.process = process;
    double softest = Math.min(softest(x), softest(y));
    this.x = soft(x, STIFF_ENOUGH * softest);
    this.y = soft(y, STIFF_ENOUGH * softest);
    this.fastestRadPerS = Math.max(fastest(this.x), fastest(this.y));
  }

  /** Whether the tip is known as modes, which the method needs. */
  static boolean applies(TipModel tip) {
    return tip.x() instanceof ModalResponse x
        && tip.y() instanceof ModalResponse y
        && x.modes().size() + y.modes().size() > 0;
  }

  static LowImmersion of(MillingProcess process, TipModel tip) {
    return new LowImmersion(process, (ModalResponse) tip.x(), (ModalResponse) tip.y());
  }

  private static double softest(ModalResponse response) {
    return response.modes().stream()
        .mapToDouble(TipMode::stiffnessNPerM)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double fastest(ModalResponse response) {
    return response.modes().stream().mapToDouble(TipMode::angularFrequencyRadPerS).max().orElse(0);
  }

  private static ModalResponse soft(ModalResponse response, double upToNPerM) {
    List<TipMode> kept =
        response.modes().stream().filter(m -> m.stiffnessNPerM() <= upToNPerM).toList();
    return new ModalResponse(kept, 0);
  }

  private SemiDiscretization at(double spindleRadPerS) {
    double turns = process.toothPeriodS(spindleRadPerS) * fastestRadPerS / (2 * Math.PI);
    int steps =
        (int)
            Math.min(
                MOST_STEPS,
                Math.max(SemiDiscretization.DEFAULT_STEPS, Math.ceil(STEPS_PER_VIBRATION * turns)));
    return new SemiDiscretization(process, x, y, steps);
  }

  /** Whether a cut is stable. */
  boolean isStable(double spindleRadPerS, double depthM) {
    return at(spindleRadPerS).multiplier(spindleRadPerS, depthM).isStable();
  }

  /**
   * The limit at a speed, looked for up to four times a depth, and upwards from a depth that is
   * stable: period doubling cuts through pockets of the zeroth-order solution, so that neither a
   * share of the pocket nor of the floor need be stable.
   *
   * @param aroundM the zeroth-order limit there; +∞ where it knows none
   * @param floorM the zeroth-order limit at the worst speed; +∞ where there is none
   * @return depth, m; what was looked up to where nothing chatters before; +∞ where neither limits
   */
  double limitM(double spindleRadPerS, double aroundM, double floorM) {
    double least = Math.min(aroundM, floorM);
    if (Double.isInfinite(least)) {
      return least;
    }
    double most = MOST_SHARE * (Double.isInfinite(aroundM) ? MOST_SHARE * least : aroundM);
    double start = LEAST_SHARE * least;
    while (start > LEAST_M && !isStable(spindleRadPerS, start)) {
      start *= LEAST_SHARE;
    }
    SemiDiscreteLimit limit = at(spindleRadPerS).limit(spindleRadPerS, start, most);
    return limit.isReached() || Double.isFinite(aroundM) ? limit.depthM() : aroundM;
  }
}
