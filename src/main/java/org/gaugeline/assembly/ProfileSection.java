package org.gaugeline.assembly;

/**
 * One frustum of a body, in the order from the gauge plane outward.
 *
 * @param lengthM axial length, &gt; 0
 * @param startDiameterM diameter nearer the spindle, &gt; 0
 * @param endDiameterM diameter nearer the tool, &gt; 0
 * @param boreM diameter of the hole through it, ≥ 0
 */
public record ProfileSection(
    double lengthM, double startDiameterM, double endDiameterM, double boreM) {
  public ProfileSection {
    if (!(lengthM > 0 && startDiameterM > boreM && endDiameterM > boreM && boreM >= 0)) {
      throw new IllegalArgumentException(
          "profile section needs length > 0 and diameters > bore ≥ 0, was length "
              + lengthM
              + " m, diameters "
              + startDiameterM
              + " and "
              + endDiameterM
              + " m, bore "
              + boreM
              + " m");
    }
  }
}
