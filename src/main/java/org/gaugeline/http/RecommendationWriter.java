package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.BufferRecycler;
import com.fasterxml.jackson.core.util.ByteArrayBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Loads;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.wording.Words;

/** The engine's answer as JSON, in the contract's names, units and order. */
final class RecommendationWriter {
  private static final int USUAL_BYTES = 32 * 1024;

  private final Words words;
  private final String referenceVersion;
  private final AssemblyWriter assemblies;
  private final ReasonWriter reasons;

  RecommendationWriter(Words words, String referenceVersion) {
    this.words = words;
    this.referenceVersion = referenceVersion;
    this.reasons = new ReasonWriter(words);
    this.assemblies = new AssemblyWriter(words, reasons);
  }

  /**
   * Writes the answer.
   *
   * @param inputDigest SHA-256 of the body
   */
  byte[] write(Recommendation answer, WireIntent asked, String inputDigest) {
    try (ByteArrayBuilder out = new ByteArrayBuilder(new BufferRecycler(), USUAL_BYTES);
        JsonGenerator json = StrictJson.FACTORY.createGenerator(out, JsonEncoding.UTF8)) {
      document(json, answer, asked, inputDigest);
      json.flush();
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void document(
      JsonGenerator json, Recommendation answer, WireIntent asked, String inputDigest)
      throws IOException {
    Job job = answer.job();
    json.writeStartObject();
    if (!job.label().isEmpty()) {
      json.writeStringField("label", job.label());
    }
    json.writeStringField("engineVersion", EngineVersion.CURRENT);
    json.writeStringField("referenceVersion", referenceVersion);
    json.writeStringField("inputDigest", inputDigest);
    json.writeFieldName("resolved");
    ResolvedWriter.write(json, job, asked);
    assumptions(json, job);
    loads(json, answer.loads());
    demands(json, answer.demands());
    families(json, answer);
    assemblies(json, "assemblies", answer.assemblies(), job);
    assemblies(json, "flagged", answer.flagged(), job);
    weighed(json, answer.weighed());
    ruledOut(json, answer);
    reasons.cautions(json, answer.cautions(), job);
    json.writeEndObject();
  }

  private void assumptions(JsonGenerator json, Job job) throws IOException {
    json.writeArrayFieldStart("assumptions");
    for (Assumption assumption : job.assumptions()) {
      json.writeStartObject();
      json.writeStringField("pointer", assumption.pointer());
      JsonNumbers.untyped(json, "value", assumption.value(), assumption.pointer());
      json.writeStringField("reason", words.assumption(assumption, job));
      if (!assumption.sourceKey().isEmpty()) {
        json.writeStringField("source", assumption.sourceKey());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void loads(JsonGenerator json, Loads l) throws IOException {
    json.writeObjectFieldStart("loads");
    JsonNumbers.member(json, "spindleSpeedRpm", l.spindleSpeedRadPerS(), UnitSuffix.RPM);
    JsonNumbers.member(json, "feedRateMmPerMin", l.feedRateMPerS(), UnitSuffix.MM_PER_MIN);
    JsonNumbers.member(json, "meanChipThicknessMm", l.meanChipThicknessM(), UnitSuffix.MM);
    JsonNumbers.member(json, "specificForceNPerMm2", l.specificForcePa(), UnitSuffix.N_PER_MM2);
    JsonNumbers.member(json, "removalRateCm3PerMin", l.removalRateM3PerS(), UnitSuffix.CM3_PER_MIN);
    JsonNumbers.member(json, "torqueNm", l.torqueNm());
    JsonNumbers.member(json, "powerKw", l.powerW(), UnitSuffix.KW);
    JsonNumbers.member(json, "peakTorqueNm", l.peakTorqueNm());
    JsonNumbers.member(json, "peakTangentialForceN", l.peakTangentialForceN());
    JsonNumbers.member(json, "peakRadialForceN", l.peakRadialForceN());
    JsonNumbers.member(json, "axialPullN", l.axialPullN());
    JsonNumbers.member(json, "axialPushN", l.axialPushN());
    JsonNumbers.member(json, "feedForceN", l.feedForceN());
    ReasonWriter.basis(json, l.basis());
    json.writeEndObject();
  }

  private static void demands(JsonGenerator json, Demands d) throws IOException {
    json.writeObjectFieldStart("demands");
    JsonNumbers.member(json, "runoutAtTipUm", d.runoutAtTipM(), UnitSuffix.UM);
    JsonNumbers.member(json, "deflectionUm", d.deflectionM(), UnitSuffix.UM);
    JsonNumbers.member(json, "gripTorqueNm", d.gripTorqueNm());
    JsonNumbers.member(json, "axialHoldN", d.axialHoldN());
    JsonNumbers.member(json, "reachMm", d.reachM(), UnitSuffix.MM);
    json.writeEndObject();
  }

  private void families(JsonGenerator json, Recommendation answer) throws IOException {
    json.writeArrayFieldStart("families");
    for (Recommendation.FamilyVerdict verdict : answer.families()) {
      json.writeStartObject();
      json.writeStringField("family", verdict.family().id());
      json.writeStringField("standing", verdict.standing().id());
      AssemblyWriter.scores(json, verdict.scores());
      reasons.reasons(json, verdict.reasons(), answer.job());
      String best = verdict.bestAssembly();
      if (best != null) {
        json.writeStringField("bestAssembly", best);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void assemblies(JsonGenerator json, String name, List<RankedAssembly> ranked, Job job)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (RankedAssembly assembly : ranked) {
      assemblies.write(json, assembly, job);
    }
    json.writeEndArray();
  }

  private static void weighed(JsonGenerator json, Recommendation.Weighed weighed)
      throws IOException {
    json.writeObjectFieldStart("weighed");
    json.writeNumberField("candidates", weighed.candidates());
    json.writeObjectFieldStart("lostBy");
    for (Map.Entry<String, Integer> lost : weighed.lostBy().entrySet()) {
      json.writeNumberField(lost.getKey(), lost.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void ruledOut(JsonGenerator json, Recommendation answer) throws IOException {
    json.writeArrayFieldStart("ruledOut");
    for (Recommendation.RuledOut out : answer.ruledOut()) {
      json.writeStartObject();
      json.writeStringField("family", out.family().id());
      json.writeStringField("code", out.reason().code());
      json.writeStringField("text", words.ruledOut(out, answer.job()));
      json.writeArrayFieldStart("wouldFitIf");
      for (Recommendation.Change change : out.wouldFitIf()) {
        change(json, change, answer.job());
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void change(JsonGenerator json, Recommendation.Change change, Job job)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("pointer", change.pointer());
    Object from = change.from();
    if (from != null) {
      JsonNumbers.untyped(json, "from", from, change.pointer());
    }
    JsonNumbers.untyped(json, "to", change.to(), change.pointer());
    json.writeStringField("text", words.change(change, job));
    json.writeEndObject();
  }
}
