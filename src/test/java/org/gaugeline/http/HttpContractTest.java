package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the document says is what the service does. */
@QuarkusTest
class HttpContractTest {
  private static final String RECOMMENDATIONS = "/v1/recommendations";

  @Test
  void servesTheCommittedDocument() throws IOException {
    byte[] served = given().get("/q/openapi").asByteArray();
    assertThat(new String(served, StandardCharsets.UTF_8))
        .isEqualTo(Files.readString(ContractSchemas.FILE));
  }

  @Test
  void servesTheDocumentAsJsonToo() {
    assertThat(ContractSchemas.parse(given().get("/q/openapi?format=json").asString()))
        .isEqualTo(ContractSchemas.parse(ContractSchemas.DOCUMENT.toString()));
    assertThat(given().accept("application/json").get("/q/openapi").contentType())
        .startsWith("application/json");
    assertThat(given().get("/q/openapi.json").contentType()).startsWith("application/json");
    assertThat(given().get("/q/openapi.yaml").contentType()).startsWith("application/yaml");
  }

  @Test
  void answersEveryDemoIntentAsDocumented() {
    for (JsonNode intent : IntentBodyTest.demoIntents()) {
      assertAnswer(intent);
    }
  }

  @Test
  void answersTheExamplesOfTheDocument() {
    JsonNode examples =
        ContractSchemas.DOCUMENT.at(
            "/paths/~1v1~1recommendations/post/requestBody/content/application~1json/examples");
    assertThat(examples).isNotEmpty();
    for (Map.Entry<String, JsonNode> example : examples.properties()) {
      assertAnswer(example.getValue().path("value"));
    }
  }

  private static void assertAnswer(JsonNode intent) {
    String body = intent.toString();
    Response response = post(body);
    String answer = response.asString();
    assertThat(response.statusCode()).as("%s%n%s", body, answer).isEqualTo(200);
    assertThat(response.header("Cache-Control")).isEqualTo("no-store");
    JsonNode json = ContractSchemas.parse(answer);
    assertThat(ContractSchemas.faults("Recommendation", json)).as(answer).isEmpty();
    assertThat(json.path("inputDigest").asText()).isEqualTo(sha256(body));
    assertThat(json.path("label")).isEqualTo(intent.path("label"));
    assertThat(answer).doesNotContain("null", "NaN", "Infinity");
    assertThat(post(body).asByteArray()).as("same bytes").isEqualTo(response.asByteArray());
  }

  /** What was completed can be asked again as it stands, and nothing is left to complete. */
  @Test
  void resolvesToAnIntentThatIsItsOwnResolution() {
    for (JsonNode intent : IntentBodyTest.demoIntents()) {
      JsonNode resolved =
          ContractSchemas.parse(post(intent.toString()).asString()).path("resolved");
      Response again = post(resolved.toString());
      assertThat(again.statusCode()).as("%s%n%s", resolved, again.asString()).isEqualTo(200);
    }
  }

  /** A tool too short for any holder: no stick-out leaves enough of it in the bore. */
  @Test
  void writesNoLimitBelowZero() {
    Response response =
        post(
            """
            {"workpiece": {"material": "42CrMo4"}, "operation": {"kind": "side-milling"},
             "tool": {"kind": "end-mill", "diameterMm": 12, "overallLengthMm": 20},
             "machine": {"interface": "HSK-A63"}}
            """);
    JsonNode flagged = ContractSchemas.parse(response.asString()).path("flagged");
    assertThat(flagged).isNotEmpty();
    for (JsonNode assembly : flagged) {
      assertThat(assembly.path("limits"))
          .allSatisfy(
              limit ->
                  assertThat(limit.path("value").asDouble(0)).as(limit.toString()).isNotNegative());
      assertThat(assembly.at("/limits/stickOutMm/value").asDouble(-1)).isZero();
    }
  }

  @Test
  void listsEveryKindOfCatalogueEntry() {
    Map<String, String> kinds =
        Map.of(
            "materials", "Material",
            "spindle-interfaces", "SpindleInterface",
            "clamping-families", "ClampingFamily",
            "operations", "OperationEntry",
            "holders", "Holder",
            "findings", "FindingKind",
            "sources", "Source");
    kinds.forEach(HttpContractTest::assertCatalogue);
  }

