package org.gaugeline.assessment;

import java.util.List;

/**
 * Why something stands where it stands: a code and numbers in SI, worded at the edge.
 *
 * @param criterion what it bears on
 * @param code kebab code, a key of the wording templates
 * @param tone for or against
 * @param demand what the job asks; NaN where there is no number
 * @param capacity what there is; NaN where there is no number, +∞ where nothing limits
 * @param measure kind of both numbers
 * @param subject a name the text needs (a material, an equipment word); empty where none
 * @param basis source keys
 */
public record Reason(
    Criterion criterion,
    String code,
    Tone tone,
    double demand,
    double capacity,
    Measure measure,
    String subject,
    List<String> basis) {}
