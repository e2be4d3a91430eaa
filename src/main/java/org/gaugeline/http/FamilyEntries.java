package org.gaugeline.http;

import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.Friction;
import org.gaugeline.reference.Practice;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Spread;

/** A clamping family with its physics, its numbers and where they come from. */
final class FamilyEntries {
  private final ReferenceData data;

  FamilyEntries(ReferenceData data) {
    this.data = data;
  }

  void write(JsonBytes json, ClampingFamily f) {
    GripEntries grip = GripEntries.of(f.gripModel());
    json.text("id", f.id());
    json.text("name", f.name());
    json.text("summary", f.summary());
    json.text("goodAt", f.goodAt());
    json.text("badAt", f.badAt());
    json.text("needs", f.needs());
    json.text("gripModel", f.gripModel().id());
    json.text("physics", grip.words());
    json.text("equation", grip.equation());
    json.array("shankForms");
    for (ShankForm form : ShankForm.values()) {
      if (f.shankForms().contains(form)) {
        json.text(form.id());
      }
    }
    json.endArray();
    numbers(json, f);
    List<Value> values = values(grip);
    json.array("values");
    for (Value value : values) {
      value(json, value);
    }
    json.endArray();
    json.text("source", f.sourceKey());
    json.texts("sources", sources(f, grip, values));
  }

  private static void numbers(JsonBytes json, ClampingFamily f) {
    if (f.contactPressurePa().median() > 0) {
      CatalogueWriters.spread(json, "contactPressureNPerMm2", f.contactPressurePa(), N_PER_MM2);
    }
    CatalogueWriters.spread(json, "tipRunoutUm", f.tipTirM(), UM);
    json.number("dirtyRunoutFactor", f.dirtyTirFactor());
    CatalogueWriters.spread(json, "speedCeilingRpm", f.speedCeilingRadPerS(), RPM);
    json.number("warmGripFactor", f.warmGripFactor());
    json.number("jointStiffnessFactor", f.jointFactor());
    json.number("dampingFactor", f.dampingFactor());
    json.number("centreOfMassOffsetUm", f.residualUnbalanceM(), UM);
    json.flag("sideLoad", f.sideLoad());
    json.flag("needsShrinkUnit", f.needsShrinkUnit());
    json.flag("needsTorqueWrench", f.needsTorqueWrench());
    json.number("changeMinutes", f.changeMinutes());
  }

  private record Value(String id, Spread spread, String note, String sourceKey) {}

  private List<Value> values(GripEntries grip) {
    List<Value> values = new ArrayList<>();
    for (String id : grip.frictionIds()) {
      Friction row = data.frictions().get(id);
      if (row == null) {
        throw new IllegalStateException("no friction '" + id + "' in the tables");
      }
      values.add(new Value(id, row.coefficient(), "coefficient of friction", row.sourceKey()));
    }
    for (String id : grip.practiceIds()) {
      Practice row = data.practiceRow(id);
      values.add(new Value(id, row.value(), row.note(), row.sourceKey()));
    }
    return values;
  }

  private static void value(JsonBytes json, Value value) {
    json.object();
    json.text("id", value.id());
    json.number("p05", value.spread().p05());
    json.number("median", value.spread().median());
    json.number("p95", value.spread().p95());
    json.text("note", value.note());
    json.text("source", value.sourceKey());
    json.endObject();
  }

  private static List<String> sources(ClampingFamily family, GripEntries grip, List<Value> values) {
    Set<String> keys = new LinkedHashSet<>();
    keys.add(family.sourceKey());
    keys.addAll(grip.sourceKeys());
    values.forEach(value -> keys.add(value.sourceKey()));
    return List.copyOf(keys);
  }
}
