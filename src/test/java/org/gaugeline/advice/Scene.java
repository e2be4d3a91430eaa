package org.gaugeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.GivenAssembly.Component;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assembly.Role;
import org.gaugeline.job.StockEntry;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.quantity.UnitSuffix;
import org.jspecify.annotations.Nullable;

/** A job and an assembly that somebody chose for it, in mm; never changed in place. */
public record Scene(Intents intents, GivenAssembly given) {
  private static final Assessor ASSESSOR = new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR);

  public static Scene of(Intents intents, String... refs) {
    Scene scene = new Scene(intents, new GivenAssembly(List.of(), null, Measured.NONE));
    for (String ref : refs) {
      scene = scene.plus(null, ref, InlineHolder.NONE);
    }
    return scene;
  }

  public static Scene of(Intents intents, HolderBody holder) {
    return of(intents, holder.ref());
  }

  /** With one more component. */
  public Scene plus(@Nullable Role role, @Nullable String ref, InlineHolder details) {
    List<Component> components = new ArrayList<>(given.components());
    String pointer = "/assembly/components/" + components.size();
    components.add(new Component(pointer, role, ref, details));
    return new Scene(
        intents, new GivenAssembly(List.copyOf(components), given.stickOutM(), given.measured()));
  }

  /** With what is known better of the last component, by the names of the wire. */
  public Scene knowing(Map<String, Object> details) {
    List<Component> components = new ArrayList<>(given.components());
    Component last = components.remove(components.size() - 1);
    Scene others =
        new Scene(intents, new GivenAssembly(components, given.stickOutM(), given.measured()));
    return others.plus(last.role(), last.ref(), details(details));
  }

  /** Read as an entry of the stock, which is described in the same words. */
  private InlineHolder details(Map<String, Object> members) {
    Map<String, Object> entry = new LinkedHashMap<>(members);
    entry.put("count", 1);
    InlineHolder read =
        intents.with("/shop/stock", List.of(entry)).intent().shop().stock().get(0).inline();
    return read == null ? InlineHolder.NONE : read;
  }

  public Scene standingOutMm(double stickOutMm) {
    return new Scene(intents, given.standingOut(stickOutMm * 1e-3));
  }

  public Scene measured(Measured measured) {
    return new Scene(intents, new GivenAssembly(given.components(), given.stickOutM(), measured));
  }

  public Scene with(String pointer, Object value) {
    return new Scene(intents.with(pointer, value), given);
  }

  Scene without(String pointer) {
    return new Scene(intents.without(pointer), given);
  }

  /** As far out as another. */
  Scene standingAs(Scene other) {
    return new Scene(
        intents,
        new GivenAssembly(given.components(), other.given.stickOutM(), other.given.measured()));
  }

  Scene atSpeedRpm(double spindleSpeedRpm) {
    return new Scene(intents.atSpeedRpm(spindleSpeedRpm), given);
  }

  public Assessor.Judged judged() {
    return ASSESSOR.judge(intents.intent(), given);
  }

  /** The body that says the same over the wire. */
  public JsonNode body() {
    ObjectNode body = intents.body();
    ObjectNode assembly = body.putObject("assembly");
    if (given.stickOutM() != null) {
      assembly.put("stickOutMm", given.stickOutM() * 1e3);
    }
    Measured measured = given.measured();
    ObjectNode found = assembly.putObject("measured");
    put(found, "runoutAtTipUm", measured.runoutTirM());
    put(found, "gaugeLengthMm", measured.gaugeLengthM());
    put(found, "massKg", measured.massKg());
    ArrayNode components = assembly.putArray("components");
    for (Component component : given.components()) {
      component(component, components.addObject());
    }
    return body;
  }

  private static void component(Component component, ObjectNode node) {
    InlineHolder d = component.details();
    text(node, "ref", component.ref());
    text(node, "role", component.role() == null ? null : component.role().id());
    text(node, "family", d.family());
    text(node, "interface", d.interfaceId());
    put(node, "boreMm", d.boreM());
    put(node, "projectionMm", d.projectionM());
    put(node, "maxSpindleSpeedRpm", d.maxSpindleSpeedRadPerS());
    put(node, "nutTorqueNm", d.nutTorqueNm());
    put(node, "clampingTorqueNm", d.clampingTorqueNm());
    put(node, "axialHoldN", d.axialHoldN());
    if (d.throughCoolant() != null) {
      node.put("throughCoolant", d.throughCoolant());
    }
    StockEntry.TunedMass damper = d.tested().damper();
    if (damper != null) {
      ObjectNode mass = node.putObject("damper");
      put(mass, "massKg", damper.massKg());
      put(mass, "frequencyHz", damper.frequencyHz());
    }
  }

  private static void text(ObjectNode node, String name, @Nullable String value) {
    if (value != null) {
      node.put(name, value);
    }
  }

  private static void put(ObjectNode node, String name, @Nullable Double si) {
    if (si != null && !si.isNaN()) {
      node.put(name, UnitSuffix.fromSi(name, si));
    }
  }

  public Assessment assessed() {
    return ASSESSOR.assess(intents.intent(), given, judged());
  }
}
