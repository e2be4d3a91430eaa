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
  private final HolderCatalogue catalogue;
  private final StockRefs stacks;
  private final Set<String> collets;
  private final StandardParts standardParts;

  /** Made when a body first names a component: most callers never do. */
  private volatile @Nullable Index index;

  private record Index(Map<String, ComponentEntry> bodies, NearNames names) {}

  ComponentRefs(ReferenceData data, HolderCatalogue catalogue) {
    this.catalogue = catalogue;
    this.stacks = new StockRefs(catalogue);
    this.collets = data.colletSizes().keySet();
    this.standardParts = new StandardParts(data);
  }

  /** Two threads at once may both make it, and make the same. */
  private Index index() {
    Index known = index;
    if (known == null) {
      Map<String, ComponentEntry> bodies = ComponentEntry.all(catalogue);
      List<String> all = new ArrayList<>(bodies.keySet());
      all.addAll(collets);
      all.addAll(standardParts.refs());
      known = new Index(bodies, new NearNames(all));
      index = known;
    }
    return known;
  }

  boolean knows(String ref) {
    return stacks.knows(ref) || collets.contains(ref) || standardParts.named(ref) != null;
  }

  /** A body of the catalogue; null for all else. */
  @Nullable ComponentEntry body(String ref) {
    return index().bodies().get(ref);
  }

  /** What a reference does in an assembly; null for stacks and for what is not known. */
  @Nullable Role role(String ref) {
    ComponentEntry body = index().bodies().get(ref);
    if (body != null) {
      return body.role();
    }
    if (collets.contains(ref)) {
      return Role.COLLET;
    }
    StandardPart part = standardParts.named(ref);
    return part == null ? StockRefs.isOwn(ref) ? Role.HOLDER : null : part.role();
  }

  List<String> nearest(String ref) {
    return index().names().nearest(ref, Nearest.MOST);
  }
}
