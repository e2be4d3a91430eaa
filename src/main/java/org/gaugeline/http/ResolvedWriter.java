package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;
import static org.gaugeline.http.JsonNumbers.member;
import static org.gaugeline.quantity.UnitSuffix.DEG;
import static org.gaugeline.quantity.UnitSuffix.KN;
import static org.gaugeline.quantity.UnitSuffix.KW;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.M_PER_MIN;
import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;
import static org.gaugeline.quantity.UnitSuffix.UM_PER_N;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.reference.Material;
import org.jspecify.annotations.Nullable;

/**
 * The completed intent in the contract's shape. Members that have no effect yet stand as they were
 * sent. A depth or feed that the operation does not have is left out.
 */
final class ResolvedWriter {
  private ResolvedWriter() {}

  static void write(JsonGenerator json, Job job, WireIntent asked) throws IOException {
    json.writeStartObject();
    if (!job.label().isEmpty()) {
      json.writeStringField("label", job.label());
    }
    json.writeStringField("textUnits", job.textUnits().id());
    workpiece(json, job.workpiece(), orElse(asked.workpiece(), WireIntent.Workpiece.NONE));
    operation(json, job.operation(), orElse(asked.operation(), WireIntent.Operation.NONE));
    feature(json, job.feature(), orElse(asked.feature(), WireIntent.Feature.NONE));
    tool(json, job.tool(), orElse(asked.tool(), WireIntent.Tool.NONE));
    machine(json, job.machine(), orElse(asked.machine(), WireIntent.Machine.NONE));
    shop(json, job.shop(), orElse(asked.shop(), WireIntent.Shop.NONE));
    preferences(json, job.preferences(), asked.preferences());
    json.writeEndObject();
  }

  private static void workpiece(JsonGenerator json, Job.Workpiece w, WireIntent.Workpiece asked)
      throws IOException {
    json.writeObjectFieldStart("workpiece");
    Material material = w.material();
    json.writeStringField("material", material == null ? w.name() : material.id());
    member(json, "hardnessHb", w.hardnessHb());
    member(json, "kc11NPerMm2", w.kc11Pa().median(), N_PER_MM2);
    member(json, "mc", w.mc());
    json.writeStringField("isoGroup", w.isoGroup().id());
    member(json, "complianceUmPerN", w.complianceMPerN(), UM_PER_N);
    sent(json, "ktNPerMm2", asked.ktNPerMm2());
    sent(json, "krRatio", asked.krRatio());
    json.writeEndObject();
  }

  private static void operation(JsonGenerator json, Job.Operation o, WireIntent.Operation asked)
      throws IOException {
    json.writeObjectFieldStart("operation");
    json.writeStringField("kind", o.kind().id());
    json.writeStringField("stage", o.stage().id());
    positive(json, "axialDepthMm", MM.fromSi(o.axialDepthM()));
    positive(json, "radialDepthMm", MM.fromSi(o.radialDepthM()));
    // Only one of the two is read; the resolved intent can be sent again as it is.
    if (asked.spindleSpeedRpm() == null) {
      member(json, "cuttingSpeedMPerMin", o.cuttingSpeedMPerS(), M_PER_MIN);
    } else {
      member(json, "spindleSpeedRpm", o.spindleSpeedRadPerS(), RPM);
    }
    positive(json, "feedPerToothMm", MM.fromSi(o.feedPerToothM()));
    member(json, "preDrilledDiameterMm", o.preDrilledDiameterM(), MM);
    sent(json, "rampAngleDeg", asked.rampAngleDeg());
    json.writeStringField("coolant", o.coolant().id());
    json.writeStringField("direction", o.direction().id());
    sent(json, "tapping", asked.tapping());
    sent(json, "hole", asked.hole());
    member(json, "minutesPerPart", o.minutesPerPart());
    member(json, "partsPerYear", o.partsPerYear());
    json.writeEndObject();
  }

