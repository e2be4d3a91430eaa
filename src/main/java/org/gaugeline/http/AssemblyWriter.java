package org.gaugeline.http;

import java.util.List;
import java.util.Locale;
import org.gaugeline.advice.BreakEven;
import org.gaugeline.advice.Economics;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assessment.Geometry;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.assessment.Probability;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;
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

  void write(JsonBytes json, RankedAssembly a, Job job) {
    json.object();
    json.text("id", a.id());
    json.whole("rank", a.rank());
    members(json, a, job);
    json.endObject();
  }

  /** Everything that is said of an assembly but its name and rank. */
  void members(JsonBytes json, RankedAssembly a, Job job) {
    json.text("family", a.assembly().holder().family().id());
    json.word("standing", a.standing().id());
    components(json, a.components());
    scores(json, a.scores());
    probability(json, a.probability());
    geometry(json, a.geometry());
    predicted(json, a.predicted());
    limits(json, a.limits());
    stableSpeeds(json, a.stableSpeeds());
    setUp(json, a, job);
    economics(json, a.economics(), job);
    reasons.reasons(json, a.reasons(), job);
    reasons.cautions(json, a.cautions(), job);
  }

  static void stableSpeeds(JsonBytes json, List<StabilityChart.Point> speeds) {
    if (!speeds.isEmpty()) {
      StabilityChartWriter.points(json, "stableSpeeds", speeds);
    }
  }

  private static void components(JsonBytes json, List<Part> parts) {
    json.array("components");
    for (Part part : parts) {
      component(json, part);
    }
    json.endArray();
  }

  private static void component(JsonBytes json, Part part) {
    json.object();
    json.word("role", part.role().id());
    json.text("ref", part.ref());
    HolderBody.Origin origin = part.origin();
    if (origin != null) {
      json.word("origin", origin.name().toLowerCase(Locale.ROOT));
    }
    named(json, "family", part.familyId());
    named(json, "interface", part.interfaceId());
    named(json, "coupling", part.couplingId());
    json.number("shankDiameterMm", part.shankDiameterM(), UnitSuffix.MM);
    json.number("boreMm", part.boreM(), UnitSuffix.MM);
    json.number("projectionMm", part.projectionM(), UnitSuffix.MM);
    if (!part.interfaceId().isEmpty()) {
      json.flag("faceContact", part.faceContact());
    }
    if (origin != null) {
      json.flag("throughCoolant", part.throughCoolant());
    }
    json.number("price", part.price());
    json.text("source", part.sourceKey());
    json.endObject();
  }

  private static void named(JsonBytes json, String name, String value) {
    if (!value.isEmpty()) {
      json.text(name, value);
    }
  }

  static void scores(JsonBytes json, Scores s) {
    json.object("scores");
    json.number("accuracy", s.accuracy());
    json.number("grip", s.grip());
    json.number("reach", s.reach());
    json.number("speed", s.speed());
    json.number("overall", s.overall());
    json.endObject();
  }

  private static void probability(JsonBytes json, Probability p) {
    json.object("probability");
    json.number("accuracy", p.accuracy());
    json.number("grip", p.grip());
    json.number("reach", p.reach());
    json.number("speed", p.speed());
    json.number("all", p.all());
    json.endObject();
  }

  private static void geometry(JsonBytes json, Geometry g) {
    json.object("geometry");
    json.number("gaugeLengthMm", g.gaugeLengthM(), UnitSuffix.MM);
    json.number("stickOutMm", g.stickOutM(), UnitSuffix.MM);
    json.number("insertionDepthMm", g.insertionDepthM(), UnitSuffix.MM);
    json.number("noseDiameterMm", g.noseDiameterM(), UnitSuffix.MM);
    json.number("massKg", g.massKg());
    json.number("momentNm", g.momentNm());
    json.endObject();
  }

  private static void predicted(JsonBytes json, Predicted p) {
    json.object("predicted");
    json.object("runoutAtTipUm");
    json.number("median", p.runoutMedianM(), UnitSuffix.UM);
    json.number("p95", p.runoutP95M(), UnitSuffix.UM);
    json.number("worst", p.runoutWorstM(), UnitSuffix.UM);
    json.endObject();
    if (!Double.isNaN(p.sideRunoutMedianM())) {
      json.object("sideRunoutUm");
      json.number("median", p.sideRunoutMedianM(), UnitSuffix.UM);
      json.number("p95", p.sideRunoutP95M(), UnitSuffix.UM);
      json.endObject();
    }
    json.object("gripTorqueNm");
    json.number("median", p.gripTorqueMedianNm());
    json.number("p05", p.gripTorqueP05Nm());
    json.endObject();
    json.object("axialHoldN");
    json.number("median", p.axialHoldMedianN());
    json.number("p05", p.axialHoldP05N());
    json.endObject();
    json.number("tipComplianceUmPerN", p.tipComplianceMPerN(), UnitSuffix.UM_PER_N);
    json.number("deflectionUm", p.deflectionM(), UnitSuffix.UM);
    json.array("naturalFrequenciesHz");
    for (double frequencyHz : p.naturalFrequenciesHz()) {
      json.number(frequencyHz);
    }
    json.endArray();
    json.number("dampingRatio", p.dampingRatio());
    json.number("bendingMomentUse", p.bendingMomentUse());
    json.number("balanceGradeReached", p.balanceGradeReachedMPerS() * MM_PER_M);
    json.number("toolLifeFactor", p.toolLifeFactor());
    json.endObject();
  }

  static void limits(JsonBytes json, Limits l) {
    json.object("limits");
    limit(json, "spindleSpeedRpm", l.spindleSpeedRadPerS(), UnitSuffix.RPM);
    limit(json, "torqueNm", l.torqueNm(), UnitSuffix.NM);
    limit(json, "axialForceN", l.axialForceN(), UnitSuffix.N);
    limit(json, "axialDepthMm", l.axialDepthM(), UnitSuffix.MM);
    limit(json, "feedPerToothMm", l.feedPerToothM(), UnitSuffix.MM);
    limit(json, "stickOutMm", l.stickOutM(), UnitSuffix.MM);
    limit(json, "featureDepthMm", l.featureDepthM(), UnitSuffix.MM);
    json.endObject();
  }

  private static void limit(JsonBytes json, String name, Limit limit, UnitSuffix unit) {
    json.object(name);
    double told = limit.told(unit);
    if (told == Double.POSITIVE_INFINITY) {
      json.flag("unbounded", true);
    } else {
      json.number("value", told);
    }
    if (!limit.governedBy().isEmpty()) {
      json.word("governedBy", limit.governedBy());
    }
    json.endObject();
  }

  private void setUp(JsonBytes json, RankedAssembly a, Job job) {
    json.array("setUp");
    for (SetUpStep step : a.setUp()) {
      json.object();
      json.word("code", step.code());
      json.startText("step");
      words.setUp(json, step, job);
      json.endText();
      json.number("value", step.measure().fromSi(step.value()));
      if (Double.isFinite(step.value()) && !step.measure().unit().isEmpty()) {
        json.text("unit", step.measure().unit());
      }
      json.endObject();
    }
    json.endArray();
  }

  private static void economics(JsonBytes json, Economics e, Job job) {
    json.object("economics");
    json.text("currency", job.shop().currency());
    json.number("price", e.price());
    json.number("purchase", e.purchase());
    json.flag("owned", e.owned());
    json.number("edgeCostPerPart", e.edgeCostPerPart());
    json.number("changeOverCostPerPart", e.changeOverCostPerPart());
    json.number("holderCostPerPart", e.holderCostPerPart());
    json.number("costPerPart", e.costPerPart());
    BreakEven breakEven = e.breakEven();
    if (breakEven != null) {
      breakEven(json, breakEven);
    }
    json.endObject();
  }

  static void breakEven(JsonBytes json, BreakEven b) {
    json.number("breakEvenParts", b.parts());
    json.number("breakEvenMonths", b.months());
    json.text("breakEvenAgainst", b.against());
  }
}
