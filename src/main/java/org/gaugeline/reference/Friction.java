package org.gaugeline.reference;

/**
 * Friction of a pair of surfaces.
 *
 * @param id such as {@code shank-clean}
 * @param coefficient coefficient of friction
 * @param sourceKey source of the row
 */
public record Friction(String id, Spread coefficient, String sourceKey) {}
