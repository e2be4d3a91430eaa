package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;
import static org.gaugeline.quantity.UnitSuffix.DEG;
import static org.gaugeline.quantity.UnitSuffix.KN;
import static org.gaugeline.quantity.UnitSuffix.KW;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.M_PER_MIN;
import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;
import static org.gaugeline.quantity.UnitSuffix.UM_PER_N;

import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * The completed intent in the contract's shape. Members that have no effect yet stand as they were
 * sent. A depth or feed that the operation does not have is left out.
 */
final class ResolvedWriter {
  private ResolvedWriter() {}

  static void write(JsonBytes json, Job job, WireIntent asked) {
    json.object();
    if (!job.label().isEmpty()) {
      json.text("label", job.label());
    }
    json.word("textUnits", job.textUnits().id());
    workpiece(json, job.workpiece(), orElse(asked.workpiece(), WireIntent.Workpiece.NONE));
    operation(json, job, orElse(asked.operation(), WireIntent.Operation.NONE));
    feature(json, job.feature(), orElse(asked.feature(), WireIntent.Feature.NONE));
    tool(json, job.tool(), orElse(asked.tool(), WireIntent.Tool.NONE));
    machine(json, job.machine(), orElse(asked.machine(), WireIntent.Machine.NONE));
    shop(json, job.shop(), orElse(asked.shop(), WireIntent.Shop.NONE));
    preferences(json, job.preferences());
    json.endObject();
  }

  private static void workpiece(JsonBytes json, Job.Workpiece w, WireIntent.Workpiece asked) {
    json.object("workpiece");
    Material material = w.material();
    json.text("material", material == null ? w.name() : material.id());
    json.number("hardnessHb", w.hardnessHb());
    json.number("kc11NPerMm2", w.kc11Pa().median(), N_PER_MM2);
    json.number("mc", w.mc());
    json.word("isoGroup", w.isoGroup().id());
    json.number("complianceUmPerN", w.complianceMPerN(), UM_PER_N);
    sent(json, "ktNPerMm2", asked.ktNPerMm2());
    sent(json, "krRatio", asked.krRatio());
    json.endObject();
  }

  private static void operation(JsonBytes json, Job job, WireIntent.Operation asked) {
    Job.Operation o = job.operation();
    boolean taps = o.kind() == OperationKind.TAPPING;
    json.object("operation");
    json.word("kind", o.kind().id());
    json.word("stage", o.stage().id());
    positive(json, "axialDepthMm", MM.fromSi(o.axialDepthM()));
    positive(json, "radialDepthMm", MM.fromSi(o.radialDepthM()));
    // Only one of the two is read; the resolved intent can be sent again as it is.
    if (asked.spindleSpeedRpm() == null) {
      json.number("cuttingSpeedMPerMin", o.cuttingSpeedMPerS(), M_PER_MIN);
    } else {
      json.number("spindleSpeedRpm", o.spindleSpeedRadPerS(), RPM);
    }
    if (taps) {
      json.number("feedPerRevMm", job.tool().pitchM(), MM);
    } else {
      positive(json, "feedPerToothMm", MM.fromSi(o.feedPerToothM()));
    }
    json.number("preDrilledDiameterMm", o.preDrilledDiameterM(), MM);
    if (o.rampAngleRad() > 0) {
      json.number("rampAngleDeg", o.rampAngleRad(), DEG);
    } else {
      sent(json, "rampAngleDeg", asked.rampAngleDeg());
    }
    json.word("coolant", o.coolant().id());
    json.word("direction", o.direction().id());
    sent(json, "tapping", taps ? o.tapping().id() : asked.tapping());
    sent(json, "hole", taps ? o.hole().id() : asked.hole());
    json.number("minutesPerPart", o.minutesPerPart());
    json.number("partsPerYear", o.partsPerYear());
    json.endObject();
  }

  private static void feature(JsonBytes json, Job.Feature f, WireIntent.Feature asked) {
    json.object("feature");
    json.number("depthMm", f.depthM(), MM);
    json.number("wallDraftDeg", f.wallDraftRad(), DEG);
    json.number("wallClearanceMm", f.wallClearanceM(), MM);
    json.number("nominalSizeMm", f.nominalSizeM(), MM);
    sent(json, "toleranceGrade", asked.toleranceGrade());
    json.number("toleranceBandUm", f.toleranceBandM(), UM);
    json.number("raUm", f.raM(), UM);
    json.number("tiltDeg", f.tiltRad(), DEG);
    positive(json, "pocketWidthMm", MM.fromSi(f.pocketWidthM()));
    json.array("obstructions");
    for (Intent.Obstruction o : f.obstructions()) {
      json.object();
      json.number("heightMm", o.heightM(), MM);
      json.number("distanceMm", o.distanceM(), MM);
      json.endObject();
    }
    json.endArray();
    json.endObject();
  }

