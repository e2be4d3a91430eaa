package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;

/** Checks that hold for every refusal. */
final class Problems {
  private Problems() {}

  static JsonNode problem(Response response) {
    String text = response.asString();
    assertThat(response.contentType()).as(text).startsWith("application/problem+json");
    JsonNode json = ContractSchemas.parse(text);
    assertThat(ContractSchemas.faults("Problem", json)).as(text).isEmpty();
    assertThat(json.path("status").asInt()).isEqualTo(response.statusCode());
    assertThat(response.statusCode())
        .matches(status -> status < 500 || status == 503, "no defect of the service");
    assertThat(text)
        .doesNotContain("com.fasterxml", "org.gaugeline", "java.lang", "Exception", "StreamRead");
    return json;
  }
}
