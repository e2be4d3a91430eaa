package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
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

  void reasons(JsonGenerator json, List<Reason> reasons, Job job) throws IOException {
    json.writeArrayFieldStart("reasons");
    for (Reason reason : reasons) {
      json.writeStartObject();
      json.writeStringField("criterion", reason.criterion().id());
      json.writeStringField("code", reason.code());
      json.writeStringField("tone", reason.tone().id());
      json.writeStringField("text", words.reason(reason, job));
      JsonNumbers.member(json, "demand", reason.measure().fromSi(reason.demand()));
      JsonNumbers.member(json, "capacity", reason.measure().fromSi(reason.capacity()));
      String unit = reason.measure().unit();
      if (!unit.isEmpty()
          && (Double.isFinite(reason.demand()) || Double.isFinite(reason.capacity()))) {
        json.writeStringField("unit", unit);
      }
      basis(json, reason.basis());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  void cautions(JsonGenerator json, List<Caution> cautions, Job job) throws IOException {
    json.writeArrayFieldStart("cautions");
    for (Caution caution : cautions) {
      json.writeStartObject();
      json.writeStringField("code", caution.code());
      json.writeStringField("severity", caution.severity().id());
      json.writeStringField("text", words.caution(caution, job));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  static void basis(JsonGenerator json, List<String> basis) throws IOException {
    json.writeArrayFieldStart("basis");
    for (String key : basis) {
      json.writeString(key);
    }
    json.writeEndArray();
  }
}
