package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.smallrye.openapi.api.SmallRyeOpenAPI;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The document keeps to what generated clients can live with. */
class ContractDocumentTest {
  private static final Set<String> REQUEST =
      Set.of(
          "Intent",
          "Workpiece",
          "Operation",
          "Feature",
          "Obstruction",
          "Tool",
          "Shank",
          "Machine",
          "TorqueCurvePoint",
          "ToolChanger",
          "Shop",
          "StockEntry",
          "ProfileSection",
          "JointStiffness",
          "Damper",
          "Preferences",
          "Weights",
          "AssessmentIntent",
          "GivenAssembly",
          "GivenComponent",
          "Measured",
          "MeasuredMode",
          "ToolList",
          "ListDefaults",
          "ListLine",
          "ListWorkpiece",
          "ListOperation",
          "ListTool",
          "ListMachine",
          "MeasuredSample",
          "StabilityChartIntent",
          "ChartRequest");

  private final JsonNode document = ContractSchemas.DOCUMENT;
  private final JsonNode schemas = document.path("components").path("schemas");

  /**
   * The form in which the document library writes it, so that changes show line by line. Written
   * anew with {@code -Dgaugeline.contract.write=true}.
   */
  @Test
  void standsInNormalForm() throws IOException {
    String normal =
        SmallRyeOpenAPI.builder()
            .enableModelReader(false)
            .enableStandardFilter(false)
            .enableAnnotationScan(false)
            .enableStandardStaticFiles(false)
            .withCustomStaticFile(ContractDocumentTest::contract)
            .build()
            .toYAML();
    if (Boolean.getBoolean("gaugeline.contract.write")) {
      Files.writeString(ContractSchemas.FILE, normal);
    }
    assertThat(Files.readString(ContractSchemas.FILE)).isEqualTo(normal);
  }

