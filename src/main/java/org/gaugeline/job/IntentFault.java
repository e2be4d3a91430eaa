package org.gaugeline.job;

import java.util.Map;

/**
 * Something in an intent that cannot be computed; worded at the edge.
 *
 * @param pointer JSON pointer into the request
 * @param code kebab code
 * @param parameters values that the text shows, in a fixed order
 */
public record IntentFault(String pointer, String code, Map<String, Object> parameters) {}
