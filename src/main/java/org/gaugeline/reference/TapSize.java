package org.gaugeline.reference;

/**
 * A metric thread size with its coarse pitch and the machine tap that cuts it.
 *
 * @param id such as {@code M10}
 * @param diameterM nominal thread diameter D
 * @param pitchM coarse pitch P
 * @param shankDiameterM shank diameter of the tap
 * @param squareM width of the driving square across its flats
 * @param squareLengthM length of the square
 * @param overallLengthM length of the tap
 * @param pitchSourceKey source of the pitch
 * @param sourceKey source of the tap's dimensions
 */
public record TapSize(
    String id,
    double diameterM,
    double pitchM,
    double shankDiameterM,
    double squareM,
    double squareLengthM,
    double overallLengthM,
    String pitchSourceKey,
    String sourceKey) {}
