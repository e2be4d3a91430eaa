package org.gaugeline.job;

import java.util.Map;

/**
 * Something in an intent that only the reference data can find wrong; worded at the edge.
 *
 * @param pointer JSON pointer into the intent
 * @param code kebab code, such as {@code unknown-name}
 * @param parameters the numbers and words that the text needs, in the order of showing
 */
public record IntentFault(String pointer, String code, Map<String, Object> parameters) {}
