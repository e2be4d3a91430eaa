package org.gaugeline.assembly;

import org.jspecify.annotations.Nullable;

/**
 * A tuned mass inside a body.
 *
 * @param atM middle of the mass, from the gauge plane
 * @param massKg the mass
 * @param frequencyHz its own frequency on a fixed body; NaN where not told
 * @param dampingRatio damping over critical at that frequency; NaN where not told
 */
public record Damper(double atM, double massKg, double frequencyHz, double dampingRatio) {

  /** A mass of which nothing else is told. */
  public Damper(double atM, double massKg) {
    this(atM, massKg, Double.NaN, Double.NaN);
  }

  /** The same mass behind a body that is longer by so much. */
  static @Nullable Damper shifted(@Nullable Damper damper, double byM) {
    return damper == null
        ? null
        : new Damper(damper.atM + byM, damper.massKg, damper.frequencyHz, damper.dampingRatio);
  }
}
