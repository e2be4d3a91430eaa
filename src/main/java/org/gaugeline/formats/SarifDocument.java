package org.gaugeline.formats;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.toollist.LinePlace;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.Totals;
import org.gaugeline.wording.Words;

/** Collected results as a SARIF log, in the order of the standard's own examples. */
final class SarifDocument {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .disable(StreamWriteFeature.FLUSH_PASSED_TO_STREAM)
          .build();

  private final Words words;
  private final String artifactUri;

  SarifDocument(Words words, String artifactUri) {
    this.words = words;
    this.artifactUri = artifactUri;
  }

  void write(OutputStream out, List<SarifResult> results, ListSummary summary) throws IOException {
    List<String> codes = codes(results);
    try (JsonGenerator json = JSON.createGenerator(out, JsonEncoding.UTF8)) {
      json.writeStartObject();
      json.writeStringField("$schema", SCHEMA);
      json.writeStringField("version", "2.1.0");
      json.writeArrayFieldStart("runs");
      json.writeStartObject();
      tool(json, codes);
      json.writeArrayFieldStart("invocations");
      json.writeStartObject();
      json.writeBooleanField("executionSuccessful", true);
      json.writeEndObject();
      json.writeEndArray();
      json.writeStringField("columnKind", "utf16CodeUnits");
      results(json, results, codes);
      summary(json, summary);
      json.writeEndObject();
      json.writeEndArray();
      json.writeEndObject();
    }
  }

  /** Every code that occurs, in the alphabet's order, which no order of lines changes. */
  private static List<String> codes(List<SarifResult> results) {
    TreeSet<String> codes = new TreeSet<>();
    results.forEach(result -> codes.add(result.code()));
    return new ArrayList<>(codes);
  }

  private void tool(JsonGenerator json, List<String> codes) throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "Gaugeline");
    json.writeStringField("version", EngineVersion.CURRENT);
    json.writeStringField("semanticVersion", EngineVersion.CURRENT);
    json.writeArrayFieldStart("rules");
    for (String code : codes) {
      rule(json, SarifRule.of(code, words));
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void rule(JsonGenerator json, SarifRule rule) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", rule.code());
    message(json, "shortDescription", rule.explained().meaning());
    message(json, "fullDescription", rule.explained().meaning());
    message(json, "help", rule.help());
    json.writeObjectFieldStart("defaultConfiguration");
    json.writeStringField("level", rule.hardest().id());
    json.writeEndObject();
    json.writeEndObject();
  }

  private void results(JsonGenerator json, List<SarifResult> results, List<String> codes)
      throws IOException {
    json.writeArrayFieldStart("results");
    for (SarifResult result : results) {
      json.writeStartObject();
      json.writeStringField("ruleId", result.code());
      json.writeNumberField("ruleIndex", Collections.binarySearch(codes, result.code()));
      json.writeStringField("level", result.severity().id());
      message(json, "message", result.message());
      locations(json, result.places());
      json.writeObjectFieldStart("partialFingerprints");
      json.writeStringField(Fingerprints.NAME, result.fingerprint());
      json.writeEndObject();
      details(json, result.details());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A result about no line of its own is shown at the first. */
  private void locations(JsonGenerator json, List<LinePlace> places) throws IOException {
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    physical(json, places.isEmpty() ? 1 : places.get(0).startLine());
    if (!places.isEmpty()) {
      logical(json, places.get(0));
    }
    json.writeEndObject();
    json.writeEndArray();
    if (places.size() > 1) {
      json.writeArrayFieldStart("relatedLocations");
      for (LinePlace place : places.subList(1, places.size())) {
        json.writeStartObject();
        physical(json, place.startLine());
        logical(json, place);
        message(json, "message", place.id());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
  }

  private void physical(JsonGenerator json, long startLine) throws IOException {
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", artifactUri);
    json.writeEndObject();
    json.writeObjectFieldStart("region");
    json.writeNumberField("startLine", startLine);
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void logical(JsonGenerator json, LinePlace place) throws IOException {
    json.writeArrayFieldStart("logicalLocations");
    json.writeStartObject();
    json.writeStringField("name", Characters.paired(place.id()));
    json.writeEndObject();
    json.writeEndArray();
  }

  private static void details(JsonGenerator json, SarifResult.Details details) throws IOException {
    json.writeObjectFieldStart("properties");
    text(json, "pointer", details.pointer());
    text(json, "fault", details.faultCode());
    number(json, "demand", details.demand());
    number(json, "capacity", details.capacity());
    if (Double.isFinite(details.demand()) || Double.isFinite(details.capacity())) {
      text(json, "unit", details.unit());
    }
    json.writeEndObject();
  }

  private static void summary(JsonGenerator json, ListSummary summary) throws IOException {
    Totals totals = summary.totals();
    json.writeObjectFieldStart("properties");
    json.writeStringField("verdict", summary.passed() ? "passed" : "failed");
    json.writeNumberField("lines", totals.lines());
    json.writeNumberField("fit", totals.fit());
    json.writeNumberField("fitWithCautions", totals.fitWithCautions());
    json.writeNumberField("unfit", totals.unfit());
    json.writeNumberField("problems", totals.problems());
    json.writeEndObject();
  }

  private static void message(JsonGenerator json, String name, String text) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("text", SarifResult.plain(text));
    json.writeEndObject();
  }

  private static void text(JsonGenerator json, String name, String text) throws IOException {
    if (!text.isEmpty()) {
      json.writeStringField(name, Characters.paired(text));
    }
  }

  private static void number(JsonGenerator json, String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeFieldName(name);
      json.writeNumber(NumberText.of(value));
    }
  }
}
