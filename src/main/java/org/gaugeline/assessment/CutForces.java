package org.gaugeline.assessment;

import org.gaugeline.reference.Spread;

/**
 * Forces of a cut that decide about holding and bending, SI.
 *
 * @param axialDepthM axial depth that they belong to
 * @param spread ratio of the forces' percentiles to their median
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
    double axialDepthM,
    Spread spread,
    double torqueNm,
    double peakTorqueNm,
    double peakTangentialForceN,
    double peakRadialForceN,
    double pullN,
    double pushN,
    double slipForceN,
    double feedForceN,
    double wallNormalForceN) {

  /**
   * Forces at a share of the way to another cut of the same depth, 0 here to 1 there, each taken as
   * a power law between the two.
   *
   * @param spreadThere their spread, which bends too sharply for that
   */
  CutForces timesPowerOf(CutForces other, double share, Spread spreadThere) {
    return new CutForces(
        axialDepthM,
        spreadThere,
        power(torqueNm, other.torqueNm, share),
        power(peakTorqueNm, other.peakTorqueNm, share),
        power(peakTangentialForceN, other.peakTangentialForceN, share),
        power(peakRadialForceN, other.peakRadialForceN, share),
        power(pullN, other.pullN, share),
        power(pushN, other.pushN, share),
        power(slipForceN, other.slipForceN, share),
        power(feedForceN, other.feedForceN, share),
        power(wallNormalForceN, other.wallNormalForceN, share));
  }

  private static double power(double from, double to, double share) {
    double ratio = to / from;
    return ratio > 0 ? from * Math.pow(ratio, share) : mix(from, to, share);
  }

  private static double mix(double from, double to, double share) {
    return from + share * (to - from);
  }
}
