package org.gaugeline.mechanics.reach;

/**
 * The smallest gap and where it is.
 *
 * @param gapM gap normal to the obstacle, m; negative = collision by so much
 * @param zM height of the nearest point of the profile above the tip, m
 * @param radiusM radius of the profile there, m
 * @param obstacle index of the obstacle, from 0
 */
public record Gap(double gapM, double zM, double radiusM, int obstacle) {}
