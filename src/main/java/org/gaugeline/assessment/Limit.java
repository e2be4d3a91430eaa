package org.gaugeline.assessment;

/**
 * The furthest a quantity can go before an error appears, rounded to the safe side.
 *
 * @param value in SI; +∞ where nothing bounds it; NaN where not even the least value is safe
 * @param governedBy code of the pair or gate that stops it
 */
public record Limit(double value, String governedBy) {}
