package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireAssessment;

/** Given assemblies that describe nothing, or name what the catalogue lacks. */
final class AssemblyFaults {
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
      catalogue.component(pointer, component.ref(), component.interface_(), faults);
      StockContradictions.profile(pointer, orEmpty(component.profile()), faults);
      catalogue.components().find(pointer, component, faults);
    }
    return faults;
  }
}
