package org.gaugeline.assembly;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What lengthens, narrows or adapts a holder. */
public record Attachments(
    List<Extension> extensions, List<Sleeve> sleeves, List<Adapter> adapters) {

  /** A catalogue of holders only. */
  public static final Attachments NONE = new Attachments(List.of(), List.of(), List.of());

  /** The extension of a catalogue id; null where there is none. */
  @Nullable Extension extension(String ref) {
    for (Extension one : extensions) {
      if (one.ref().equals(ref)) {
        return one;
      }
    }
    return null;
  }

  /** The sleeve of a catalogue id; null where there is none. */
  @Nullable Sleeve sleeve(String ref) {
    for (Sleeve one : sleeves) {
      if (one.ref().equals(ref)) {
        return one;
      }
    }
    return null;
  }

  /** The adapter of a catalogue id; null where there is none. */
  @Nullable Adapter adapter(String ref) {
    for (Adapter one : adapters) {
      if (one.ref().equals(ref)) {
        return one;
      }
    }
    return null;
  }

  /** Catalogue ids of all of them. */
  public Set<String> refs() {
    Set<String> refs = new HashSet<>();
    extensions.forEach(extension -> refs.add(extension.ref()));
    sleeves.forEach(sleeve -> refs.add(sleeve.ref()));
    adapters.forEach(adapter -> refs.add(adapter.ref()));
    return refs;
  }
}
