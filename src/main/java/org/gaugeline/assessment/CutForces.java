package org.gaugeline.assessment;

/**
 * Forces of a cut that decide about holding and bending, SI.
 *
 * @param torqueNm mean torque
 * @param peakTorqueNm largest torque over a revolution
 * @param peakTangentialForceN largest tangential force of all teeth together
 * @param peakRadialForceN largest lateral resultant
 * @param pullN largest axial force out of the holder, ≥ 0
 * @param pushN largest axial force into the holder, ≥ 0
 * @param slipForceN largest √((2M/d)² + F_pull²) at one instant, d the shank diameter
 * @param feedForceN mean force along the feed
 * @param wallNormalForceN largest force normal to the wall while an edge leaves it
 */
record CutForces(
    double torqueNm,
    double peakTorqueNm,
    double peakTangentialForceN,
    double peakRadialForceN,
    double pullN,
    double pushN,
    double slipForceN,
    double feedForceN,
    double wallNormalForceN) {

  /** The same cut with all forces multiplied, as by a harder material. */
  CutForces scaled(double k) {
    return new CutForces(
        torqueNm * k,
        peakTorqueNm * k,
        peakTangentialForceN * k,
        peakRadialForceN * k,
        pullN * k,
        pushN * k,
        slipForceN * k,
        feedForceN * k,
        wallNormalForceN * k);
  }
}
