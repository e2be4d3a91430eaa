package org.gaugeline.reference;

/**
 * An elastic solid: tool, shank or holder body.
 *
 * @param id such as {@code steel} or a substrate word
 * @param youngPa modulus of elasticity
 * @param poisson Poisson's ratio
 * @param densityKgPerM3 density
 * @param thermalExpansionPerK linear expansion
 * @param sourceKey source of the row
 */
public record Solid(
    String id,
    Spread youngPa,
    double poisson,
    double densityKgPerM3,
    double thermalExpansionPerK,
    String sourceKey) {}
