package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** Stability charts over HTTP: as documented, drawn, and the physics that a caller can check. */
@QuarkusTest
class StabilityChartContractTest {
  private static final List<JsonNode> DEMOS = IntentBodyTest.demoBodies("stability-charts");

  @Test
  void answersEveryDemoAsDocumentedAndWithTheSameBytesAgain() {
    for (JsonNode body : DEMOS) {
      Response response = post(body);
      String answer = response.asString();
      assertThat(response.statusCode()).as(answer).isEqualTo(200);
      assertThat(ContractSchemas.faults("StabilityChart", ContractSchemas.parse(answer)))
          .as(answer)
          .isEmpty();
      assertThat(answer).doesNotContain("null", "NaN", "Infinity");
      assertThat(post(body).asByteArray()).isEqualTo(response.asByteArray());
    }
  }

  @Test
  void drawsEveryDemoWithTitleDescriptionAxesAskedPointAndBand() throws Exception {
    for (JsonNode body : DEMOS) {
      Response response =
          given()
              .contentType("application/json")
              .accept("image/svg+xml")
              .body(body.toString())
              .post("/v1/stability-charts");
      assertThat(response.statusCode()).isEqualTo(200);
      assertThat(response.contentType()).startsWith("image/svg+xml");
      byte[] bytes = response.asByteArray();
      Document svg =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(bytes));
      assertThat(svg.getDocumentElement().getAttribute("aria-labelledby")).isEqualTo("title desc");
      assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
          .contains(body.path("label").asText());
      String text = new String(bytes, StandardCharsets.UTF_8);
      boolean inch = "inch".equals(body.path("textUnits").asText());
      assertThat(text)
          .contains("id=\"asked\"", "id=\"band\"", "id=\"boundary\"", "Spindle speed, 1/min")
          .contains(inch ? "Axial depth of cut, in<" : "Axial depth of cut, mm<")
          .doesNotContain("NaN", "Infinity", "null");
    }
  }

  /** a ∝ 1/K_t and modes replace the prediction altogether: the holder no longer matters. */
  @Test
  void measuredModesReplaceThePredictionAndDepthGoesWithTheInverseOfTheForce() {
    ObjectNode tested = DEMOS.get(0).deepCopy();
    ObjectNode workpiece = (ObjectNode) tested.path("workpiece");
    JsonNode weak = json(withKt(tested, workpiece, 1000));
    JsonNode strong = json(withKt(tested, workpiece, 2000));
    double ratio =
        weak.path("guaranteedAxialDepthMm").asDouble()
            / strong.path("guaranteedAxialDepthMm").asDouble();
    assertThat(ratio).isEqualTo(2, within(1e-4));
    assertThat(weak.path("responseOrigin").asText()).isEqualTo("measured");
    assertThat(weak.path("modes")).hasSize(3);
    ObjectNode other = tested.deepCopy();
    ((ObjectNode) other.at("/assembly/components/0")).put("family", "milling-chuck");
    ((ObjectNode) other.at("/assembly/components/0")).remove("interferenceUm");
    assertThat(json(other).path("boundary")).isEqualTo(strong.path("boundary"));
  }

  private static ObjectNode withKt(ObjectNode body, ObjectNode workpiece, double kt) {
    workpiece.put("ktNPerMm2", kt);
    return body;
  }

  @Test
  void theBandHoldsTheLimitAndTheAskedSpeedsAreSolvedExactly() {
    ObjectNode body = DEMOS.get(1).deepCopy();
    JsonNode chart = json(body);
    JsonNode cut = chart.path("cut");
    assertThat(cut.path("p05AxialDepthMm").asDouble())
        .isLessThanOrEqualTo(cut.path("stableAxialDepthMm").asDouble() * 1.0001)
        .isLessThan(cut.path("p95AxialDepthMm").asDouble());
    assertThat(cut.path("narrowedBy").path(0).path("measurement").asText()).isEqualTo("tap-test");
    double speed = cut.path("spindleSpeedRpm").asDouble();
    ((ObjectNode) body.path("chart")).putArray("spindleSpeedsRpm").add(speed).add(2 * speed);
    JsonNode again = json(body);
    assertThat(again.path("at")).hasSize(2);
    assertThat(again.at("/at/0/axialDepthMm").asDouble())
        .isEqualTo(cut.path("stableAxialDepthMm").asDouble(), within(1e-4));
    for (JsonNode point : chart.path("boundary")) {
      assertThat(point.path("axialDepthMm").asDouble())
          .isGreaterThanOrEqualTo(chart.path("guaranteedAxialDepthMm").asDouble());
    }
    for (JsonNode best : chart.path("bestSpeeds")) {
      assertThat(best.path("spindleSpeedRpm").asDouble()).isLessThanOrEqualTo(18_000.001);
    }
  }

  /** The same modes, once as modes and once as their sampled response. */
  @Test
  void aSampledResponseGivesWhatItsModesGive() {
    ObjectNode asModes = DEMOS.get(0).deepCopy();
    ObjectNode asSamples = asModes.deepCopy();
    ObjectNode measured = (ObjectNode) asSamples.at("/assembly/measured");
    measured.removeAll();
    var response = measured.putArray("response");
    for (String direction : List.of("x", "y")) {
      for (double hz = 100; hz <= 6000; hz += 4) {
        double re = 0;
        double im = 0;
        for (JsonNode mode : asModes.at("/assembly/measured/modes")) {
          if (mode.path("direction").asText().equals(direction)) {
            double r = hz / mode.path("frequencyHz").asDouble();
            double a = 1 - r * r;
            double b = 2 * mode.path("dampingRatio").asDouble() * r;
            double scale = 1 / (mode.path("stiffnessNPerM").asDouble() * (a * a + b * b));
            re += a * scale;
            im -= b * scale;
          }
        }
        response
            .addObject()
            .put("direction", direction)
            .put("frequencyHz", hz)
            .put("realMPerN", re)
            .put("imaginaryMPerN", im);
      }
    }
    double byModes = json(asModes).path("guaranteedAxialDepthMm").asDouble();
    double bySamples = json(asSamples).path("guaranteedAxialDepthMm").asDouble();
    assertThat(bySamples / byModes).isEqualTo(1, within(0.01));
  }

  @Test
  void lowImmersionIsSolvedBySemiDiscretizationUnlessAskedOtherwise() {
    ObjectNode body = DEMOS.get(0).deepCopy();
    ((ObjectNode) body.path("operation")).put("radialDepthMm", 0.6);
    ((ObjectNode) body.path("chart")).put("fromRpm", 12000).put("toRpm", 18000);
    JsonNode fine = json(body);
    assertThat(fine.path("method").asText()).isEqualTo("semi-discretization");
    ((ObjectNode) body.path("chart")).put("method", "zeroth-order");
    JsonNode rough = json(body);
    assertThat(rough.path("method").asText()).isEqualTo("zeroth-order");
    assertThat(rough.path("methodError").has("nearFloors")).isFalse();
    assertThat(rough.path("cautions"))
        .anySatisfy(
            caution ->
                assertThat(caution.path("code").asText()).isEqualTo("period-doubling-not-seen"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "06-manifold-drilling",
        "07-bearing-seat-reaming",
        "18-bearing-seat-boring",
        "17-pump-cover-tapping",
        "21-impeller-hub-plunge-milling"
      })
  void refusesOperationsToWhichLobesDoNotApply(String demo) throws IOException {
    ObjectNode body = demoIntent(demo);
    body.putObject("assembly").putArray("components").addObject().put("family", "er-collet");
    JsonNode problem = Problems.problem(post(body));
    assertThat(problem.path("status").asInt()).isEqualTo(422);
    assertThat(problem.at("/errors/0/code").asText()).isEqualTo("no-stability-lobes");
    assertThat(problem.at("/errors/0/pointer").asText()).isEqualTo("/operation/kind");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/chart | {'fromRpm':9000,'toRpm':8000} | /chart/fromRpm | contradiction",
        "/chart | {'method':'lobes'} | /chart/method | unknown-value",
        "/chart | {'speeds':[1]} | /chart/speeds | unknown-field",
        "/assembly/measured | {'response':[{'direction':'x','frequencyHz':100,'realMPerN':1e-7,"
            + "'imaginaryMPerN':0}]} | /assembly/measured/response | contradiction",
        "/assembly/measured | {'response':[{'direction':'x','frequencyHz':100,'realMPerN':1e-7,"
            + "'imaginaryMPerN':0},{'direction':'x','frequencyHz':90,'realMPerN':1e-7,"
            + "'imaginaryMPerN':0}]} | /assembly/measured/response/1/frequencyHz | contradiction"
      })
  void pointsAtTheFault(String owner, String value, String pointer, String code) {
    ObjectNode body = DEMOS.get(0).deepCopy();
    int last = owner.lastIndexOf('/');
    ((ObjectNode) body.at(owner.substring(0, last)))
        .set(owner.substring(last + 1), ContractSchemas.parse(value.replace('\'', '"')));
    JsonNode problem = Problems.problem(post(body));
    assertThat(problem.path("status").asInt()).as("%s", problem).isEqualTo(422);
    assertThat(problem.path("errors"))
        .as("%s", problem)
        .anySatisfy(
            fault -> {
              assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
              assertThat(fault.path("code").asText()).isEqualTo(code);
            });
  }

  /**
   * A tap test is believed: too deep a cut is unfit, and the limit that is told holds when asked.
   */
  @Test
  void aTapTestedAssemblyIsJudgedAndItsLimitHolds() {
    ObjectNode body = DEMOS.get(0).deepCopy();
    body.remove("chart");
    JsonNode deep = assessed(body);
    assertThat(severity(deep, "stable-depth")).isEqualTo("error");
    JsonNode limit = deep.at("/limits/axialDepthMm");
    assertThat(limit.path("governedBy").asText()).isEqualTo("stable-depth");
    assertThat(deep.at("/stableSpeeds")).isNotEmpty();
    ((ObjectNode) body.path("operation")).set("axialDepthMm", limit.path("value"));
    assertThat(severity(assessed(body), "stable-depth")).isEmpty();
    ObjectNode between = body.deepCopy();
    ((ObjectNode) between.path("operation"))
        .put("axialDepthMm", 1.05 * limit.path("value").asDouble());
    assertThat(severity(assessed(between), "stable-depth")).isEqualTo("warning");
  }

  /** A prediction is judged, but never as an error, unless it is not wanted. */
  @Test
  void aPredictedDepthWarnsUnlessItIsNotWanted() {
    ObjectNode body = DEMOS.get(1).deepCopy();
    body.remove("chart");
    ((ObjectNode) body.path("operation")).put("axialDepthMm", 12);
    JsonNode silent = assessed(body);
    assertThat(severity(silent, "stable-depth")).isEqualTo("warning");
    assertThat(silent.at("/stableSpeeds")).isNotEmpty();
    ((ObjectNode) body.path("preferences")).put("stability", false);
    JsonNode none = assessed(body);
    assertThat(severity(none, "stable-depth")).isEmpty();
    assertThat(none.has("stableSpeeds")).isFalse();
  }

  @Test
  void aRecommendationTellsOfChatterAndGoodSpeedsUnlessTheyAreNotWanted() throws IOException {
    ObjectNode intent = demoIntent("01-impeller-hub-side-milling");
    JsonNode answer = recommended(intent);
    assertThat(answer.path("assemblies")).isNotEmpty();
    for (JsonNode assembly : answer.path("assemblies")) {
      assertThat(assembly.path("stableSpeeds")).as("%s", assembly).isNotEmpty();
      assertThat(assembly.path("cautions").findValuesAsText("code")).contains("may-chatter");
    }
    ((ObjectNode) intent.path("operation")).put("axialDepthMm", 0.05);
    for (JsonNode assembly : recommended(intent).path("assemblies")) {
      assertThat(assembly.path("cautions").findValuesAsText("code")).doesNotContain("may-chatter");
    }
    ((ObjectNode) intent.path("preferences")).put("stability", false);
    assertThat(recommended(intent).toString()).doesNotContain("may-chatter", "stableSpeeds");
  }

  /** What was told of a tuned mass is used and named as such; the rest is tuned. */
  @Test
  void aDampedStackTellsWhatItsMassIsWorth() {
    ObjectNode body = DEMOS.get(3).deepCopy();
    JsonNode tuned = json(body).path("damper");
    assertThat(tuned.path("frequencyOrigin").asText()).isEqualTo("tuned");
    assertThat(tuned.path("tunings").findValuesAsText("tuning"))
        .containsExactly(
            "as-used", "chatter-tuned", "classical", "detuned-low", "detuned-high", "without");
    double asUsed = guaranteed(tuned, 0);
    assertThat(asUsed).isGreaterThan(guaranteed(tuned, 5));
    assertThat(tuned.path("detuningLoss").asDouble())
        .isEqualTo(1 - Math.min(guaranteed(tuned, 3), guaranteed(tuned, 4)) / asUsed, within(1e-4));
    ((ObjectNode) body.at("/assembly/components/0")).putObject("damper").put("frequencyHz", 250);
    JsonNode answer = json(body);
    JsonNode told = answer.path("damper");
    assertThat(told.path("frequencyOrigin").asText()).isEqualTo("given");
    assertThat(told.path("dampingRatioOrigin").asText()).isEqualTo("tuned");
    assertThat(told.path("frequencyHz").asDouble()).isEqualTo(250);
    assertThat(told.at("/tunings/3/frequencyHz").asDouble()).isEqualTo(237.5);
    assertThat(guaranteed(told, 1))
        .as("against chatter as before, the mass as its room holds")
        .isEqualTo(guaranteed(tuned, 1), within(1e-3));
    assertThat(guaranteed(told, 0))
        .as("the chart's own floor")
        .isEqualTo(answer.path("guaranteedAxialDepthMm").asDouble(), within(1e-3));
  }

  private static double guaranteed(JsonNode damper, int tuning) {
    return damper.at("/tunings/" + tuning + "/guaranteedAxialDepthMm").asDouble();
  }

  /** A cut as deep as the steel bar bears at the stack's overhang ends just there. */
  @Test
  void aBarAskedForWhatItBearsEndsWhereTheStackEnds() {
    ObjectNode body = DEMOS.get(1).deepCopy();
    JsonNode steel = json(body).at("/overhangs/bars/0");
    ((ObjectNode) body.path("operation")).set("axialDepthMm", steel.path("guaranteedAxialDepthMm"));
    JsonNode overhangs = json(body).path("overhangs");
    JsonNode asked = overhangs.at("/bars/0");
    assertThat(asked.path("bar").asText()).isEqualTo("steel");
    assertThat(asked.path("margin").asDouble()).isEqualTo(1, within(1e-5));
    assertThat(asked.path("losesAtOverhangMm").asDouble())
        .isEqualTo(overhangs.path("overhangMm").asDouble(), within(0.01))
        .isGreaterThan(steel.path("losesAtOverhangMm").asDouble());
  }

  @Test
  void barsArePredictedAlsoWhereTheTipWasMeasuredAndTheMassIsNotToldThen() {
    JsonNode measured = json(DEMOS.get(0));
    assertThat(measured.has("damper")).isFalse();
    assertThat(measured.at("/overhangs/origin").asText()).isEqualTo("predicted");
    assertThat(measured.at("/overhangs/bars").findValuesAsText("bar"))
        .containsExactly("steel", "heavy-metal", "carbide", "damped-steel");
    assertThat(measured.at("/overhangs/bars/0/loses").asText()).isEqualTo("before-range");
    assertThat(measured.at("/overhangs/bars/0").has("losesAtOverhangMm")).isFalse();
  }

  private static JsonNode recommended(JsonNode intent) {
    Response response =
        given().contentType("application/json").body(intent.toString()).post("/v1/recommendations");
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    JsonNode answer = ContractSchemas.parse(response.asString());
    assertThat(ContractSchemas.faults("Recommendation", answer)).isEmpty();
    return answer;
  }

  private static JsonNode assessed(JsonNode body) {
    Response response =
        given().contentType("application/json").body(body.toString()).post("/v1/assessments");
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    JsonNode answer = ContractSchemas.parse(response.asString());
    assertThat(ContractSchemas.faults("Assessment", answer)).isEmpty();
    return answer;
  }

  private static String severity(JsonNode assessment, String code) {
    for (JsonNode finding : assessment.path("findings")) {
      if (finding.path("code").asText().equals(code)) {
        return finding.path("severity").asText();
      }
    }
    return "";
  }

  private static ObjectNode demoIntent(String name) throws IOException {
    return (ObjectNode)
        ContractSchemas.parse(Files.readString(Path.of("demo-data", "intents", name + ".json")));
  }

  private static JsonNode json(JsonNode body) {
    Response response = post(body);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    return ContractSchemas.parse(response.asString());
  }

  private static Response post(JsonNode body) {
    return given()
        .contentType("application/json")
        .body(body.toString())
        .post("/v1/stability-charts");
  }
}
