package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cutters, chamfers and threads that cannot be. */
@QuarkusTest
class MillingFaultsTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "face-milling | 'kind':'shell-mill','diameterMm':63,'shank':{'form':'flat'} | contradiction |"
            + " /tool/shank/form",
        "face-milling | 'kind':'shell-mill','diameterMm':22,'shank':{'diameterMm':27} |"
            + " contradiction | /tool/shank/diameterMm",
        "face-milling | 'kind':'shell-mill','diameterMm':63,'cutterBodyLengthMm':40,'fluteLengthMm':50"
            + " | contradiction | /tool/fluteLengthMm",
        "face-milling | 'kind':'shell-mill','diameterMm':63,'cutterBodyLengthMm':40,"
            + "'overallLengthMm':50 | contradiction | /tool/overallLengthMm",
        "face-milling | 'kind':'shell-mill','diameterMm':63,'cutterBodyLengthMm':40,'massKg':60 |"
            + " cutter-too-heavy | /tool/massKg",
        "thread-milling | 'kind':'thread-mill','diameterMm':40,'pitchMm':2 | thread-mill-too-thick |"
            + " /tool/diameterMm",
        "thread-milling | 'kind':'thread-mill','diameterMm':4,'pitchMm':3.8 | pitch-too-coarse |"
            + " /tool/pitchMm"
      })
  void pointsAtTheFault(String operation, String tool, String code, String pointer) {
    String size = code.equals("thread-mill-too-thick") ? ",'feature':{'nominalSizeMm':42}" : "";
    Response response = post(body(operation, "", tool, size));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
    JsonNode fault = Problems.problem(response).path("errors").get(0);
    assertThat(fault.path("code").asText()).isEqualTo(code);
    assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault.path("detail").asText()).isNotBlank();
  }

  @Test
  void aChamferMustFollowItsCone() {
    String cone = "'kind':'chamfer-mill','diameterMm':10,'pointAngleDeg':90";
    String depths = ",'axialDepthMm':1,'radialDepthMm':%s";
    assertThat(post(body("chamfering", String.format(depths, "1"), cone, "")).statusCode())
        .isEqualTo(200);
    Response response = post(body("chamfering", String.format(depths, "1.5"), cone, ""));
    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(Problems.problem(response).path("errors").get(0).path("pointer").asText())
        .isEqualTo("/operation/radialDepthMm");
  }

  /** What was completed can be sent again as it is. */
  @ParameterizedTest
  @CsvSource({
    "face-milling, shell-mill, 63", "slotting, disc-cutter, 80", "thread-milling, thread-mill, 8",
    "chamfering, chamfer-mill, 10", "ramping, end-mill, 12", "plunge-milling, end-mill, 12"
  })
  void theResolvedIntentIsAnswered(String operation, String tool, int diameterMm) {
    Response first =
        post(body(operation, "", "'kind':'" + tool + "','diameterMm':" + diameterMm, ""));
    assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
    JsonNode resolved = ContractSchemas.parse(first.asString()).path("resolved");
    Response second = post(resolved.toString());
    assertThat(second.statusCode()).as(second.asString()).isEqualTo(200);
    assertThat(ContractSchemas.parse(second.asString()).path("resolved")).isEqualTo(resolved);
  }

  private static String body(String operation, String more, String tool, String rest) {
    return ("{'workpiece':{'material':'C45'},'operation':{'kind':'"
            + operation
            + "'"
            + more
            + "},'tool':{"
            + tool
            + "},'machine':{'interface':'BT50'}"
            + rest
            + "}")
        .replace('\'', '"');
  }

  private static Response post(String json) {
    return RestAssured.given().contentType(ContentType.JSON).body(json).post("/v1/recommendations");
  }
}
