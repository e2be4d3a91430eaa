package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One kind of catalogue entry: the whole list, and entries by id. */
final class CatalogueSection<T> {
  private final String kind;
  private final String referenceVersion;
  private final Map<String, T> byId;
  private final CatalogueEntryWriter<T> writer;

  CatalogueSection(
      String kind, String referenceVersion, Map<String, T> byId, CatalogueEntryWriter<T> writer) {
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
          json.writeStringField("referenceVersion", referenceVersion);
          json.writeArrayFieldStart("items");
          for (T entry : entries) {
            json.writeStartObject();
            writer.write(json, entry);
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeBooleanField("truncated", truncated);
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
    return document(json -> writer.write(json, entry));
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

  private static TaggedDocument document(Members members) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = StrictJson.FACTORY.createGenerator(out, JsonEncoding.UTF8)) {
      json.writeStartObject();
      members.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return TaggedDocument.of(out.toByteArray());
  }

  @FunctionalInterface
  private interface Members {
    void write(JsonGenerator json) throws IOException;
  }
}
