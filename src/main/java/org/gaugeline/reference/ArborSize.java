package org.gaugeline.reference;

/**
 * The end of an arbor that carries a cutter with a bore (ISO 6462, ISO 240).
 *
 * @param id the bore in mm, with the way of clamping where it has more than one
 * @param boreM bore of the cutter, diameter of the pilot
 * @param faceDiameterM outer diameter of the face that the cutter sits on
 * @param pilotLengthM length of the pilot
 * @param tenonWidthM width of the two tenons across the face
 * @param tenonDepthM depth over which a tenon bears
 * @param keyWidthM width of the key along the pilot, for disc cutters
 * @param keyDepthM depth over which that key bears in the cutter
 * @param screwDiameterM nominal diameter of a clamping screw
 * @param screwPitchM its pitch
 * @param screws number of clamping screws
 * @param boltCircleM diameter on which they stand; 0 for one in the middle
 * @param screwTorqueNm tightening torque of one
 * @param maxCutterM widest shell mill that has this bore
 * @param bodyLengthM usual length of such a mill
 * @param sourceKey source of the row
 */
public record ArborSize(
    String id,
    double boreM,
    double faceDiameterM,
    double pilotLengthM,
    double tenonWidthM,
    double tenonDepthM,
    double keyWidthM,
    double keyDepthM,
    double screwDiameterM,
    double screwPitchM,
    int screws,
    double boltCircleM,
    Spread screwTorqueNm,
    double maxCutterM,
    double bodyLengthM,
    String sourceKey) {}
