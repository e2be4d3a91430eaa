package org.gaugeline.job;

/**
 * A member that the request left out and how it was filled.
 *
 * @param pointer JSON pointer into the intent
 * @param value what was assumed: a number in SI, a {@link org.gaugeline.reference.Word}, a text or
 *     a flag
 * @param reason code of the reason, worded at the edge
 * @param sourceKey source of the value; empty for pure geometry
 */
public record Assumption(String pointer, Object value, String reason, String sourceKey) {}
