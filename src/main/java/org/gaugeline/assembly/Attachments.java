package org.gaugeline.assembly;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What lengthens, narrows or adapts a holder. */
public record Attachments(
    List<Extension> extensions, List<Sleeve> sleeves, List<Adapter> adapters) {

  /** A catalogue of holders only. */
  public static final Attachments NONE = new Attachments(List.of(), List.of(), List.of());

  /** Catalogue ids of all of them. */
  public Set<String> refs() {
    Set<String> refs = new HashSet<>();
    extensions.forEach(extension -> refs.add(extension.ref()));
    sleeves.forEach(sleeve -> refs.add(sleeve.ref()));
    adapters.forEach(adapter -> refs.add(adapter.ref()));
    return refs;
  }
}