  private static void feature(JsonGenerator json, Job.Feature f, WireIntent.Feature asked)
      throws IOException {
    json.writeObjectFieldStart("feature");
    member(json, "depthMm", f.depthM(), MM);
    member(json, "wallDraftDeg", f.wallDraftRad(), DEG);
    member(json, "wallClearanceMm", f.wallClearanceM(), MM);
    member(json, "nominalSizeMm", f.nominalSizeM(), MM);
    sent(json, "toleranceGrade", asked.toleranceGrade());
    member(json, "toleranceBandUm", f.toleranceBandM(), UM);
    member(json, "raUm", f.raM(), UM);
    member(json, "tiltDeg", f.tiltRad(), DEG);
    positive(json, "pocketWidthMm", MM.fromSi(f.pocketWidthM()));
    json.writeArrayFieldStart("obstructions");
    for (Intent.Obstruction o : f.obstructions()) {
      json.writeStartObject();
      member(json, "heightMm", o.heightM(), MM);
      member(json, "distanceMm", o.distanceM(), MM);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void tool(JsonGenerator json, Job.Tool t, WireIntent.Tool asked)
      throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeStringField("kind", t.kind().id());
    member(json, "diameterMm", t.diameterM(), MM);
    json.writeNumberField("teeth", t.teeth());
    member(json, "helixDeg", t.helixRad(), DEG);
    json.writeStringField("hand", t.hand().id());
    json.writeStringField("helixHand", t.helixHand().id());
    member(json, "cornerRadiusMm", t.cornerRadiusM(), MM);
    positive(json, "fluteLengthMm", MM.fromSi(t.fluteLengthM()));
    positive(json, "neckDiameterMm", MM.fromSi(t.neckDiameterM()));
    positive(json, "neckLengthMm", MM.fromSi(t.neckLengthM()));
    member(json, "overallLengthMm", t.overallLengthM(), MM);
    json.writeStringField("substrate", t.substrate().id());
    json.writeObjectFieldStart("shank");
    member(json, "diameterMm", t.shankDiameterM(), MM);
    json.writeStringField("form", t.shankForm().id());
    json.writeStringField("tolerance", t.shankTolerance());
    json.writeEndObject();
    sent(json, "pitchMm", asked.pitchMm());
    positive(json, "pointAngleDeg", DEG.fromSi(t.pointAngleRad()));
    positive(json, "leadAngleDeg", DEG.fromSi(t.leadAngleRad()));
    sent(json, "tapForm", asked.tapForm());
    sent(json, "cutterBodyLengthMm", asked.cutterBodyLengthMm());
    sent(json, "massKg", asked.massKg());
    member(json, "maxSpindleSpeedRpm", t.maxSpindleSpeedRadPerS(), RPM);
    json.writeBooleanField("throughCoolant", t.throughCoolant());
    Boolean exchangeable = asked.exchangeableHead();
    if (exchangeable != null) {
      json.writeBooleanField("exchangeableHead", exchangeable);
    }
    member(json, "price", t.price());
    member(json, "lifeMinutes", t.lifeMinutes());
    json.writeEndObject();
  }

  private static void machine(JsonGenerator json, Job.Machine m, WireIntent.Machine asked)
      throws IOException {
    json.writeObjectFieldStart("machine");
    json.writeStringField("interface", m.spindle().id());
    json.writeBooleanField("faceContact", m.faceContact());
    member(json, "maxSpindleSpeedRpm", m.maxSpindleSpeedRadPerS(), RPM);
    member(json, "powerKw", m.powerW(), KW);
    member(json, "torqueNm", m.torqueNm());
    json.writeArrayFieldStart("torqueCurve");
    for (Intent.CurvePoint point : m.torqueCurve()) {
      json.writeStartObject();
      member(json, "spindleSpeedRpm", point.spindleSpeedRadPerS(), RPM);
      member(json, "torqueNm", point.torqueNm());
      json.writeEndObject();
    }
    json.writeEndArray();
    member(json, "clampingForceKn", m.clampingForceN().median(), KN);
    json.writeNumberField("axes", m.axes());
    json.writeBooleanField("throughCoolant", m.throughCoolant());
    sent(json, "coolantPressureBar", asked.coolantPressureBar());
    json.writeObjectFieldStart("toolChanger");
    Job.ToolChanger c = m.changer();
    member(json, "maxMassKg", c.maxMassKg());
    member(json, "maxLengthMm", c.maxLengthM(), MM);
    member(json, "maxDiameterMm", c.maxDiameterM(), MM);
    member(json, "maxDiameterNeighboursEmptyMm", c.maxDiameterNeighboursEmptyM(), MM);
    member(json, "maxMomentNm", c.maxMomentNm());
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void shop(JsonGenerator json, Job.Shop s, WireIntent.Shop asked)
      throws IOException {
    json.writeObjectFieldStart("shop");
    json.writeBooleanField("shrinkUnit", s.shrinkUnit());
    json.writeBooleanField("balancer", s.balancer());
    json.writeBooleanField("torqueWrench", s.torqueWrench());
    json.writeBooleanField("presetter", s.presetter());
    json.writeArrayFieldStart("excludedFamilies");
    // In the order in which they were sent: a set has none.
    for (String family : orEmpty(asked.excludedFamilies())) {
      json.writeString(family);
    }
    json.writeEndArray();
    json.writeFieldName("stock");
    StrictJson.SENT.writeValue(json, orEmpty(asked.stock()));
    json.writeBooleanField("stockOnly", s.stockOnly());
    member(json, "hourlyRate", s.hourlyRate());
    json.writeStringField("currency", s.currency());
    json.writeStringField("shankCondition", s.shankCondition().id());
    json.writeStringField("colletCondition", s.colletCondition().id());
    json.writeEndObject();
  }

  private static void preferences(
      JsonGenerator json, Job.Preferences p, WireIntent.@Nullable Preferences asked)
      throws IOException {
    json.writeObjectFieldStart("preferences");
    json.writeStringField("rankBy", p.rankBy().id());
    json.writeObjectFieldStart("weights");
    member(json, "accuracy", p.accuracyWeight());
    member(json, "grip", p.gripWeight());
    member(json, "reach", p.reachWeight());
    member(json, "speed", p.speedWeight());
    json.writeEndObject();
    member(json, "confidence", p.confidence());
    json.writeNumberField("limit", p.limit());
    Boolean stability = asked == null ? null : asked.stability();
    if (stability != null) {
      json.writeBooleanField("stability", stability);
    }
    json.writeEndObject();
  }

  private static void positive(JsonGenerator json, String name, double value) throws IOException {
    if (value > 0) {
      member(json, name, value);
    }
  }

  private static void sent(JsonGenerator json, String name, @Nullable Double value)
      throws IOException {
    if (value != null) {
      member(json, name, value);
    }
  }

  private static void sent(JsonGenerator json, String name, @Nullable String value)
      throws IOException {
    if (value != null) {
      json.writeStringField(name, value);
    }
  }
}
