package org.gaugeline.reference;

/**
 * An ER collet size with its nut (ISO 15488).
 *
 * @param id such as {@code ER32}
 * @param minBoreM smallest shank
 * @param maxBoreM largest shank
 * @param collapseM how far a collet closes below its nominal size
 * @param nutThreadDiameterM nominal diameter of the nut thread
 * @param nutThreadPitchM pitch of the nut thread
 * @param nutDiameterM outside diameter of the nut
 * @param nutLengthM nut standing in front of the body
 * @param colletLengthM length of the gripping bore
 * @param nutTorqueNm tightening torque where none is given
 * @param nutFaceDiameterM mean diameter of the nut's bearing on the collet
 * @param maxSpeedRadPerS usual ceiling
 * @param sourceKey source of the row
 */
public record ColletSize(
    String id,
    double minBoreM,
    double maxBoreM,
    double collapseM,
    double nutThreadDiameterM,
    double nutThreadPitchM,
    double nutDiameterM,
    double nutLengthM,
    double colletLengthM,
    Spread nutTorqueNm,
    double nutFaceDiameterM,
    Spread maxSpeedRadPerS,
    String sourceKey) {}
