package org.gaugeline.toollist;

import java.util.List;
import java.util.Map;

/**
 * A line that could not be weighed.
 *
 * @param kind last part of the problem type's URN
 * @param title the kind in words
 * @param status HTTP status that the line would have had alone
 * @param detail what happened
 * @param faults all faults of the line
 */
public record RefusedLine(
    LinePlace place, String kind, String title, int status, String detail, List<Fault> faults)
    implements LineResult {

  /**
   * One fault of a line.
   *
   * @param pointer JSON pointer into the line as completed by the list
   * @param code kebab code
   * @param detail value, bound and likely cause
   * @param parameters the numbers and words of the detail, in the order of writing
   */
  public record Fault(String pointer, String code, String detail, Map<String, Object> parameters) {}
}
