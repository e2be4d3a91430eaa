package org.gaugeline.http;

import java.util.List;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.wording.Words;

/** A stability chart as JSON, in the contract's names, units and order. */
final class StabilityChartWriter {
  private static final int USUAL_BYTES = 64 * 1024;

  private final ThreadLocal<JsonBytes> buffer =
      ThreadLocal.withInitial(() -> new JsonBytes(USUAL_BYTES));

  private final String referenceVersion;
  private final RecommendationWriter shared;
  private final ReasonWriter reasons;

  StabilityChartWriter(Words words, String referenceVersion) {
    this.referenceVersion = referenceVersion;
    this.shared = new RecommendationWriter(words, referenceVersion);
    this.reasons = new ReasonWriter(words);
  }

  byte[] write(
      Job job,
      StabilityChart chart,
      List<Assumption> ofAssembly,
      WireIntent asked,
      String inputDigest) {
    JsonBytes json = buffer.get();
    json.clear();
    json.object();
    if (!job.label().isEmpty()) {
      json.text("label", job.label());
    }
    json.word("engineVersion", EngineVersion.CURRENT);
    json.word("referenceVersion", referenceVersion);
    json.word("inputDigest", inputDigest);
    method(json, chart);
    modes(json, chart);
    depth(json, "guaranteedAxialDepthMm", chart.guaranteed().depthM());
    points(json, "boundary", chart.boundary());
    points(json, "at", chart.at());
    points(json, "bestSpeeds", chart.best());
    json.object("band");
    points(json, "p05", chart.band().p05());
    points(json, "p95", chart.band().p95());
    json.whole("draws", chart.band().draws());
    json.endObject();
    cut(json, chart.cut());
    BarsWriter.write(json, chart);
    reasons.cautions(json, chart.cautions(), job);
    json.name("resolved");
    ResolvedWriter.write(json, job, asked);
    shared.assumptions(json, job, ofAssembly);
    json.endObject();
    return json.toByteArray();
  }

  private static void method(JsonBytes json, StabilityChart chart) {
    json.word("method", chart.method().id());
    json.object("methodError");
    json.number("immersion", chart.immersion());
    json.number("nearFloors", chart.floorError());
    json.number("onLobes", chart.lobeError());
    json.endObject();
    json.object("coefficients");
    json.number("ktNPerMm2", chart.ktPa(), UnitSuffix.N_PER_MM2);
    json.number("krRatio", chart.krRatio());
    json.text("source", chart.ktSourceKey());
    json.number("processDampingWaveMm", chart.dampingWaveM(), UnitSuffix.MM);
    json.endObject();
  }

  private static void modes(JsonBytes json, StabilityChart chart) {
    String origin = chart.measured() ? "measured" : "predicted";
    json.word("responseOrigin", origin);
    json.array("modes");
    for (StabilityChart.Mode mode : chart.modes()) {
      json.object();
      json.word("direction", mode.direction());
      json.number("frequencyHz", mode.frequencyHz());
      json.number("dampingRatio", mode.dampingRatio());
      json.number("stiffnessNPerM", mode.stiffnessNPerM());
      json.word("origin", origin);
      json.endObject();
    }
    json.endArray();
  }

  static void points(JsonBytes json, String name, List<StabilityChart.Point> points) {
    json.array(name);
    for (StabilityChart.Point point : points) {
      json.object();
      json.number("spindleSpeedRpm", point.spindleRadPerS(), UnitSuffix.RPM);
      depth(json, "axialDepthMm", point.depthM());
      json.number("chatterFrequencyHz", point.chatterHz());
      json.endObject();
    }
    json.endArray();
  }

  private static void cut(JsonBytes json, StabilityChart.Cut cut) {
    json.object("cut");
    json.number("spindleSpeedRpm", cut.spindleRadPerS(), UnitSuffix.RPM);
    json.number("axialDepthMm", cut.depthM(), UnitSuffix.MM);
    depth(json, "stableAxialDepthMm", cut.limit().depthM());
    depth(json, "p05AxialDepthMm", cut.p05M());
    depth(json, "p95AxialDepthMm", cut.p95M());
    json.number("chatterFrequencyHz", cut.limit().chatterHz());
    json.number("probabilityStable", cut.probabilityStable());
    json.array("narrowedBy");
    for (StabilityChart.Narrowing narrowing : cut.narrowing()) {
      json.object();
      json.word("measurement", narrowing.measurement());
      json.text("pointer", narrowing.pointer());
      json.number("spreadRatio", narrowing.spreadRatio());
      json.endObject();
    }
    json.endArray();
    json.endObject();
  }

  /** Rounded down, so that it holds when asked again. */
  static void depth(JsonBytes json, String name, double depthM) {
    if (Double.isInfinite(depthM)) {
      json.object(name);
      json.flag("unbounded", true);
      json.endObject();
    } else {
      json.number(name, SixDigits.roundDown(UnitSuffix.MM.fromSi(depthM)));
    }
  }
}
