package org.gaugeline.http;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** One kind of catalogue entry: the whole list, and entries by id. */
final class CatalogueSection<T> {
  private static final int USUAL_BYTES = 16 * 1024;

  private final String kind;
  private final String referenceVersion;
  private final Map<String, T> byId;
  private final BiConsumer<JsonBytes, T> writer;

  CatalogueSection(
      String kind, String referenceVersion, Map<String, T> byId, BiConsumer<JsonBytes, T> writer) {
    this.kind = kind;
    this.referenceVersion = referenceVersion;
    this.byId = byId;
    this.writer = writer;
  }

  TaggedDocument all() {
    return list(byId.values(), false);
  }

  Set<String> ids() {
    return byId.keySet();
  }

  Collection<T> entries() {
    return byId.values();
  }

  TaggedDocument list(Collection<T> entries, boolean truncated) {
    return document(
        json -> {
          json.text("referenceVersion", referenceVersion);
          json.array("items");
          for (T entry : entries) {
            json.object();
            writer.accept(json, entry);
            json.endObject();
          }
          json.endArray();
          json.flag("truncated", truncated);
        });
  }

  /**
   * One entry.
   *
   * @throws ProblemException where there is none, with the nearest ids
   */
  TaggedDocument entry(String id) {
    T entry = byId.get(id);
    if (entry == null) {
      throw new ProblemException(unknown(id));
    }
    return document(json -> writer.accept(json, entry));
  }

  private Problem unknown(String id) {
    List<String> nearest = Nearest.of(id, byId.keySet());
    String detail =
        "There is no "
            + kind
            + " of that id."
            + (nearest.isEmpty() ? "" : " Maybe " + String.join(" or ", nearest) + " was meant.");
    Map<String, Object> parameters = nearest.isEmpty() ? Map.of() : Map.of("nearest", nearest);
    return Problem.notFound(detail, List.of(new Fault("", "unknown-name", detail, parameters)));
  }

  private static TaggedDocument document(Consumer<JsonBytes> members) {
    JsonBytes json = new JsonBytes(USUAL_BYTES);
    json.object();
    members.accept(json);
    json.endObject();
    return TaggedDocument.of(json.toByteArray());
  }
}
