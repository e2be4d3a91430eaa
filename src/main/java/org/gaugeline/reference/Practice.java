package org.gaugeline.reference;

/**
 * A single named value of practice or theory that the models need (a safety factor, a default
 * clearance, an allowable stress), in the unit that its id ends in.
 *
 * @param id name ending in its unit, such as {@code defaultWallClearanceM}
 * @param value the value with its spread
 * @param note what it is used for
 * @param sourceKey source of the row
 */
public record Practice(String id, Spread value, String note, String sourceKey) {}
