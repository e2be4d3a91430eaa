package org.gaugeline.assembly;

import org.jspecify.annotations.Nullable;

/**
 * A tuned mass inside a body.
 *
 * @param atM middle of the mass, from the gauge plane
 * @param massKg the mass
 */
public record Damper(double atM, double massKg) {

  /** The same mass behind a body that is longer by so much. */
  static @Nullable Damper shifted(@Nullable Damper damper, double byM) {
    return damper == null ? null : new Damper(damper.atM + byM, damper.massKg);
  }
}
