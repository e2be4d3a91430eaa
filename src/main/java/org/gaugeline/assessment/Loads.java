package org.gaugeline.assessment;

import java.util.List;

/** What the cut does, in SI; names as in the contract. */
public record Loads(
    double spindleSpeedRadPerS,
    double feedRateMPerS,
    double meanChipThicknessM,
    double specificForcePa,
    double removalRateM3PerS,
    double torqueNm,
    double powerW,
    double peakTorqueNm,
    double peakTangentialForceN,
    double peakRadialForceN,
    double axialPullN,
    double axialPushN,
    double feedForceN,
    double peakWallNormalForceN,
    double peakSlipForceN,
    List<String> basis) {}
