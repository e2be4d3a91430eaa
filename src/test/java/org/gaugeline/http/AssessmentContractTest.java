package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Assessments over HTTP: as documented, the same bytes again, and every fault with its pointer. */
@QuarkusTest
class AssessmentContractTest {

  @Test
  void answersEveryDemoAssessmentAsDocumented() {
    for (JsonNode body : IntentBodyTest.demoBodies("assessments")) {
      for (String query : new String[] {"", "?explain=true"}) {
        Response response = post(body, query);
        String answer = response.asString();
        assertThat(response.statusCode()).as(answer).isEqualTo(200);
        JsonNode json = ContractSchemas.parse(answer);
        assertThat(ContractSchemas.faults("Assessment", json)).as(answer).isEmpty();
        assertThat(answer).doesNotContain("null", "NaN", "Infinity");
        assertThat(json.has("derivation")).isEqualTo(!query.isEmpty());
        assertThat(post(body, query).asByteArray()).isEqualTo(response.asByteArray());
      }
    }
  }

  /** Nobody may be sent to a speed that the assembly does not bear. */
  @Test
  void tellsNoStableSpeedAboveTheLimit() {
    int told = 0;
    for (JsonNode demo : IntentBodyTest.demoBodies("assessments")) {
      ObjectNode body = demo.deepCopy();
      ((ObjectNode) body.path("machine")).put("maxSpindleSpeedRpm", 40_000);
      JsonNode json = ContractSchemas.parse(post(body, "").asString());
      double limit = json.at("/limits/spindleSpeedRpm/value").asDouble(Double.POSITIVE_INFINITY);
      for (JsonNode speed : json.path("stableSpeeds")) {
        told++;
        if (limit > 0) {
          assertThat(speed.path("spindleSpeedRpm").asDouble())
              .as("%s", demo.path("label"))
              .isLessThanOrEqualTo(limit * 1.001);
        }
      }
    }
    assertThat(told).isPositive();
  }

