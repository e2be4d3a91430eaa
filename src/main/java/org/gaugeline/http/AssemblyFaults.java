package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.http.wire.WireIntent;

/** Given assemblies that describe nothing, or name what the catalogue lacks. */
final class AssemblyFaults {
  private static final String RESPONSE = "/assembly/measured/response";
  private static final String COMPONENTS = "/assembly/components";

  private AssemblyFaults() {}

  static List<Fault> find(WireAssessment wire, CatalogueFaults catalogue) {
    List<Fault> faults = new ArrayList<>();
    WireAssessment.Assembly assembly = orElse(wire.assembly(), WireAssessment.Assembly.NONE);
    List<WireAssessment.Component> components = orEmpty(assembly.components());
    if (wire.assembly() != null && assembly.components() != null && components.isEmpty()) {
      faults.add(
          new Fault(
              COMPONENTS, "required", "components is empty: name at least the holder.", Map.of()));
    }
    WireIntent.Shop shop = orElse(wire.shop(), WireIntent.Shop.NONE);
    boolean describes = orEmpty(shop.stock()).stream().anyMatch(entry -> entry.ref() == null);
    for (int i = 0; i < components.size(); i++) {
      WireAssessment.Component component = components.get(i);
      String pointer = COMPONENTS + "/" + i;
      if (component.ref() == null && component.family() == null && component.role() == null) {
        faults.add(
            new Fault(
                pointer + "/family",
                "required",
                "A component needs ref, or family or role and what else is known of it.",
                Map.of("otherPointer", pointer + "/ref")));
      }
      catalogue.component(pointer, component.ref(), component.interface_(), describes, faults);
      StockContradictions.profile(pointer, orEmpty(component.profile()), faults);
      catalogue.components().find(pointer, component, faults);
    }
    measured(orElse(assembly.measured(), WireAssessment.Measured.NONE), faults);
    return faults;
  }

  /** A direction is measured as modes or as samples, and those of one direction ascend. */
  private static void measured(WireAssessment.Measured measured, List<Fault> faults) {
    for (String direction : List.of("x", "y")) {
      boolean asModes =
          orEmpty(measured.modes()).stream().anyMatch(m -> direction.equals(m.direction()));
      List<WireAssessment.Sample> samples = orEmpty(measured.response());
      int count = 0;
      double last = 0;
      for (int i = 0; i < samples.size(); i++) {
        WireAssessment.Sample sample = samples.get(i);
        Double hz = sample.frequencyHz();
        if (!direction.equals(sample.direction()) || hz == null) {
          continue;
        }
        if (hz <= last) {
          faults.add(
              new Fault(
                  RESPONSE + "/" + i + "/frequencyHz",
                  "contradiction",
                  "frequencyHz ("
                      + SchemaFaults.plain(hz)
                      + ") is not above that of the sample before in direction "
                      + direction
                      + " ("
                      + SchemaFaults.plain(last)
                      + "). Sort the samples of each direction.",
                  Map.of("actual", hz, "other", last)));
        }
        last = hz;
        count++;
      }
      if (count == 1) {
        faults.add(
            new Fault(
                RESPONSE,
                "contradiction",
                "response has one sample in direction "
                    + direction
                    + "; it takes at least two, from below the lowest mode to above the highest.",
                Map.of("actual", count)));
      }
      if (asModes && count > 0) {
        faults.add(
            new Fault(
                RESPONSE,
                "contradiction",
                "response and modes both describe direction " + direction + ". Give one of them.",
                Map.of("otherPointer", "/assembly/measured/modes")));
      }
    }
  }
}
