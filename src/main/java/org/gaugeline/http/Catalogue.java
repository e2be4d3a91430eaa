package org.gaugeline.http;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Rule;
import org.gaugeline.assessment.Rules;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.toollist.ListCode;
import org.gaugeline.wording.Words;
import org.jspecify.annotations.Nullable;

/** All that can be looked up, written once. */
public final class Catalogue {
  static final int USUAL_LIMIT = 500;
  static final int GREATEST_LIMIT = 5000;

  /** What has a catalogue id; the other roles are of standard parts. */
  private static final Set<String> ROLES =
      Stream.of(Role.HOLDER, Role.EXTENSION, Role.SLEEVE, Role.ADAPTER, Role.DAMPED_BODY)
          .map(Role::id)
          .collect(Collectors.toUnmodifiableSet());

  final CatalogueSection<Material> materials;
  final CatalogueSection<SpindleInterface> interfaces;
  final CatalogueSection<ClampingFamily> families;
  final CatalogueSection<OperationKind> operations;
  final CatalogueSection<ComponentEntry> holders;
  final CatalogueSection<FindingKind> findings;
  final CatalogueSection<Source> sources;

  public Catalogue(ReferenceData data, HolderCatalogue holderCatalogue, Words words) {
    String version = data.version();
    materials =
        new CatalogueSection<>("material", version, data.materials(), CatalogueWriters::material);
    interfaces =
        new CatalogueSection<>(
            "spindle interface", version, data.interfaces(), CatalogueWriters::spindleInterface);
    families =
        new CatalogueSection<>(
            "clamping family", version, data.families(), new FamilyEntries(data)::write);
    operations =
        new CatalogueSection<>(
            "operation", version, operationsById(), new OperationEntries(data)::write);
    holders =
        new CatalogueSection<>(
            "holder",
            version,
            ComponentEntry.all(holderCatalogue),
            (json, entry) -> entry.write(json));
    findings =
        new CatalogueSection<>(
            "finding", version, findingsByCode(words), CatalogueWriters::finding);
    sources = new CatalogueSection<>("source", version, data.sources(), CatalogueWriters::source);
  }

  private static Map<String, OperationKind> operationsById() {
    Map<String, OperationKind> byId = new LinkedHashMap<>();
    Arrays.stream(OperationKind.values()).forEach(kind -> byId.put(kind.id(), kind));
    return Collections.unmodifiableMap(byId);
  }

  private static Map<String, FindingKind> findingsByCode(Words words) {
    Map<String, FindingKind> byCode = new LinkedHashMap<>();
    for (Rule rule : Rules.ALL) {
      for (String code : rule.codes()) {
        byCode.put(code, FindingKind.of(rule, code, words));
      }
    }
    for (ListCode code : ListCode.values()) {
      byCode.put(code.id(), FindingKind.of(code, words));
    }
    return Collections.unmodifiableMap(byCode);
  }

  /** Holders of an interface, a family and a role, where they are named; at most {@code limit}. */
  TaggedDocument holders(
      @Nullable String interfaceId, @Nullable String family, @Nullable String role, int limit) {
    known("interface", interfaceId, interfaces.ids());
    known("family", family, families.ids());
    known("role", role, ROLES);
    List<ComponentEntry> found =
        holders.entries().stream()
            .filter(h -> interfaceId == null || h.interfaceId().equals(interfaceId))
            .filter(h -> family == null || h.familyId().equals(family))
            .filter(h -> role == null || h.role().id().equals(role))
            .toList();
    int most = Math.min(limit, GREATEST_LIMIT);
    return holders.list(found.subList(0, Math.min(most, found.size())), found.size() > most);
  }

  private static void known(String parameter, @Nullable String value, Set<String> known) {
    if (value != null && !known.contains(value)) {
      List<String> nearest = Nearest.of(value, known);
      throw new ProblemException(
          Problem.invalidParameter(
              new Fault(
                  "?" + parameter,
                  "unknown-name",
                  "There is no such "
                      + parameter
                      + "."
                      + (nearest.isEmpty()
                          ? ""
                          : " Maybe " + String.join(" or ", nearest) + " was meant."),
                  nearest.isEmpty() ? Map.of() : Map.of("nearest", nearest))));
    }
  }
}
