package org.gaugeline.mechanics.chatter;

/**
 * Limit depth found by semi-discretization.
 *
 * @param depthM limit depth, m; the highest depth searched if all are stable
 * @param isReached whether the cut is unstable beyond it
 * @param multiplier largest multiplier just beyond it
 */
public record SemiDiscreteLimit(double depthM, boolean isReached, FloquetMultiplier multiplier) {}