  @Test
  void whatWouldMakeItFitDoesSoWhenItIsSentAgain() {
    JsonNode body = IntentBodyTest.demoBodies("assessments").get(0);
    JsonNode unfit = ContractSchemas.parse(post(body, "").asString());
    assertThat(unfit.path("verdict").asText()).isEqualTo("unfit");
    assertThat(unfit.path("wouldFitIf")).isNotEmpty();
    for (JsonNode change : unfit.path("wouldFitIf")) {
      ObjectNode changed = body.deepCopy();
      String pointer = change.path("pointer").asText();
      int last = pointer.lastIndexOf('/');
      ObjectNode owner = (ObjectNode) changed.at(pointer.substring(0, last));
      owner.set(pointer.substring(last + 1), change.path("to"));
      String answer = post(changed, "").asString();
      assertThat(ContractSchemas.parse(answer).path("verdict").asText())
          .as("%s %s", change, answer)
          .isNotEqualTo("unfit");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'components':[]} | /assembly/components | required",
        "{} | /assembly/components | required",
        "{'components':[{'ref':'g-none'}]} | /assembly/components/0/ref | unknown-holder",
        "{'components':[{'ref':'back-stop-screw-0'}]} | /assembly/components/0/ref | unknown-holder",
        "{'components':[{'ref':'own-shrink-fit-12.00-p80.00'}]}"
            + " | /assembly/components/0/ref | unknown-holder",
        "{'components':[{'ref':'knob-bt40-solid','role':'holder'}]}"
            + " | /assembly/components/0/role | contradiction",
        "{'components':[{'ref':'ER32','role':'coolant-tube'}]}"
            + " | /assembly/components/0/ref | contradiction",
        "{'components':[{'ref':'knob-bt40-solid'}]} | /assembly/components | holder-needed",
        "{'components':[{'boreMm':12}]} | /assembly/components/0/family | required",
        "{'components':[{'role':'collet'}]} | /assembly/components | holder-needed",
        "{'components':[{'family':'er-collet','interface':'HSK-A64'}]}"
            + " | /assembly/components/0/interface | unknown-interface",
        "{'components':[{'family':'er-colet'}]} | /assembly/components/0/family | unknown-value",
        "{'components':[{'family':'hydraulic','profile':[{'lengthMm':10,'diameterMm':20,"
            + "'boreMm':30}]}]} | /assembly/components/0/profile/0/boreMm | contradiction",
        "{'components':[{'ref':'ER32'}],'measured':{'modes':[{'direction':'z'}]}}"
            + " | /assembly/measured/modes/0/direction | unknown-value",
        "{'components':[{'ref':'g-hsk-a63-er-collet-er32-p100','role':'sleeve'}]}"
            + " | /assembly/components/0/role | contradiction",
        "{'components':[{'ref':'g-hsk-a63-er-collet-er32-p100','family':'hydraulic'}]}"
            + " | /assembly/components/0/family | contradiction",
        "{'components':[{'ref':'g-hsk-a63-er-collet-er32-p100','interface':'BT40'}]}"
            + " | /assembly/components/0/ref | contradiction",
        "{'components':[{'role':'arbor','family':'er-collet'}]}"
            + " | /assembly/components/0/role | contradiction",
        "{'components':[{'family':'hydraulic','projectionMm':80,'profile':[{'lengthMm':70,"
            + "'diameterMm':40}]}]} | /assembly/components/0/profile | contradiction",
        "{'components':[{'family':'hydraulic','boreMm':30,'profile':[{'lengthMm':70,"
            + "'diameterMm':30}]}]} | /assembly/components/0/boreMm | contradiction",
        "{'components':[{'role':'arbor','boreMm':27,'faceDiameterMm':22}]}"
            + " | /assembly/components/0/faceDiameterMm | contradiction",
        "{'components':[{'role':'damped-body','massKg':1,'damper':{'massKg':2}}]}"
            + " | /assembly/components/0/damper/massKg | contradiction",
        "{'components':[{'family':'shrink-fit','profile':[{'lengthMm':70,'diameterMm':9}]}]}"
            + " | /assembly/components/0/profile | nose-thinner-than-bore",
        "{'components':[{'family':'shrink-fit','damper':{'massKg':90}}]}"
            + " | /assembly/components/0/damper | no-room-for-mass",
        "{'components':[{'family':'hydraulic','material':'rubber'}]}"
            + " | /assembly/components/0/material | unknown-solid",
        "{'components':[{'family':'hydraulic'},{'role':'holder','family':'hydraulic'}]}"
            + " | /assembly/components/1 | second-holder",
        "{'components':[{'family':'hydraulic'},{'role':'adapter'}]}"
            + " | /assembly/components/1 | adapter-first",
        "{'components':[{'role':'sleeve'},{'family':'hydraulic'}]}"
            + " | /assembly/components/0 | holder-first",
        "{'components':[{'family':'hydraulic'}],'stickOutMm':-3}"
            + " | /assembly/stickOutMm | out-of-range"
      })
  void pointsAtTheFault(String assembly, String pointer, String code) {
    ObjectNode body = IntentBodyTest.demoBodies("assessments").get(0).deepCopy();
    body.set("assembly", ContractSchemas.parse(assembly.replace('\'', '"')));
    JsonNode problem = Problems.problem(post(body, ""));
    assertThat(problem.path("status").asInt()).isEqualTo(422);
    assertThat(problem.path("errors"))
        .anySatisfy(
            fault -> {
              assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
              assertThat(fault.path("code").asText()).isEqualTo(code);
            });
  }

  @ParameterizedTest
  @CsvSource({
    "knob-bt40-sold, knob-bt40-solid",
    "tube-hskA63, tube-hsk-a63",
    "back-stop-screw-16mm, back-stop-screw-16.00",
    "g-hsk-a63-er-collet-er32-p10, g-hsk-a63-er-collet-er32-p100",
    "ER-32, ER32"
  })
  void anUnknownReferenceIsToldWhatIsNear(String ref, String near) {
    ObjectNode body = IntentBodyTest.demoBodies("assessments").get(0).deepCopy();
    ((ObjectNode) body.at("/assembly/components/0")).removeAll().put("ref", ref);
    JsonNode fault = Problems.problem(post(body, "")).at("/errors/0");
    assertThat(fault.path("pointer").asText()).isEqualTo("/assembly/components/0/ref");
    assertThat(fault.at("/parameters/nearest")).anyMatch(one -> one.asText().equals(near));
    assertThat(fault.path("detail").asText()).contains(near);
  }

  private static Response post(JsonNode body, String query) {
    return given()
        .contentType("application/json")
        .body(body.toString())
        .post("/v1/assessments" + query);
  }
}