  private static void assertCatalogue(String path, String schema) {
    String address = "/v1/catalogue/" + path;
    Response list = given().get(address);
    assertThat(list.statusCode()).as(address).isEqualTo(200);
    JsonNode json = ContractSchemas.parse(list.asString());
    assertThat(ContractSchemas.faults(schema + "List", json)).as(address).isEmpty();
    assertThat(json.path("items")).as(address).isNotEmpty();
    String tag = list.header("ETag");
    Response unchanged = given().header("If-None-Match", tag).get(address);
    assertThat(unchanged.statusCode()).isEqualTo(304);
    assertThat(unchanged.asByteArray()).isEmpty();
    assertThat(given().header("If-None-Match", "\"other\"").get(address).statusCode())
        .isEqualTo(200);
    JsonNode first = json.path("items").get(0);
    String id = first.path(first.has("id") ? "id" : "code").asText();
    Response one = given().get(address + "/{id}", id);
    assertThat(one.statusCode()).as(address).isEqualTo(200);
    assertThat(ContractSchemas.parse(one.asString())).isEqualTo(first);
    Response none = given().get(address + "/{id}", id + "x");
    assertThat(none.statusCode()).isEqualTo(404);
    JsonNode problem = Problems.problem(none);
    assertThat(problem.at("/errors/0/parameters/nearest").toString()).contains(id);
  }

  @Test
  void filtersHolders() {
    JsonNode json =
        ContractSchemas.parse(
            given()
                .queryParam("interface", "BT40")
                .queryParam("family", "er-collet")
                .queryParam("limit", 2)
                .get("/v1/catalogue/holders")
                .asString());
    assertThat(json.path("items")).hasSize(2);
    assertThat(json.path("truncated").asBoolean()).isTrue();
    assertThat(json.path("items").findValuesAsText("interface")).containsOnly("BT40");
    assertThat(json.path("items").findValuesAsText("family")).containsOnly("er-collet");
    for (String query : new String[] {"interface=BT41", "family=er-colet", "limit=0", "limit=x"}) {
      Response refused = given().get("/v1/catalogue/holders?" + query);
      assertThat(refused.statusCode()).as(query).isEqualTo(422);
      Problems.problem(refused);
    }
  }

  /** A family says what it is, how it is computed, with what numbers, and where they come from. */
  @Test
  void explainsEveryFamily() {
    JsonNode sources = catalogue("sources").path("items");
    Set<String> known = Set.copyOf(sources.findValuesAsText("id"));
    for (JsonNode family : catalogue("clamping-families").path("items")) {
      String id = family.path("id").asText();
      for (String member :
          List.of("summary", "goodAt", "badAt", "needs", "physics", "equation", "source")) {
        assertThat(family.path(member).asText()).as("%s of %s", member, id).isNotBlank();
      }
      family
          .path("sources")
          .forEach(key -> assertThat(known).as("source of %s", id).contains(key.asText()));
      for (JsonNode value : family.path("values")) {
        assertThat(known).as("%s of %s", value, id).contains(value.path("source").asText());
        assertThat(value.path("p05").asDouble()).isLessThanOrEqualTo(value.path("p95").asDouble());
      }
    }
  }

  /** Whatever the catalogue lists, a stock entry may name. */
  @ParameterizedTest
  @ValueSource(strings = {"holder", "extension", "sleeve", "adapter", "damped-body"})
  void listsEveryComponentByRoleAndTakesItAsStock(String role) {
    JsonNode list = catalogue("holders?limit=3&role=" + role);
    assertThat(ContractSchemas.faults("HolderList", list)).as(role).isEmpty();
    assertThat(list.path("items")).hasSize(3);
    for (JsonNode item : list.path("items")) {
      assertThat(item.path("role").asText()).isEqualTo(role);
      String id = item.path("id").asText();
      assertThat(catalogue("holders/" + id)).isEqualTo(item);
      Response answer =
          post(
              """
              {"workpiece": {"material": "42CrMo4"}, "operation": {"kind": "side-milling"},
               "tool": {"kind": "end-mill", "diameterMm": 12},
               "machine": {"interface": "HSK-A63"},
               "shop": {"stock": [{"ref": "%s", "count": 1}]}}
              """
                  .formatted(id));
      assertThat(answer.statusCode()).as(id).isEqualTo(200);
    }
    assertThat(given().get("/v1/catalogue/holders?role=" + role + "s").statusCode()).isEqualTo(422);
  }

  private static JsonNode catalogue(String path) {
    return ContractSchemas.parse(given().get("/v1/catalogue/" + path).asString());
  }

  @Test
  void showsHealthMetricsAndFirstSteps() {
    assertThat(given().get("/q/health/live").statusCode()).isEqualTo(200);
    assertThat(given().get("/q/health/ready").asString())
        .contains("evaluation", "referenceVersion");
    assertThat(given().get("/q/metrics").asString()).contains("http_server");
    assertThat(given().get("/q/swagger-ui/").statusCode()).isEqualTo(200);
    assertThat(given().get("/").asString()).contains("/q/swagger-ui", "/q/openapi");
  }

  private static Response post(String body) {
    return given()
        .contentType("application/json")
        .body(body.getBytes(StandardCharsets.UTF_8))
        .post(RECOMMENDATIONS);
  }

  private static String sha256(String body) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(body.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }
}
