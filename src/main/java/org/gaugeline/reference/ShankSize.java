package org.gaugeline.reference;

/**
 * A standard cylindrical shank (DIN 6535, DIN 1835 or inch practice) with its clamping flat.
 *
 * @param id such as {@code 12} or {@code 1/2 in}
 * @param diameterM shank diameter
 * @param lengthM shank length l1
 * @param minInsertionM least length in gripping contact for shrink and hydraulic holders
 * @param flatWidthM width of the flat; 0 where the standard has none
 * @param flatPositionM shank end to the flat's centre, e1
 * @param flatHeightM height over the flat, h1
 * @param flats number of flats
 * @param screwDiameterM nominal diameter of the clamping screw
 * @param sourceKey source of the row
 */
public record ShankSize(
    String id,
    double diameterM,
    double lengthM,
    double minInsertionM,
    double flatWidthM,
    double flatPositionM,
    double flatHeightM,
    int flats,
    double screwDiameterM,
    String sourceKey) {}
