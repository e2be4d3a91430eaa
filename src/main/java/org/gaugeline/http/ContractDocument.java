package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
  private static final String SCHEMAS = "\ncomponents:\n  schemas:\n";
  private static final String COMPONENT_INDENT = "\n    ";
  private static final String MEMBER_INDENT = "      ";

  private static final YAMLMapper YAML = new YAMLMapper();

  private final byte[] bytes;
  private final String text;

  private ContractDocument(byte[] bytes) {
    this.bytes = bytes;
    this.text = new String(bytes, StandardCharsets.UTF_8);
  }

  static ContractDocument load() {
    try (InputStream in = ContractDocument.class.getClassLoader().getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("no " + RESOURCE + " on the class path");
      }
      return new ContractDocument(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The document as it stands. */
  byte[] yaml() {
    return bytes;
  }

  /** The same document as JSON. */
  byte[] json() {
    try {
      return StrictJson.MAPPER.writeValueAsBytes(YAML.readTree(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The named component, with all that it refers to. */
  Schema schema(String name) {
    try {
      return compile(YAML.readTree(component(name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The lines of one component. Only those that bodies need are parsed, the others would make up
   * most of a cold start; the document's normal form has components, and nothing else that is named
   * like one, at this depth.
   */
  private String component(String name) {
    String heading = COMPONENT_INDENT + name + ":\n";
    int start = text.indexOf(heading, text.indexOf(SCHEMAS));
    if (start < 0) {
      throw new IllegalStateException("the document has no schema " + name);
    }
    int end = start + heading.length();
    while (text.startsWith(MEMBER_INDENT, end)) {
      end = text.indexOf('\n', end) + 1;
    }
    return text.substring(start + heading.length(), end);
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
