package org.gaugeline.mechanics.cutting;

/**
 * Loads of a tool that makes or finishes a hole.
 *
 * @param torqueNm torque, N·m
 * @param thrustN axial force that pushes the tool into its holder, N
 * @param specificForcePa specific cutting force the torque stands for, Pa
 * @param chipThicknessM uncut chip thickness of one edge, m
 */
public record HoleLoads(
    double torqueNm, double thrustN, double specificForcePa, double chipThicknessM) {}
