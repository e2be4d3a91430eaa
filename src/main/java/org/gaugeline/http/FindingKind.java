package org.gaugeline.http;

import java.util.List;
import org.gaugeline.assessment.Rule;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.ListCode;
import org.gaugeline.wording.Words;

/**
 * One code of findings, as the catalogue tells it.
 *
 * @param criterion what it bears on; {@code list} for what only shows when all lines are seen
 * @param sources source keys; empty where plain counting finds it
 */
record FindingKind(
    String code,
    String criterion,
    List<Severity> severities,
    List<String> sources,
    Words.Explained explained) {

  static FindingKind of(Rule rule, String code, Words words) {
    return new FindingKind(
        code, rule.criterion().id(), rule.severities(code), rule.sources(), words.explained(code));
  }

  static FindingKind of(ListCode code, Words words) {
    return new FindingKind(
        code.id(), "list", code.severities(), List.of(), words.explained(code.id()));
  }
}