  private static InputStream contract() {
    try {
      return Files.newInputStream(ContractSchemas.FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void isOpenApi303() {
    assertThat(document.path("openapi").asText()).isEqualTo("3.0.3");
  }

  @Test
  void hasNoAlternativesAndNoNulls() {
    for (String word : List.of("oneOf", "anyOf", "allOf", "not", "discriminator", "nullable")) {
      assertThat(schemas.findValues(word)).as(word).isEmpty();
    }
  }

  @Test
  void nestsNoObjectInline() {
    for (Map.Entry<String, JsonNode> schema : schemas.properties()) {
      for (Map.Entry<String, JsonNode> property :
          schema.getValue().path("properties").properties()) {
        String at = schema.getKey() + "." + property.getKey();
        assertThat(property.getValue().path("type").asText()).as(at).isNotEqualTo("object");
        assertThat(property.getValue().path("items").path("type").asText())
            .as(at)
            .isNotEqualTo("object");
      }
    }
  }

  @Test
  void refersToComponentsForBodies() {
    List<JsonNode> bodies = new ArrayList<>();
    for (JsonNode content : document.findValues("content")) {
      assertThat(content).as("one media type a body: %s", content).hasSize(1);
      content.forEach(type -> bodies.add(type.path("schema")));
    }
    assertThat(bodies).isNotEmpty().allSatisfy(body -> assertThat(body.has("$ref")).isTrue());
  }

  @Test
  void namesEveryOperationOnceAndHasNoDefaultAnswer() {
    Set<String> ids = new HashSet<>();
    for (JsonNode path : document.path("paths")) {
      for (JsonNode operation : path) {
        String id = operation.path("operationId").asText();
        assertThat(id).isNotEmpty();
        assertThat(ids.add(id)).as(id).isTrue();
        assertThat(operation.path("responses").has("default")).as(id).isFalse();
      }
    }
    assertThat(ids).hasSize(18);
  }

  @Test
  void formatsEveryNumber() {
    for (Map.Entry<String, JsonNode> schema : schemas.properties()) {
      for (Map.Entry<String, JsonNode> property :
          schema.getValue().path("properties").properties()) {
        JsonNode value = property.getValue();
        if (Set.of("number", "integer").contains(value.path("type").asText())) {
          assertThat(value.has("format")).as(schema.getKey() + "." + property.getKey()).isTrue();
        }
      }
    }
  }

  @Test
  void boundsEveryMemberOfARequest() {
    for (String name : REQUEST) {
      JsonNode schema = schemas.path(name);
      // A line may hold symbols of ISO 13399 beside its members.
      assertThat(schema.path("additionalProperties").asText())
          .as(name)
          .isEqualTo(String.valueOf(name.equals("ListLine")));
      for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
        assertBounded(name + "." + property.getKey(), property.getValue());
      }
    }
  }

  private static void assertBounded(String at, JsonNode property) {
    switch (property.path("type").asText()) {
      case "number", "integer" ->
          assertThat(property.has("minimum") && property.has("maximum")).as(at).isTrue();
      case "string" ->
          assertThat(property.has("enum") || property.has("maxLength")).as(at).isTrue();
      case "array" -> assertThat(property.has("maxItems")).as(at).isTrue();
      default -> assertThat(property.has("$ref") || property.has("type")).as(at).isTrue();
    }
  }

  @Test
  void closesNoVocabularyOfAnAnswer() {
    for (Map.Entry<String, JsonNode> schema : schemas.properties()) {
      if (!REQUEST.contains(schema.getKey())) {
        assertThat(schema.getValue().findValues("enum")).as(schema.getKey()).isEmpty();
      }
    }
  }

  /** What one place says of a line is what an intent says, less what must be there. */
  @ParameterizedTest
  @ValueSource(strings = {"Workpiece", "Operation", "Tool", "Machine"})
  void describesTheMembersOfLinesAsThoseOfIntents(String name) {
    ObjectNode asked = schemas.path(name).deepCopy();
    ObjectNode listed = schemas.path("List" + name).deepCopy();
    asked.remove(List.of("required", "description"));
    listed.remove(List.of("required", "description"));
    ((ObjectNode) listed.path("properties")).remove("pockets");
    assertThat(listed).isEqualTo(asked);
  }

  @Test
  void showsTheDemoListAsExample() throws IOException {
    JsonNode example =
        document.at(
            "/paths/~1v1~1tool-list-checks/post/requestBody/content/application~1json/examples"
                + "/pump-housing/value");
    String file = Files.readString(Path.of("demo-data", "tool-lists", "pump-housing.json"));
    assertThat(ContractSchemas.parse(example.toString())).isEqualTo(ContractSchemas.parse(file));
  }

  @Test
  void tellsWhatEachSymbolStandsFor() throws IOException {
    String description = document.at("/paths/~1v1~1tool-list-checks/post/description").asText();
    Files.readAllLines(Path.of("src/main/resources/tables/iso-13399-symbols.csv")).stream()
        .filter(line -> !line.startsWith("#") && !line.startsWith("symbol,"))
        .map(line -> line.split(",", -1))
        .forEach(
            cells ->
                assertThat(description)
                    .contains("| `" + cells[0] + "` | " + cells[1] + " | `" + cells[2] + "` |"));
  }

  @Test
  void showsTheDemoIntentsAsExamples() {
    List<JsonNode> examples = new ArrayList<>();
    document
        .at("/paths/~1v1~1recommendations/post/requestBody/content/application~1json/examples")
        .forEach(example -> examples.add(ContractSchemas.parse(example.path("value").toString())));
    List<JsonNode> intents = new ArrayList<>();
    IntentBodyTest.demoIntents()
        .forEach(intent -> intents.add(ContractSchemas.parse(intent.toString())));
    assertThat(examples).containsExactlyElementsOf(intents);
  }

  @Test
  void showsTheDemoAssessmentsAsExamples() {
    List<JsonNode> examples = new ArrayList<>();
    document
        .at("/paths/~1v1~1assessments/post/requestBody/content/application~1json/examples")
        .forEach(example -> examples.add(ContractSchemas.parse(example.path("value").toString())));
    List<JsonNode> bodies = new ArrayList<>();
    IntentBodyTest.demoBodies("assessments")
        .forEach(body -> bodies.add(ContractSchemas.parse(body.toString())));
    assertThat(examples).containsExactlyElementsOf(bodies);
  }

  @Test
  void showsTheDemoStabilityChartsAsExamples() {
    List<JsonNode> examples = new ArrayList<>();
    document
        .at("/paths/~1v1~1stability-charts/post/requestBody/content/application~1json/examples")
        .forEach(example -> examples.add(ContractSchemas.parse(example.path("value").toString())));
    List<JsonNode> bodies = new ArrayList<>();
    IntentBodyTest.demoBodies("stability-charts")
        .forEach(body -> bodies.add(ContractSchemas.parse(body.toString())));
    assertThat(examples).containsExactlyElementsOf(bodies);
  }
}
