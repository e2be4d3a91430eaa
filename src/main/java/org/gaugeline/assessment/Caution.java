package org.gaugeline.assessment;

/**
 * Something a person must know before acting; worded at the edge.
 *
 * @param code kebab code, a key of the wording templates
 * @param severity how hard it is
 * @param value a number in SI that the text shows; NaN where none
 * @param measure kind of the number
 * @param subject a name the text needs; empty where none
 */
public record Caution(
    String code, Severity severity, double value, Measure measure, String subject) {}
