package org.gaugeline.assessment;

import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Substrate;
import org.jspecify.annotations.Nullable;

/**
 * What a bore holds: the tool's shank, or that of an extension.
 *
 * @param diameterM diameter
 * @param solid what it is made of
 * @param substrate the same as the trade calls it
 * @param form its form
 * @param size the standard size; null for a diameter that no standard has
 */
record GrippedShank(
    double diameterM, Solid solid, Substrate substrate, ShankForm form, @Nullable ShankSize size) {

  /** Whether a clamping screw finds its flat. */
  boolean hasFlat() {
    return (form == ShankForm.FLAT || form == ShankForm.INCLINED_FLAT)
        && size != null
        && size.screwDiameterM() > 0;
  }
}
