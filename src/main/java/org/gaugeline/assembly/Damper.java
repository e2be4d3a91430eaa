package org.gaugeline.assembly;

/**
 * A tuned mass inside a body.
 *
 * @param atM middle of the mass, from the gauge plane
 * @param massKg the mass
 */
public record Damper(double atM, double massKg) {}
