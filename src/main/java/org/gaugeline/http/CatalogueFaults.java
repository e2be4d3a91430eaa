package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.StockRefs;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * What the tables lack of what a body names, and what they contradict. Absent members are no fault
 * here.
 */
final class CatalogueFaults {
  private static final String OWN =
      " It is the name of a part that a request described: describe it here in the same words, or"
          + " send the shop.stock that describes it.";

  private final ReferenceData data;
  private final MaterialIndex materials;
  private final Set<String> interfaceIds;
  private final StockRefs holders;
  private final MillFaults mills;
  private final ComponentRefs refs;
  private final ComponentFaults components;

  CatalogueFaults(ReferenceData data, HolderCatalogue holders) {
    this.data = data;
    this.materials = MaterialIndex.of(data.materials().values());
    this.interfaceIds = data.interfaces().keySet();
    this.holders = new StockRefs(holders);
    this.mills = new MillFaults(data);
    this.refs = new ComponentRefs(data, holders);
    this.components = new ComponentFaults(data, refs);
  }

  List<Fault> find(WireIntent wire) {
    List<Fault> faults = new ArrayList<>();
    workpiece(orElse(wire.workpiece(), WireIntent.Workpiece.NONE), faults);
    WireIntent.Operation operation = orElse(wire.operation(), WireIntent.Operation.NONE);
    WireIntent.Tool tool = orElse(wire.tool(), WireIntent.Tool.NONE);
    pitch(operation, tool, faults);
    mills.find(operation, orElse(wire.feature(), WireIntent.Feature.NONE), tool, faults);
    String spindle = orElse(wire.machine(), WireIntent.Machine.NONE).interface_();
    spindleEnd("/machine/interface", spindle, faults);
    stock(orEmpty(orElse(wire.shop(), WireIntent.Shop.NONE).stock()), faults);
    return faults;
  }

  private void workpiece(WireIntent.Workpiece w, List<Fault> faults) {
    String name = w.material();
    if (name == null) {
      return;
    }
    Material material = materials.find(name);
    boolean ownConstants = w.kc11NPerMm2() != null && w.mc() != null;
    if (material != null) {
      known(material, w, ownConstants, faults);
    } else if (!ownConstants) {
      List<String> nearest =
          name.length() > Nearest.LONGEST ? List.of() : materials.nearest(name, Nearest.MOST);
      String own = " A material of your own needs kc11NPerMm2, mc and isoGroup.";
      faults.add(unknown("/workpiece/material", "unknown-material", name, nearest, own));
    } else if (w.isoGroup() == null) {
      faults.add(
          new Fault(
              "/workpiece/isoGroup",
              "iso-group-needed",
              "isoGroup is required for a material that the catalogue lacks (" + name + ").",
              Map.of("actual", name)));
    }
  }

  private static void known(
      Material material, WireIntent.Workpiece w, boolean ownConstants, List<Fault> faults) {
    Double hardness = w.hardnessHb();
    if (!ownConstants
        && hardness != null
        && (hardness < material.minHardnessHb() || hardness > material.maxHardnessHb())) {
      faults.add(hardness(material, hardness));
    }
    String group = w.isoGroup();
    if (group != null && !group.equals(material.isoGroup().id())) {
      String name = material.name();
      String detail =
          "isoGroup ("
              + group
              + ") is not the group of "
              + name
              + ", which is "
              + material.isoGroup().id()
              + ". Leave it out for materials of the catalogue.";
      String pointer = "/workpiece/isoGroup";
      faults.add(Contradictions.fault(pointer, group, "/workpiece/material", name, detail));
      faults.add(Contradictions.fault("/workpiece/material", name, pointer, group, detail));
    }
  }

  private static Fault hardness(Material material, double hardnessHb) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", hardnessHb);
    parameters.put("material", material.name());
    parameters.put("maximum", material.maxHardnessHb());
    parameters.put("minimum", material.minHardnessHb());
    return new Fault(
        "/workpiece/hardnessHb",
        "hardness-outside-material",
        "hardnessHb ("
            + SchemaFaults.plain(hardnessHb)
            + ") lies outside what the material is known for, "
            + SchemaFaults.plain(material.minHardnessHb())
            + " to "
            + SchemaFaults.plain(material.maxHardnessHb())
            + " HB. Maybe another state was meant, or another hardness scale.",
        parameters);
  }

  /** A thread needs a pitch; the tables complete that of the coarse series. */
  private void pitch(WireIntent.Operation operation, WireIntent.Tool tool, List<Fault> faults) {
    Double diameter = tool.diameterMm();
    boolean threads =
        OperationKind.TAPPING.id().equals(operation.kind())
            || ToolKind.TAP.id().equals(tool.kind());
    if (threads
        && diameter != null
        && tool.pitchMm() == null
        && operation.feedPerRevMm() == null
        && data.tapSize(UnitSuffix.MM.toSi(diameter)) == null) {
      faults.add(
          new Fault(
              "/tool/pitchMm",
              "pitch-needed",
              "pitchMm is required for a thread of "
                  + SchemaFaults.plain(diameter)
                  + " mm: the catalogue knows no coarse pitch for it. Maybe the tap drill was given"
                  + " as diameterMm.",
              Map.of("diameterMm", diameter)));
    }
  }

  private void spindleEnd(String pointer, @Nullable String name, List<Fault> faults) {
    if (name != null && !interfaceIds.contains(name)) {
      faults.add(unknown(pointer, "unknown-interface", name, Nearest.of(name, interfaceIds), ""));
    }
  }

  private void stock(List<WireIntent.StockEntry> stock, List<Fault> faults) {
    for (int i = 0; i < stock.size(); i++) {
      WireIntent.StockEntry entry = stock.get(i);
      String ref = entry.ref();
      String pointer = "/shop/stock/" + i;
      if (ref != null && !holders.knows(ref)) {
        // thousands of entries against thousands of names: none is searched for the nearest
        faults.add(unknown(pointer + "/ref", "unknown-holder", ref, List.of(), ""));
      }
      spindleEnd(pointer + "/interface", entry.interface_(), faults);
    }
  }

  ComponentFaults components() {
    return components;
  }

  /**
   * Names of a component of a given assembly.
   *
   * @param describes whether the stock describes holders, so that a name of one's own may be one of
   *     theirs: which they are is known when they are built
   */
  void component(
      String pointer,
      @Nullable String ref,
      @Nullable String spindle,
      boolean describes,
      List<Fault> faults) {
    boolean own = ref != null && StockRefs.isOwn(ref);
    if (ref != null && !refs.knows(ref) && !(own && describes)) {
      List<String> nearest = own ? List.of() : refs.nearest(ref);
      faults.add(unknown(pointer + "/ref", "unknown-holder", ref, nearest, own ? OWN : ""));
    }
    spindleEnd(pointer + "/interface", spindle, faults);
  }

  private static Fault unknown(
      String pointer, String code, String name, List<String> nearest, String more) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", name);
    if (!nearest.isEmpty()) {
      parameters.put("nearest", nearest);
    }
    return new Fault(
        pointer,
        code,
        SchemaFaults.name(pointer)
            + " ("
            + name
            + ") is not in the catalogue."
            + (nearest.isEmpty()
                ? " The catalogue lists what is known."
                : " Maybe " + String.join(" or ", nearest) + " was meant.")
            + more,
        parameters);
  }
}
