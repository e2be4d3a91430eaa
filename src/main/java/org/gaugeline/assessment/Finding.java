package org.gaugeline.assessment;

/**
 * What is wrong with an assembly, or worth knowing of it.
 *
 * @param code kebab code, a key of the wording templates and of the catalogue of findings
 * @param severity how hard it is
 * @param reason numbers, criterion and source
 * @param pointer where in the request the cause stands; empty for the assembly as a whole
 */
public record Finding(String code, Severity severity, Reason reason, String pointer) {}
