package org.gaugeline.http;

import static org.gaugeline.quantity.UnitSuffix.KN;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.N;
import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;

import org.gaugeline.assessment.Severity;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** Reference records as catalogue entries. */
final class CatalogueWriters {
  private CatalogueWriters() {}

  static void material(JsonBytes json, Material m) {
    json.text("id", m.id());
    json.text("name", m.name());
    json.texts("aliases", m.aliases());
    json.text("isoGroup", m.isoGroup().id());
    spread(json, "kc11NPerMm2", m.kc11Pa(), N_PER_MM2);
    json.number("mc", m.mc());
    json.number("hardnessHb", m.hardnessHb());
    json.number("minHardnessHb", m.minHardnessHb());
    json.number("maxHardnessHb", m.maxHardnessHb());
    json.number("hardnessExponent", m.hardnessExponent());
    spread(json, "krRatio", m.radialRatio(), N);
    json.text("machinability", m.machinability());
    json.text("source", m.sourceKey());
  }

  static void spindleInterface(JsonBytes json, SpindleInterface s) {
    json.text("id", s.id());
    json.text("name", s.name());
    json.text("kind", s.kind().id());
    json.text("standard", s.standard());
    json.whole("nominalSize", s.nominalSize());
    json.number("gaugeDiameterMm", s.gaugeDiameterM(), MM);
    json.number("taperLengthMm", s.taperLengthM(), MM);
    json.number("flangeDiameterMm", s.flangeDiameterM(), MM);
    json.number("flangeFrontMm", s.flangeFrontM(), MM);
    json.text("contact", s.nativeContact().id());
    json.flag("faceContactOffered", s.faceContactOffered());
    json.number("faceOuterDiameterMm", s.faceOuterDiameterM(), MM);
    json.number("faceInnerDiameterMm", s.faceInnerDiameterM(), MM);
    spread(json, "clampingForceKn", s.clampingForceN(), KN);
    spread(json, "seatRunoutUm", s.nativeSeatTirM(), UM);
    spread(json, "ratedSpindleSpeedRpm", s.nativeRatedSpeedRadPerS(), RPM);
    spread(json, "bendingStiffnessNmPerRad", s.nativeRotationNmPerRad(), N);
    if (s.faceContactOffered()) {
      spread(json, "seatRunoutWithFaceContactUm", s.faceSeatTirM(), UM);
      spread(json, "ratedSpindleSpeedWithFaceContactRpm", s.faceRatedSpeedRadPerS(), RPM);
      spread(json, "bendingStiffnessWithFaceContactNmPerRad", s.faceRotationNmPerRad(), N);
    }
    spread(json, "radialStiffnessNPerM", s.translationNPerM(), N);
    json.text("source", s.sourceKey());
    json.text("limitsSource", s.limitsSourceKey());
  }

  static void finding(JsonBytes json, FindingKind f) {
    json.text("code", f.code());
    json.text("criterion", f.criterion());
    json.texts("severities", f.severities().stream().map(Severity::id).toList());
    json.text("meaning", f.explained().meaning());
    json.text("formula", f.explained().formula());
    json.texts("sources", f.sources());
    json.text("remedy", f.explained().remedy());
  }

  static void source(JsonBytes json, Source s) {
    json.text("id", s.key());
    json.text("kind", s.kind().id());
    json.text("citation", s.citation());
    json.text("licence", s.licence());
    json.text("note", s.note());
  }

  static void spread(JsonBytes json, String name, Spread spread, UnitSuffix unit) {
    json.object(name);
    json.number("p05", spread.p05(), unit);
    json.number("median", spread.median(), unit);
    json.number("p95", spread.p95(), unit);
    json.endObject();
  }
}
