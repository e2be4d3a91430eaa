package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * A milling cut in all but its axial depth.
 *
 * @param cutter the cutter
 * @param engagement arc of contact, taken the same over the whole depth
 * @param feedPerToothM feed per tooth fz, m, &gt; 0
 * @param specificForce specific cutting force of the material
 * @param radialRatio force normal to the edge over tangential force, Fr/Ft, 0 to 2
 * @param gripDiameterM shank diameter at which the holder grips, m, &gt; 0
 */
public record MillingCut(
    MillingCutter cutter,
    MillingEngagement engagement,
    double feedPerToothM,
    SpecificForce specificForce,
    double radialRatio,
    double gripDiameterM) {
  public MillingCut {
    Require.positive("feedPerToothM", feedPerToothM);
    Require.within("radialRatio", radialRatio, 0, 2);
    Require.positive("gripDiameterM", gripDiameterM);
  }
}
