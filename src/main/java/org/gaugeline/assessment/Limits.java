package org.gaugeline.assessment;

/** Solved limits of one assembly for one job, each with all else as asked. */
public record Limits(
    Limit spindleSpeedRadPerS,
    Limit torqueNm,
    Limit axialForceN,
    Limit axialDepthM,
    Limit feedPerToothM,
    Limit stickOutM,
    Limit featureDepthM) {}
