package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The committed document as JSON schemas for an independent validator. OpenAPI 3.0.3 schemas are
 * JSON Schema draft 4 in all that the document uses. Answers are closed here: a member that the
 * document does not know is a fault of the service.
 */
final class ContractSchemas {
  static final Path FILE = Path.of("openapi", "gaugeline-v1.yaml");
  static final JsonNode DOCUMENT = read();

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4);

  private ContractSchemas() {}

  private static JsonNode read() {
    try {
      return new YAMLMapper().readTree(Files.readString(FILE));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Faults of a value against a named component. */
  static List<Error> faults(String component, JsonNode value) {
    return schema(component).validate(value);
  }

  static JsonNode parse(String json) {
    try {
      return JSON.readTree(json);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  static com.networknt.schema.Schema schema(String component) {
    ObjectNode root = DOCUMENT.deepCopy();
    root.path("components").path("schemas").forEach(ContractSchemas::close);
    root.put("$ref", "#/components/schemas/" + component);
    return REGISTRY.getSchema(root);
  }

  private static void close(JsonNode schema) {
    if (schema.has("properties") && !schema.has("additionalProperties")) {
      ((ObjectNode) schema).put("additionalProperties", false);
    }
  }
}
