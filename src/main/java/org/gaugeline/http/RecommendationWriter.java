package org.gaugeline.http;

import java.util.List;
import java.util.Map;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Loads;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.wording.Words;

/** The engine's answer as JSON, in the contract's names, units and order. */
final class RecommendationWriter {
  private static final int USUAL_BYTES = 64 * 1024;
  private static final int MOST_BYTES_KEPT = 1024 * 1024;

  /** What each thread writes into, answer after answer. */
  private final ThreadLocal<JsonBytes> buffer =
      ThreadLocal.withInitial(() -> new JsonBytes(USUAL_BYTES));

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
    JsonBytes json = buffer.get();
    json.clear();
    document(json, answer, asked, inputDigest);
    byte[] written = json.toByteArray();
    if (json.capacity() > MOST_BYTES_KEPT) {
      buffer.remove();
    }
    return written;
  }

  private void document(
      JsonBytes json, Recommendation answer, WireIntent asked, String inputDigest) {
    Job job = answer.job();
    json.object();
    if (!job.label().isEmpty()) {
      json.text("label", job.label());
    }
    json.word("engineVersion", EngineVersion.CURRENT);
    json.word("referenceVersion", referenceVersion);
    json.word("inputDigest", inputDigest);
    json.name("resolved");
    ResolvedWriter.write(json, job, asked);
    assumptions(json, job, List.of());
    loads(json, answer.loads());
    demands(json, answer.demands());
    families(json, answer);
    assemblies(json, "assemblies", answer.assemblies(), job);
    assemblies(json, "flagged", answer.flagged(), job);
    weighed(json, answer.weighed());
    ruledOut(json, answer);
    cautions(json, answer, job);
    json.endObject();
  }

  private void cautions(JsonBytes json, Recommendation answer, Job job) {
    json.array("cautions");
    for (Caution caution : answer.cautions()) {
      boolean changes =
          caution.code().equals(Recommendation.NOTHING_SUITABLE) && !answer.wouldFitIf().isEmpty();
      reasons.caution(json, caution, changes ? answer.wouldFitIf() : List.of(), job);
      if (changes) {
        json.array("wouldFitIf");
        for (Recommendation.Change change : answer.wouldFitIf()) {
          change(json, change, job);
        }
        json.endArray();
      }
      json.endObject();
    }
    json.endArray();
  }

  /** What was assumed of the job, and then of an assembly. */
  void assumptions(JsonBytes json, Job job, List<Assumption> ofAssembly) {
    json.array("assumptions");
    job.assumptions().forEach(assumption -> assumption(json, assumption, job));
    ofAssembly.forEach(assumption -> assumption(json, assumption, job));
    json.endArray();
  }

  private void assumption(JsonBytes json, Assumption assumption, Job job) {
    json.object();
    json.text("pointer", assumption.pointer());
    json.untyped("value", assumption.value(), assumption.pointer());
    json.startText("reason");
    words.assumption(json, assumption, job);
    json.endText();
    if (!assumption.sourceKey().isEmpty()) {
      json.text("source", assumption.sourceKey());
    }
    json.endObject();
  }

  static void loads(JsonBytes json, Loads l) {
    json.object("loads");
    json.number("spindleSpeedRpm", l.spindleSpeedRadPerS(), UnitSuffix.RPM);
    json.number("feedRateMmPerMin", l.feedRateMPerS(), UnitSuffix.MM_PER_MIN);
    json.number("meanChipThicknessMm", l.meanChipThicknessM(), UnitSuffix.MM);
    json.number("specificForceNPerMm2", l.specificForcePa(), UnitSuffix.N_PER_MM2);
    json.number("removalRateCm3PerMin", l.removalRateM3PerS(), UnitSuffix.CM3_PER_MIN);
    json.number("torqueNm", l.torqueNm());
    json.number("powerKw", l.powerW(), UnitSuffix.KW);
    json.number("peakTorqueNm", l.peakTorqueNm());
    json.number("peakTangentialForceN", l.peakTangentialForceN());
    json.number("peakRadialForceN", l.peakRadialForceN());
    json.number("axialPullN", l.axialPullN());
    json.number("axialPushN", l.axialPushN());
    json.number("feedForceN", l.feedForceN());
    ReasonWriter.basis(json, l.basis());
    json.endObject();
  }

  static void demands(JsonBytes json, Demands d) {
    json.object("demands");
    json.number("runoutAtTipUm", d.runoutAtTipM(), UnitSuffix.UM);
    json.number("deflectionUm", d.deflectionM(), UnitSuffix.UM);
    json.number("gripTorqueNm", d.gripTorqueNm());
    json.number("axialHoldN", d.axialHoldN());
    json.number("reachMm", d.reachM(), UnitSuffix.MM);
    json.endObject();
  }

  private void families(JsonBytes json, Recommendation answer) {
    json.array("families");
    for (Recommendation.FamilyVerdict verdict : answer.families()) {
      json.object();
      json.text("family", verdict.family().id());
      json.word("standing", verdict.standing().id());
      AssemblyWriter.scores(json, verdict.scores());
      reasons.reasons(json, verdict.reasons(), answer.job());
      String best = verdict.bestAssembly();
      if (best != null) {
        json.text("bestAssembly", best);
      }
      json.endObject();
    }
    json.endArray();
  }

  private void assemblies(JsonBytes json, String name, List<RankedAssembly> ranked, Job job) {
    json.array(name);
    for (RankedAssembly assembly : ranked) {
      assemblies.write(json, assembly, job);
    }
    json.endArray();
  }

  private static void weighed(JsonBytes json, Recommendation.Weighed weighed) {
    json.object("weighed");
    json.whole("candidates", weighed.candidates());
    json.object("lostBy");
    for (Map.Entry<String, Integer> lost : weighed.lostBy().entrySet()) {
      json.whole(lost.getKey(), lost.getValue());
    }
    json.endObject();
    json.endObject();
  }

  private void ruledOut(JsonBytes json, Recommendation answer) {
    json.array("ruledOut");
    for (Recommendation.RuledOut out : answer.ruledOut()) {
      json.object();
      json.text("family", out.family().id());
      json.word("code", out.reason().code());
      json.startText("text");
      words.ruledOut(json, out, answer.job());
      json.endText();
      json.array("wouldFitIf");
      for (Recommendation.Change change : out.wouldFitIf()) {
        change(json, change, answer.job());
      }
      json.endArray();
      Recommendation.Equipment equipment = out.equipment();
      if (equipment != null) {
        json.object("economics");
        json.text("currency", answer.job().shop().currency());
        json.number("price", equipment.price());
        json.flag("owned", false);
        AssemblyWriter.breakEven(json, equipment.breakEven());
        json.endObject();
      }
      json.endObject();
    }
    json.endArray();
  }

  void change(JsonBytes json, Recommendation.Change change, Job job) {
    json.object();
    json.text("pointer", change.pointer());
    Object from = change.from();
    if (from != null) {
      json.untyped("from", from, change.pointer());
    }
    json.untyped("to", change.to(), change.pointer());
    json.startText("text");
    words.change(json, change, job);
    json.endText();
    json.endObject();
  }
}
