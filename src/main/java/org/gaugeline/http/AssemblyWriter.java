package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.gaugeline.advice.Economics;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Geometry;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.assessment.Probability;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.wording.Words;

/** A ranked assembly as JSON. */
final class AssemblyWriter {
  private static final double MM_PER_M = 1e3;

  private final Words words;
  private final ReasonWriter reasons;

  AssemblyWriter(Words words, ReasonWriter reasons) {
    this.words = words;
    this.reasons = reasons;
  }

  void write(JsonGenerator json, RankedAssembly a, Job job) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", a.id());
    json.writeNumberField("rank", a.rank());
    json.writeStringField("family", a.assembly().holder().family().id());
    json.writeStringField("standing", a.standing().id());
    components(json, a.assembly().holder(), job);
    scores(json, a.scores());
    probability(json, a.probability());
    geometry(json, a.geometry());
    predicted(json, a.predicted());
    limits(json, a.limits());
    setUp(json, a, job);
    economics(json, a.economics(), job);
    reasons.reasons(json, a.reasons(), job);
    reasons.cautions(json, a.cautions(), job);
    json.writeEndObject();
  }

  private static void components(JsonGenerator json, HolderBody holder, Job job)
      throws IOException {
    json.writeArrayFieldStart("components");
    json.writeStartObject();
    json.writeStringField("role", "holder");
    json.writeStringField("ref", holder.ref());
    json.writeStringField("origin", holder.origin().name().toLowerCase(Locale.ROOT));
    json.writeStringField("family", holder.family().id());
    json.writeStringField("interface", holder.spindleInterface().id());
    JsonNumbers.member(json, "boreMm", holder.boreM(), UnitSuffix.MM);
    JsonNumbers.member(json, "projectionMm", holder.projectionM(), UnitSuffix.MM);
    json.writeBooleanField("faceContact", holder.faceContact());
    json.writeBooleanField("throughCoolant", holder.throughCoolant());
    JsonNumbers.member(json, "price", holder.price());
    json.writeStringField("source", holder.sourceKey());
    json.writeEndObject();
    ColletSize collet = holder.colletSize();
    if (collet != null) {
      json.writeStartObject();
      json.writeStringField("role", "collet");
      json.writeStringField("ref", collet.id());
      JsonNumbers.member(json, "boreMm", job.tool().shankDiameterM(), UnitSuffix.MM);
      json.writeStringField("source", collet.sourceKey());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  static void scores(JsonGenerator json, Scores s) throws IOException {
    json.writeObjectFieldStart("scores");
    JsonNumbers.member(json, "accuracy", s.accuracy());
    JsonNumbers.member(json, "grip", s.grip());
    JsonNumbers.member(json, "reach", s.reach());
    JsonNumbers.member(json, "speed", s.speed());
    JsonNumbers.member(json, "overall", s.overall());
    json.writeEndObject();
  }

  private static void probability(JsonGenerator json, Probability p) throws IOException {
    json.writeObjectFieldStart("probability");
    JsonNumbers.member(json, "accuracy", p.accuracy());
    JsonNumbers.member(json, "grip", p.grip());
    JsonNumbers.member(json, "reach", p.reach());
    JsonNumbers.member(json, "speed", p.speed());
    JsonNumbers.member(json, "all", p.all());
    json.writeEndObject();
  }

  private static void geometry(JsonGenerator json, Geometry g) throws IOException {
    json.writeObjectFieldStart("geometry");
    JsonNumbers.member(json, "gaugeLengthMm", g.gaugeLengthM(), UnitSuffix.MM);
    JsonNumbers.member(json, "stickOutMm", g.stickOutM(), UnitSuffix.MM);
    JsonNumbers.member(json, "insertionDepthMm", g.insertionDepthM(), UnitSuffix.MM);
    JsonNumbers.member(json, "noseDiameterMm", g.noseDiameterM(), UnitSuffix.MM);
    JsonNumbers.member(json, "massKg", g.massKg());
    JsonNumbers.member(json, "momentNm", g.momentNm());
    json.writeEndObject();
  }

  private static void predicted(JsonGenerator json, Predicted p) throws IOException {
    json.writeObjectFieldStart("predicted");
    json.writeObjectFieldStart("runoutAtTipUm");
    JsonNumbers.member(json, "median", p.runoutMedianM(), UnitSuffix.UM);
    JsonNumbers.member(json, "p95", p.runoutP95M(), UnitSuffix.UM);
    JsonNumbers.member(json, "worst", p.runoutWorstM(), UnitSuffix.UM);
    json.writeEndObject();
    json.writeObjectFieldStart("gripTorqueNm");
    JsonNumbers.member(json, "median", p.gripTorqueMedianNm());
    JsonNumbers.member(json, "p05", p.gripTorqueP05Nm());
    json.writeEndObject();
    json.writeObjectFieldStart("axialHoldN");
    JsonNumbers.member(json, "median", p.axialHoldMedianN());
    JsonNumbers.member(json, "p05", p.axialHoldP05N());
    json.writeEndObject();
    JsonNumbers.member(json, "tipComplianceUmPerN", p.tipComplianceMPerN(), UnitSuffix.UM_PER_N);
    JsonNumbers.member(json, "deflectionUm", p.deflectionM(), UnitSuffix.UM);
    json.writeArrayFieldStart("naturalFrequenciesHz");
    for (double frequencyHz : p.naturalFrequenciesHz()) {
      JsonNumbers.write(json, SixDigits.round(frequencyHz));
    }
    json.writeEndArray();
    JsonNumbers.member(json, "dampingRatio", p.dampingRatio());
    JsonNumbers.member(json, "bendingMomentUse", p.bendingMomentUse());
    JsonNumbers.member(json, "balanceGradeReached", p.balanceGradeReachedMPerS() * MM_PER_M);
    JsonNumbers.member(json, "toolLifeFactor", p.toolLifeFactor());
    json.writeEndObject();
  }

  private static void limits(JsonGenerator json, Limits l) throws IOException {
    json.writeObjectFieldStart("limits");
    limit(json, "spindleSpeedRpm", l.spindleSpeedRadPerS());
    limit(json, "torqueNm", l.torqueNm());
    limit(json, "axialForceN", l.axialForceN());
    limit(json, "axialDepthMm", l.axialDepthM());
    limit(json, "feedPerToothMm", l.feedPerToothM());
    limit(json, "stickOutMm", l.stickOutM());
    limit(json, "featureDepthMm", l.featureDepthM());
    json.writeEndObject();
  }

  /**
   * Rounded down: what is said to hold must hold when asked again. None of these quantities exists
   * below 0, which says that not even the least value is safe.
   */
  private static void limit(JsonGenerator json, String name, Limit limit) throws IOException {
    json.writeObjectFieldStart(name);
    double value = limit.value();
    if (value == Double.POSITIVE_INFINITY) {
      json.writeBooleanField("unbounded", true);
    } else if (Double.isFinite(value)) {
      json.writeFieldName("value");
      JsonNumbers.write(json, SixDigits.roundDown(UnitSuffix.fromSi(name, Math.max(0, value))));
    }
    if (!limit.governedBy().isEmpty()) {
      json.writeStringField("governedBy", limit.governedBy());
    }
    json.writeEndObject();
  }

  private void setUp(JsonGenerator json, RankedAssembly a, Job job) throws IOException {
    json.writeArrayFieldStart("setUp");
    for (SetUpStep step : a.setUp()) {
      json.writeStartObject();
      json.writeStringField("code", step.code());
      json.writeStringField("step", words.setUp(step, job));
      JsonNumbers.member(json, "value", step.measure().fromSi(step.value()));
      if (Double.isFinite(step.value()) && !step.measure().unit().isEmpty()) {
        json.writeStringField("unit", step.measure().unit());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void economics(JsonGenerator json, Economics e, Job job) throws IOException {
    json.writeObjectFieldStart("economics");
    json.writeStringField("currency", job.shop().currency());
    JsonNumbers.member(json, "price", e.price());
    json.writeBooleanField("owned", e.owned());
    JsonNumbers.member(json, "edgeCostPerPart", e.edgeCostPerPart());
    JsonNumbers.member(json, "holderCostPerPart", e.holderCostPerPart());
    JsonNumbers.member(json, "costPerPart", e.costPerPart());
    json.writeEndObject();
  }
}
