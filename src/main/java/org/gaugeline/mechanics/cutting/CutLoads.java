package org.gaugeline.mechanics.cutting;

/**
 * Loads of a milling cut at one axial depth. Peaks are taken over a whole revolution, all teeth and
 * the whole edge summed at the same instant, without runout. Power is torque times angular
 * velocity.
 *
 * @param meanTorqueNm mean torque, N·m
 * @param peakTorqueNm largest torque, N·m
 * @param peakTangentialForceN largest torque over half the cutter's diameter, N
 * @param peakRadialForceN largest lateral resultant, N
 * @param peakAxialPullN largest axial force out of the holder, N, &ge; 0
 * @param peakAxialPushN largest axial force into the holder, N, &ge; 0
 * @param meanFeedForceN mean lateral force against the feed, N; negative where the work drags the
 *     cutter along, as down-milling can
 * @param peakWallNormalForceN largest |force| normal to the wall over the instants at which some
 *     point of an edge within the depth generates a wall (φ = 0 or π), N; 0 where no wall is left
 * @param peakSlipForcePulledN largest √((2M/d)² + Fa²) at the grip diameter, Fa counted only where
 *     it pulls out, N
 * @param peakSlipForcePushedN the same with Fa counted only where it pushes in, N
 * @param meanChipThicknessM mean chip thickness over arc and edge, m
 * @param maxChipThicknessM largest chip thickness, m
 * @param toothEngagement mean number of teeth in the arc, z·φs/2π
 */
public record CutLoads(
    double meanTorqueNm,
    double peakTorqueNm,
    double peakTangentialForceN,
    double peakRadialForceN,
    double peakAxialPullN,
    double peakAxialPushN,
    double meanFeedForceN,
    double peakWallNormalForceN,
    double peakSlipForcePulledN,
    double peakSlipForcePushedN,
    double meanChipThicknessM,
    double maxChipThicknessM,
    double toothEngagement) {}
