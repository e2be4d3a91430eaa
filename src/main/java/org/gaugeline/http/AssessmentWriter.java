package org.gaugeline.http;

import java.util.List;
import org.gaugeline.advice.Assessment;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assessment.DerivationStep;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Reason;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Job;
import org.gaugeline.wording.Words;
import org.jspecify.annotations.Nullable;

/** An assessment as JSON, in the contract's names, units and order. */
final class AssessmentWriter {
  private static final int USUAL_BYTES = 32 * 1024;

  private final ThreadLocal<JsonBytes> buffer =
      ThreadLocal.withInitial(() -> new JsonBytes(USUAL_BYTES));

  private final Words words;
  private final String referenceVersion;
  private final RecommendationWriter shared;
  private final AssemblyWriter assemblies;

  AssessmentWriter(Words words, String referenceVersion) {
    this.words = words;
    this.referenceVersion = referenceVersion;
    this.shared = new RecommendationWriter(words, referenceVersion);
    this.assemblies = new AssemblyWriter(words, new ReasonWriter(words));
  }

  /**
   * Writes the answer.
   *
   * @param explained what to derive; null for no derivation
   * @param inputDigest SHA-256 of the body
   */
  byte[] write(
      Assessment answer,
      Assessor.@Nullable Judged explained,
      WireIntent asked,
      String inputDigest) {
    JsonBytes json = buffer.get();
    json.clear();
    Job job = answer.job();
    json.object();
    if (!job.label().isEmpty()) {
      json.text("label", job.label());
    }
    json.word("engineVersion", EngineVersion.CURRENT);
    json.word("referenceVersion", referenceVersion);
    json.word("inputDigest", inputDigest);
    json.word("verdict", answer.verdict().id());
    findings(json, answer.findings(), job);
    json.name("resolved");
    ResolvedWriter.write(json, job, asked);
    shared.assumptions(json, job, answer.assumptions());
    RecommendationWriter.loads(json, answer.loads());
    RecommendationWriter.demands(json, answer.demands());
    assemblies.members(json, answer.assembly(), job);
    json.array("wouldFitIf");
    for (Recommendation.Change change : answer.wouldFitIf()) {
      shared.change(json, change, job);
    }
    json.endArray();
    json.array("wontFitBy");
    for (String pointer : answer.wontFitBy()) {
      json.text(pointer);
    }
    json.endArray();
    if (explained != null) {
      derivation(json, explained.derivation());
    }
    json.endObject();
    return json.toByteArray();
  }

  void findings(JsonBytes json, List<Finding> findings, Job job) {
    json.array("findings");
    for (Finding finding : findings) {
      Reason reason = finding.reason();
      json.object();
      json.word("code", finding.code());
      json.word("severity", finding.severity().id());
      json.word("criterion", reason.criterion().id());
      json.startText("text");
      words.finding(json, finding, job);
      json.endText();
      ReasonWriter.numbers(json, reason);
      ReasonWriter.basis(json, reason.basis());
      if (!finding.pointer().isEmpty()) {
        json.text("pointer", finding.pointer());
      }
      json.startText("remedy");
      words.remedy(json, finding);
      json.endText();
      json.endObject();
    }
    json.endArray();
  }

  private static void derivation(JsonBytes json, List<DerivationStep> steps) {
    json.array("derivation");
    for (DerivationStep step : steps) {
      json.object();
      json.text("symbol", step.symbol());
      if (!step.formula().isEmpty()) {
        json.text("formula", step.formula());
      }
      json.number("value", step.value());
      if (!step.unit().isEmpty()) {
        json.text("unit", step.unit());
      }
      if (!step.source().isEmpty()) {
        json.text("source", step.source());
      }
      json.endObject();
    }
    json.endArray();
  }
}
