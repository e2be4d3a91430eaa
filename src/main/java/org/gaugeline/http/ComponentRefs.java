package org.gaugeline.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.StandardPart;
import org.gaugeline.assembly.StandardParts;
import org.gaugeline.assembly.StockRefs;
import org.gaugeline.reference.NearNames;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/**
 * Whatever the {@code ref} of a given component may name: all that answers list as components, and
 * stacks of bodies joined by {@code +}.
 */
final class ComponentRefs {
  /** How answers name a body that a request described. */
  private static final String OWN = "own-";

  private final Map<String, ComponentEntry> bodies;
  private final StockRefs stacks;
  private final Set<String> collets;
  private final StandardParts standardParts;
  private final NearNames names;

  ComponentRefs(ReferenceData data, HolderCatalogue catalogue) {
    this.bodies = ComponentEntry.all(catalogue);
    this.stacks = new StockRefs(catalogue);
    this.collets = data.colletSizes().keySet();
    this.standardParts = new StandardParts(data);
    List<String> all = new ArrayList<>(bodies.keySet());
    all.addAll(collets);
    all.addAll(standardParts.refs());
    this.names = new NearNames(all);
  }

  boolean knows(String ref) {
    return stacks.knows(ref) || collets.contains(ref) || standardParts.named(ref) != null;
  }

  /** Whether a reference may name what the request itself describes. */
  static boolean isOwn(String ref) {
    return ref.startsWith(OWN);
  }

  /** A body of the catalogue; null for all else. */
  @Nullable ComponentEntry body(String ref) {
    return bodies.get(ref);
  }

  /** Whether it is a body, or a stack of them, of which a shop counts how many it has. */
  boolean isCounted(String ref) {
    return stacks.knows(ref);
  }

  /** What a reference does in an assembly; null for stacks and for what is not known. */
  @Nullable Role role(String ref) {
    ComponentEntry body = bodies.get(ref);
    if (body != null) {
      return body.role();
    }
    if (collets.contains(ref)) {
      return Role.COLLET;
    }
    StandardPart part = standardParts.named(ref);
    return part == null ? isOwn(ref) ? Role.HOLDER : null : part.role();
  }

  List<String> nearest(String ref) {
    return names.nearest(ref, Nearest.MOST);
  }
}
