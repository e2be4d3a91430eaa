package org.gaugeline.assembly;

/**
 * One frustum of a body, in the order from the gauge plane outward.
 *
 * @param lengthM axial length, &gt; 0
 * @param startDiameterM diameter nearer the spindle, &gt; 0
 * @param endDiameterM diameter nearer the tool, &gt; 0
 * @param boreM diameter of the hole through it, ≥ 0
 * @param solidId what it is made of, a row of the table of solids
 */
public record ProfileSection(
    double lengthM, double startDiameterM, double endDiameterM, double boreM, String solidId) {
  private static final String STEEL = "steel";

  /** A frustum of steel. */
  public ProfileSection(double lengthM, double startDiameterM, double endDiameterM, double boreM) {
    this(lengthM, startDiameterM, endDiameterM, boreM, STEEL);
  }

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

  /** The same of another material. */
  ProfileSection of(String otherSolidId) {
    return new ProfileSection(lengthM, startDiameterM, endDiameterM, boreM, otherSolidId);
  }

  /** The same, longer or shorter by a factor. */
  ProfileSection stretched(double factor) {
    return new ProfileSection(lengthM * factor, startDiameterM, endDiameterM, boreM, solidId);
  }

  /** A piece of it, from a distance behind its start. */
  ProfileSection piece(double fromM, double pieceLengthM, double pieceBoreM) {
    return new ProfileSection(
        pieceLengthM, diameterM(fromM), diameterM(fromM + pieceLengthM), pieceBoreM, solidId);
  }

  /** Diameter at a distance behind its start. */
  public double diameterM(double fromM) {
    return startDiameterM + (endDiameterM - startDiameterM) * fromM / lengthM;
  }
}
