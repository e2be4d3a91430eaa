package org.gaugeline.http;

import static org.gaugeline.quantity.UnitSuffix.KG;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.MM_PER_S;
import static org.gaugeline.quantity.UnitSuffix.N;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.gaugeline.assembly.Adapter;
import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.Extension;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.Sleeve;
import org.gaugeline.reference.ColletSize;
import org.jspecify.annotations.Nullable;

/**
 * Whatever a stock entry's {@code ref} may name: a holder, or what lengthens, narrows or adapts
 * one.
 *
 * @param role what it does
 * @param interfaceId its spindle end; empty where it has none
 * @param familyId how it grips; empty where it grips nothing
 * @param members writes the rest
 */
record ComponentEntry(
    String id, Role role, String interfaceId, String familyId, Consumer<JsonBytes> members) {

  /** All of them by id: holders first, in table order. */
  static Map<String, ComponentEntry> all(HolderCatalogue catalogue) {
    Map<String, ComponentEntry> all = new LinkedHashMap<>();
    catalogue.byRef().values().forEach(body -> put(all, of(body)));
    catalogue.attachments().extensions().forEach(extension -> put(all, of(extension)));
    catalogue.attachments().sleeves().forEach(sleeve -> put(all, of(sleeve)));
    catalogue.attachments().adapters().forEach(adapter -> put(all, of(adapter)));
    return Collections.unmodifiableMap(all);
  }

  private static void put(Map<String, ComponentEntry> all, ComponentEntry entry) {
    all.put(entry.id(), entry);
  }

  void write(JsonBytes json) {
    json.text("id", id);
    json.text("role", role.id());
    members.accept(json);
  }

  private static ComponentEntry of(HolderBody h) {
    String end = h.spindleInterface().id();
    return new ComponentEntry(h.ref(), Role.HOLDER, end, h.family().id(), json -> holder(json, h));
  }

  private static void holder(JsonBytes json, HolderBody h) {
    json.text("origin", h.origin().name().toLowerCase(Locale.ROOT));
    json.text("family", h.family().id());
    json.text("interface", h.spindleInterface().id());
    json.flag("faceContact", h.faceContact());
    json.number("boreMm", h.boreM(), MM);
    collet(json, h.colletSize());
    json.number("projectionMm", h.projectionM(), MM);
    profile(json, h.sections());
    json.number("minInsertionMm", h.minInsertionM(), MM);
    json.number("maxInsertionMm", h.maxInsertionM(), MM);
    Ratings r = h.ratings();
    json.number("massKg", r.massKg());
    json.number("maxSpindleSpeedRpm", r.maxSpeedRadPerS(), RPM);
    json.number("balanceGrade", r.balanceGradeMPerS(), MM_PER_S);
    json.number("balanceSpeedRpm", r.balanceSpeedRadPerS(), RPM);
    json.number("runoutUm", r.runoutTirM(), UM);
    json.flag("throughCoolant", h.throughCoolant());
    json.number("price", h.price());
    json.text("source", h.sourceKey());
  }

  private static ComponentEntry of(Extension e) {
    return new ComponentEntry(
        e.ref(),
        Role.EXTENSION,
        "",
        e.family().id(),
        json -> {
          generic(json);
          json.text("family", e.family().id());
          json.number("shankDiameterMm", e.shankDiameterM(), MM);
          json.number("shankLengthMm", e.shankLengthM(), MM);
          json.number("boreMm", e.boreM(), MM);
          collet(json, e.collet());
          json.number("projectionMm", e.lengthM(), MM);
          profile(json, e.sections());
          json.number("minInsertionMm", e.minInsertionM(), MM);
          json.number("maxInsertionMm", e.maxInsertionM(), MM);
          json.number("price", e.price());
          json.text("source", e.sourceKey());
        });
  }

  private static ComponentEntry of(Sleeve s) {
    return new ComponentEntry(
        s.ref(),
        Role.SLEEVE,
        "",
        "",
        json -> {
          generic(json);
          json.number("shankDiameterMm", s.outerDiameterM(), MM);
          json.number("shankLengthMm", s.lengthM(), MM);
          json.number("boreMm", s.boreM(), MM);
          CatalogueWriters.spread(json, "addedRunoutUm", s.tirM(), UM);
          CatalogueWriters.spread(json, "gripShare", s.gripShare(), N);
          json.number("price", s.price());
          json.text("source", s.sourceKey());
        });
  }

  private static ComponentEntry of(Adapter a) {
    return new ComponentEntry(
        a.ref(),
        a.isDamped() ? Role.DAMPED_BODY : Role.ADAPTER,
        a.spindleInterface().id(),
        "",
        json -> {
          generic(json);
          json.text("interface", a.spindleInterface().id());
          json.text("coupling", a.coupling().id());
          json.flag("faceContact", a.faceContact());
          json.number("projectionMm", a.projectionM(), MM);
          profile(json, a.sections());
          Damper damper = a.damper();
          if (damper != null) {
            json.number("tunedMassKg", damper.massKg(), KG);
            json.number("tunedMassAtMm", damper.atM(), MM);
          }
          json.number("price", a.price());
          json.text("source", a.sourceKey());
        });
  }

  private static void generic(JsonBytes json) {
    json.text("origin", HolderBody.Origin.GENERIC.name().toLowerCase(Locale.ROOT));
  }

  private static void collet(JsonBytes json, @Nullable ColletSize collet) {
    if (collet != null) {
      json.text("colletSize", collet.id());
    }
  }

  private static void profile(JsonBytes json, List<ProfileSection> sections) {
    json.array("profile");
    for (ProfileSection section : sections) {
      json.object();
      json.number("lengthMm", section.lengthM(), MM);
      json.number("diameterMm", section.startDiameterM(), MM);
      json.number("endDiameterMm", section.endDiameterM(), MM);
      json.number("boreMm", section.boreM(), MM);
      json.endObject();
    }
    json.endArray();
  }
}
