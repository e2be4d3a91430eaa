package org.gaugeline.mechanics.chatter;

/**
 * A speed at which more depth is stable than at the speeds beside it.
 *
 * @param spindleRadPerS Ω, rad/s
 * @param depthM limit depth there, m
 */
public record StablePocket(double spindleRadPerS, double depthM) {}
