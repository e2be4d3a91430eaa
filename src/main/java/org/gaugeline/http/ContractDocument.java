package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.gaugeline.http.Schema.Kind;
import org.gaugeline.http.Schema.Range;
import org.gaugeline.http.Schema.Size;
import org.jspecify.annotations.Nullable;

/** The OpenAPI document that the service serves and obeys. */
final class ContractDocument {
  static final String RESOURCE = "META-INF/openapi.yaml";
  private static final String REFERENCE_PREFIX = "#/components/schemas/";

  private final JsonNode schemas;

  private ContractDocument(JsonNode root) {
    this.schemas = root.path("components").path("schemas");
  }

  static ContractDocument load() {
    try (InputStream in = ContractDocument.class.getClassLoader().getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no " + RESOURCE + " on the class path");
      }
      return new ContractDocument(new YAMLMapper().readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The named component, with all that it refers to. */
  Schema schema(String name) {
    JsonNode node = schemas.get(name);
    if (node == null) {
      throw new IllegalStateException("the document has no schema " + name);
    }
    return compile(node);
  }

  private Schema compile(JsonNode node) {
    if (node.has("$ref")) {
      return schema(node.get("$ref").asText().substring(REFERENCE_PREFIX.length()));
    }
    Map<String, Schema> properties = new LinkedHashMap<>();
    node.path("properties")
        .properties()
        .forEach(p -> properties.put(p.getKey(), compile(p.getValue())));
    JsonNode items = node.get("items");
    return new Schema(
        Kind.valueOf(node.path("type").asText().toUpperCase(Locale.ROOT)),
        properties,
        texts(node.path("required")),
        items == null ? null : compile(items),
        new Range(
            node.path("minimum").asDouble(Double.NEGATIVE_INFINITY),
            node.path("exclusiveMinimum").asBoolean(),
            node.path("maximum").asDouble(Double.POSITIVE_INFINITY)),
        new Size(
            node.path("minLength").asInt(0),
            node.path("maxLength").asInt(Integer.MAX_VALUE),
            node.path("maxItems").asInt(Integer.MAX_VALUE)),
        texts(node.path("enum")),
        pattern(node.get("pattern")));
  }

  private static @Nullable Pattern pattern(@Nullable JsonNode node) {
    return node == null ? null : Pattern.compile(node.asText());
  }

  private static Set<String> texts(JsonNode array) {
    Set<String> texts = new LinkedHashSet<>();
    array.forEach(item -> texts.add(item.asText()));
    return texts;
  }
}
