package org.gaugeline.assessment;

/**
 * A step of assembling the holder; worded at the edge.
 *
 * @param code kebab code, a key of the wording templates
 * @param value number in SI; NaN where the step has none
 * @param measure kind of the number
 */
public record SetUpStep(String code, double value, Measure measure) {}