  private static void tool(JsonBytes json, Job.Tool t, WireIntent.Tool asked) {
    json.object("tool");
    json.word("kind", t.kind().id());
    json.number("diameterMm", t.diameterM(), MM);
    json.whole("teeth", t.teeth());
    json.number("helixDeg", t.helixRad(), DEG);
    json.word("hand", t.hand().id());
    json.word("helixHand", t.helixHand().id());
    json.number("cornerRadiusMm", t.cornerRadiusM(), MM);
    positive(json, "fluteLengthMm", MM.fromSi(t.fluteLengthM()));
    positive(json, "neckDiameterMm", MM.fromSi(t.neckDiameterM()));
    positive(json, "neckLengthMm", MM.fromSi(t.neckLengthM()));
    if (!t.bored()) {
      json.number("overallLengthMm", t.overallLengthM(), MM);
    }
    json.word("substrate", t.substrate().id());
    json.object("shank");
    json.number("diameterMm", t.shankDiameterM(), MM);
    json.word("form", t.shankForm().id());
    if (!t.shankTolerance().isEmpty()) {
      json.text("tolerance", t.shankTolerance());
    }
    json.endObject();
    positive(json, "pitchMm", MM.fromSi(t.pitchM()));
    positive(json, "pointAngleDeg", DEG.fromSi(t.pointAngleRad()));
    positive(json, "leadAngleDeg", DEG.fromSi(t.leadAngleRad()));
    sent(json, "tapForm", t.kind() == ToolKind.TAP ? t.tapForm().id() : asked.tapForm());
    if (t.bored()) {
      json.number("cutterBodyLengthMm", t.overallLengthM(), MM);
    } else {
      sent(json, "cutterBodyLengthMm", asked.cutterBodyLengthMm());
    }
    json.number("massKg", t.massKg());
    json.number("maxSpindleSpeedRpm", t.maxSpindleSpeedRadPerS(), RPM);
    json.flag("throughCoolant", t.throughCoolant());
    Boolean exchangeable = asked.exchangeableHead();
    if (exchangeable != null) {
      json.flag("exchangeableHead", exchangeable);
    }
    json.number("price", t.price());
    json.number("lifeMinutes", t.lifeMinutes());
    json.endObject();
  }

  private static void machine(JsonBytes json, Job.Machine m, WireIntent.Machine asked) {
    json.object("machine");
    json.text("interface", m.spindle().id());
    json.flag("faceContact", m.faceContact());
    json.number("maxSpindleSpeedRpm", m.maxSpindleSpeedRadPerS(), RPM);
    json.number("powerKw", m.powerW(), KW);
    json.number("torqueNm", m.torqueNm());
    json.array("torqueCurve");
    for (Intent.CurvePoint point : m.torqueCurve()) {
      json.object();
      json.number("spindleSpeedRpm", point.spindleSpeedRadPerS(), RPM);
      json.number("torqueNm", point.torqueNm());
      json.endObject();
    }
    json.endArray();
    json.number("clampingForceKn", m.clampingForceN().median(), KN);
    json.whole("axes", m.axes());
    json.flag("throughCoolant", m.throughCoolant());
    sent(json, "coolantPressureBar", asked.coolantPressureBar());
    json.object("toolChanger");
    Job.ToolChanger c = m.changer();
    json.number("maxMassKg", c.maxMassKg());
    json.number("maxLengthMm", c.maxLengthM(), MM);
    json.number("maxDiameterMm", c.maxDiameterM(), MM);
    json.number("maxDiameterNeighboursEmptyMm", c.maxDiameterNeighboursEmptyM(), MM);
    json.number("maxMomentNm", c.maxMomentNm());
    json.endObject();
    json.endObject();
  }

  private static void shop(JsonBytes json, Job.Shop s, WireIntent.Shop asked) {
    json.object("shop");
    json.flag("shrinkUnit", s.shrinkUnit());
    json.flag("balancer", s.balancer());
    json.flag("torqueWrench", s.torqueWrench());
    json.flag("presetter", s.presetter());
    json.array("excludedFamilies");
    // In the order in which they were sent: a set has none.
    for (String family : orEmpty(asked.excludedFamilies())) {
      json.text(family);
    }
    json.endArray();
    json.name("stock");
    json.append(StrictJson.asSent(orEmpty(asked.stock())));
    json.flag("stockOnly", s.stockOnly());
    json.number("hourlyRate", s.hourlyRate());
    json.text("currency", s.currency());
    json.word("shankCondition", s.shankCondition().id());
    json.word("colletCondition", s.colletCondition().id());
    json.endObject();
  }

  private static void preferences(JsonBytes json, Job.Preferences p) {
    json.object("preferences");
    json.word("rankBy", p.rankBy().id());
    json.object("weights");
    json.number("accuracy", p.accuracyWeight());
    json.number("grip", p.gripWeight());
    json.number("reach", p.reachWeight());
    json.number("speed", p.speedWeight());
    json.endObject();
    json.number("confidence", p.confidence());
    json.whole("limit", p.limit());
    json.flag("stability", p.stability());
    json.endObject();
  }

  private static void positive(JsonBytes json, String name, double value) {
    if (value > 0) {
      json.number(name, value);
    }
  }

  private static void sent(JsonBytes json, String name, @Nullable Double value) {
    if (value != null) {
      json.number(name, value);
    }
  }

  private static void sent(JsonBytes json, String name, @Nullable String value) {
    if (value != null) {
      json.text(name, value);
    }
  }
}
