package org.gaugeline.assessment;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a stability chart shall show.
 *
 * @param fromRadPerS lowest speed; null where not said
 * @param toRadPerS highest speed; null where not said
 * @param speedsRadPerS speeds to solve for exactly
 * @param method null for the one that suits the immersion
 */
public record ChartAsked(
    @Nullable Double fromRadPerS,
    @Nullable Double toRadPerS,
    List<Double> speedsRadPerS,
    @Nullable StabilityMethod method) {
  /** Nothing said. */
  public static final ChartAsked NONE = new ChartAsked(null, null, List.of(), null);
}
