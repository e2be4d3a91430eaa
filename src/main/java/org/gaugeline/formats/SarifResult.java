package org.gaugeline.formats;

import java.util.List;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.LinePlace;

/**
 * A finding as SARIF tells it.
 *
 * @param code of its rule
 * @param message what is wrong, in words
 * @param places lines that it touches, the first of which it is shown at; empty for the whole list
 * @param fingerprint by which it is known again
 * @param details numbers and pointer
 */
record SarifResult(
    String code,
    Severity severity,
    String message,
    List<LinePlace> places,
    String fingerprint,
    Details details) {

  /**
   * Numbers and pointer of a finding.
   *
   * @param pointer JSON pointer into the line; empty for the line or list as a whole
   * @param faultCode of a refused line's fault; empty otherwise
   * @param demand in the unit; NaN where there is no number
   * @param capacity in the unit; NaN or infinite where there is no number
   * @param unit empty for numbers without one
   */
  record Details(String pointer, String faultCode, double demand, double capacity, String unit) {}

  /**
   * Text as a plain message of SARIF (3.11): braces are doubled, for single ones mark placeholders,
   * and what reads like a link is parted.
   */
  static String plain(String text) {
    return Characters.paired(text).replace("{", "{{").replace("}", "}}").replace("](", "] (");
  }
}
