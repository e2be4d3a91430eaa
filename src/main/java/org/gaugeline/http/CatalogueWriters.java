package org.gaugeline.http;

import static org.gaugeline.http.JsonNumbers.member;
import static org.gaugeline.quantity.UnitSuffix.KN;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.MM_PER_S;
import static org.gaugeline.quantity.UnitSuffix.N;
import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** Reference records as catalogue entries. */
final class CatalogueWriters {
  private CatalogueWriters() {}

  static void material(JsonGenerator json, Material m) throws IOException {
    json.writeStringField("id", m.id());
    json.writeStringField("name", m.name());
    json.writeArrayFieldStart("aliases");
    for (String alias : m.aliases()) {
      json.writeString(alias);
    }
    json.writeEndArray();
    json.writeStringField("isoGroup", m.isoGroup().id());
    spread(json, "kc11NPerMm2", m.kc11Pa(), N_PER_MM2);
    member(json, "mc", m.mc());
    member(json, "hardnessHb", m.hardnessHb());
    member(json, "minHardnessHb", m.minHardnessHb());
    member(json, "maxHardnessHb", m.maxHardnessHb());
    member(json, "hardnessExponent", m.hardnessExponent());
    spread(json, "krRatio", m.radialRatio(), N);
    json.writeStringField("machinability", m.machinability());
    json.writeStringField("source", m.sourceKey());
  }

  static void spindleInterface(JsonGenerator json, SpindleInterface s) throws IOException {
    json.writeStringField("id", s.id());
    json.writeStringField("name", s.name());
    json.writeStringField("kind", s.kind().id());
    json.writeStringField("standard", s.standard());
    json.writeNumberField("nominalSize", s.nominalSize());
    member(json, "gaugeDiameterMm", s.gaugeDiameterM(), MM);
    member(json, "taperLengthMm", s.taperLengthM(), MM);
    member(json, "flangeDiameterMm", s.flangeDiameterM(), MM);
    member(json, "flangeFrontMm", s.flangeFrontM(), MM);
    json.writeStringField("contact", s.nativeContact().id());
    json.writeBooleanField("faceContactOffered", s.faceContactOffered());
    member(json, "faceOuterDiameterMm", s.faceOuterDiameterM(), MM);
    member(json, "faceInnerDiameterMm", s.faceInnerDiameterM(), MM);
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
    json.writeStringField("source", s.sourceKey());
    json.writeStringField("limitsSource", s.limitsSourceKey());
  }

  static void family(JsonGenerator json, ClampingFamily f) throws IOException {
    json.writeStringField("id", f.id());
    json.writeStringField("name", f.name());
    json.writeStringField("gripModel", f.gripModel().id());
    json.writeStringField("summary", f.summary());
    json.writeStringField("goodAt", f.goodAt());
    json.writeStringField("badAt", f.badAt());
    json.writeStringField("needs", f.needs());
    json.writeArrayFieldStart("shankForms");
    for (ShankForm form : ShankForm.values()) {
      if (f.shankForms().contains(form)) {
        json.writeString(form.id());
      }
    }
    json.writeEndArray();
    spread(json, "tipRunoutUm", f.tipTirM(), UM);
    spread(json, "speedCeilingRpm", f.speedCeilingRadPerS(), RPM);
    member(json, "warmGripFactor", f.warmGripFactor());
    json.writeBooleanField("sideLoad", f.sideLoad());
    json.writeBooleanField("needsShrinkUnit", f.needsShrinkUnit());
    json.writeBooleanField("needsTorqueWrench", f.needsTorqueWrench());
    member(json, "changeMinutes", f.changeMinutes());
    json.writeStringField("source", f.sourceKey());
  }

  static void source(JsonGenerator json, Source s) throws IOException {
    json.writeStringField("id", s.key());
    json.writeStringField("kind", s.kind().id());
    json.writeStringField("citation", s.citation());
    json.writeStringField("licence", s.licence());
    json.writeStringField("note", s.note());
  }

  static void holder(JsonGenerator json, HolderBody h) throws IOException {
    json.writeStringField("id", h.ref());
    json.writeStringField("origin", h.origin().name().toLowerCase(Locale.ROOT));
    json.writeStringField("family", h.family().id());
    json.writeStringField("interface", h.spindleInterface().id());
    json.writeBooleanField("faceContact", h.faceContact());
    member(json, "boreMm", h.boreM(), MM);
    ColletSize collet = h.colletSize();
    if (collet != null) {
      json.writeStringField("colletSize", collet.id());
    }
    member(json, "projectionMm", h.projectionM(), MM);
    profile(json, h);
    member(json, "minInsertionMm", h.minInsertionM(), MM);
    member(json, "maxInsertionMm", h.maxInsertionM(), MM);
    Ratings r = h.ratings();
    member(json, "massKg", r.massKg());
    member(json, "maxSpindleSpeedRpm", r.maxSpeedRadPerS(), RPM);
    member(json, "balanceGrade", r.balanceGradeMPerS(), MM_PER_S);
    member(json, "balanceSpeedRpm", r.balanceSpeedRadPerS(), RPM);
    member(json, "runoutUm", r.runoutTirM(), UM);
    json.writeBooleanField("throughCoolant", h.throughCoolant());
    member(json, "price", h.price());
    json.writeStringField("source", h.sourceKey());
  }

  private static void profile(JsonGenerator json, HolderBody h) throws IOException {
    json.writeArrayFieldStart("profile");
    for (ProfileSection section : h.sections()) {
      json.writeStartObject();
      member(json, "lengthMm", section.lengthM(), MM);
      member(json, "diameterMm", section.startDiameterM(), MM);
      member(json, "endDiameterMm", section.endDiameterM(), MM);
      member(json, "boreMm", section.boreM(), MM);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void spread(JsonGenerator json, String name, Spread spread, UnitSuffix unit)
      throws IOException {
    json.writeObjectFieldStart(name);
    member(json, "p05", spread.p05(), unit);
    member(json, "median", spread.median(), unit);
    member(json, "p95", spread.p95(), unit);
    json.writeEndObject();
  }
}
