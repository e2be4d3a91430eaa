package org.gaugeline.formats;

import org.gaugeline.assessment.Rule;
import org.gaugeline.assessment.Rules;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.ListCode;
import org.gaugeline.wording.Words;
import org.gaugeline.wording.Words.Explained;

/**
 * A rule as SARIF tells it.
 *
 * @param code kebab code
 * @param hardest how hard a finding of it can be
 * @param explained in words without numbers
 */
record SarifRule(String code, Severity hardest, Explained explained) {
  /**
   * The rule of a code.
   *
   * @throws IllegalArgumentException for a code that no rule has
   */
  static SarifRule of(String code, Words words) {
    return new SarifRule(code, hardest(code), words.explained(code));
  }

  private static Severity hardest(String code) {
    for (Rule rule : Rules.ALL) {
      if (rule.codes().contains(code)) {
        return rule.severities(code).get(0);
      }
    }
    for (ListCode listCode : ListCode.values()) {
      if (listCode.id().equals(code)) {
        return listCode.severities().get(0);
      }
    }
    throw new IllegalArgumentException("no rule has the code " + code);
  }

  String help() {
    return "Found by: " + explained.formula() + "\nWhat to do: " + explained.remedy();
  }
}
