package org.gaugeline.assessment;

/**
 * A limit that is passed or not, without a score.
 *
 * @param code kebab code, a key of the wording templates
 * @param severity null-free: {@link Severity#NOTE} is worth knowing and changes no standing
 * @param demand what the assembly needs, SI
 * @param capacity what there is, SI
 */
record Gate(
    String code,
    Severity severity,
    double demand,
    double capacity,
    Measure measure,
    String basis) {}
