package org.gaugeline.http;

import java.util.List;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Reason;
import org.gaugeline.job.Job;
import org.gaugeline.wording.Words;

/** Reasons and cautions: codes and numbers of the engine, with their words. */
final class ReasonWriter {
  private final Words words;

  ReasonWriter(Words words) {
    this.words = words;
  }

  void reasons(JsonBytes json, List<Reason> reasons, Job job) {
    json.array("reasons");
    for (Reason reason : reasons) {
      json.object();
      json.word("criterion", reason.criterion().id());
      json.word("code", reason.code());
      json.word("tone", reason.tone().id());
      json.startText("text");
      words.reason(json, reason, job);
      json.endText();
      numbers(json, reason);
      basis(json, reason.basis());
      json.endObject();
    }
    json.endArray();
  }

  static void numbers(JsonBytes json, Reason reason) {
    json.number("demand", reason.measure().fromSi(reason.demand()));
    json.number("capacity", reason.measure().fromSi(reason.capacity()));
    String unit = reason.measure().unit();
    if (!unit.isEmpty()
        && (Double.isFinite(reason.demand()) || Double.isFinite(reason.capacity()))) {
      json.text("unit", unit);
    }
  }

  void cautions(JsonBytes json, List<Caution> cautions, Job job) {
    json.array("cautions");
    for (Caution caution : cautions) {
      caution(json, caution, List.of(), job);
      json.endObject();
    }
    json.endArray();
  }

  /** Opens a caution and says it, with the changes that it ends in; the caller closes it. */
  void caution(JsonBytes json, Caution caution, List<Change> changes, Job job) {
    json.object();
    json.word("code", caution.code());
    json.word("severity", caution.severity().id());
    json.startText("text");
    words.caution(json, caution, job);
    for (Change change : changes) {
      json.append(' ');
      words.change(json, change, job);
    }
    json.endText();
  }

  static void basis(JsonBytes json, List<String> basis) {
    json.texts("basis", basis);
  }
}
