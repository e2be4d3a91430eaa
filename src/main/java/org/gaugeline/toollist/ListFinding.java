package org.gaugeline.toollist;

import java.util.List;
import org.gaugeline.assessment.Severity;

/**
 * What shows only when all lines are seen.
 *
 * @param code what it is about
 * @param severity how hard it is
 * @param subject the id, reference, spindle end or column it speaks of
 * @param demand what the list asks for, a count; NaN where there is no number
 * @param capacity what there is, a count; NaN where there is no number
 * @param places lines that it touches, the first {@value #MOST_PLACES}; empty for the whole list
 */
public record ListFinding(
    ListCode code,
    Severity severity,
    String subject,
    double demand,
    double capacity,
    List<LinePlace> places) {
  /** Lines after these are only counted. */
  public static final int MOST_PLACES = 20;
}
