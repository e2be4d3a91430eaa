package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Verdict;
import org.gaugeline.advice.WouldFitTest;
import org.gaugeline.wording.TemplateWords;
import org.junit.jupiter.api.Test;

/**
 * What would make it fit, put into the body as it was sent (JSON Patch add) and asked again as a
 * body: no error is left, and a thousandth less of it brings one back.
 */
class WouldFitAsSentTest {
  private static final int CASES = 450;
  private static final double PART = 1e-3;

  private static final Assessments FRONT =
      new Assessments(
          new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR),
          TemplateWords.load(),
          Bench.DATA,
          Bench.CATALOGUE);

  @Test
  void everyChangeHoldsAsSentAndNoneIsLargerThanNeeded() {
    List<String> wrong = new ArrayList<>();
    Map<String, Integer> changed = new TreeMap<>();
    int unfit = 0;
    for (long seed = 0; seed < CASES; seed++) {
      JsonNode body = WouldFitTest.scene(seed).body();
      JsonNode answer = answer(body);
      if (!answer.path("verdict").asText().equals(Verdict.UNFIT.id())) {
        assertThat(answer.path("wouldFitIf")).as("seed %d", seed).isEmpty();
        continue;
      }
      unfit++;
      for (JsonNode change : answer.path("wouldFitIf")) {
        String pointer = change.path("pointer").asText();
        changed.merge(pointer.replaceAll("/\\d+", ""), 1, Integer::sum);
        check("seed " + seed + " " + change, body, change, wrong);
      }
    }
    assertThat(wrong).as("of %s for %d unfit cases", changed, unfit).isEmpty();
    assertThat(unfit).isGreaterThanOrEqualTo(200);
    assertThat(changed.keySet())
        .contains(
            "/assembly/stickOutMm",
            "/operation/axialDepthMm",
            "/operation/radialDepthMm",
            "/operation/feedPerToothMm",
            "/operation/feedPerRevMm",
            "/operation/spindleSpeedRpm",
            "/operation/cuttingSpeedMPerMin",
            "/assembly/components/ref",
            "/assembly/components/family");
  }

  private static void check(String name, JsonNode body, JsonNode change, List<String> wrong) {
    String pointer = change.path("pointer").asText();
    JsonNode to = change.path("to");
    if (isUnfit(with(body, pointer, to))) {
      wrong.add(name + " leaves an error");
    }
    if (to.isNumber() && change.path("from").isNumber()) {
      double now = change.path("from").asDouble();
      double far = to.asDouble();
      double less = far > now ? Math.max(now, far * (1 - PART)) : Math.min(now, far * (1 + PART));
      if (!isUnfit(with(body, pointer, DoubleNode.valueOf(less)))) {
        wrong.add(name + " is larger than needed");
      }
    }
  }

  /** JSON Patch add: the owner is there, the member is set or put in. */
  private static JsonNode with(JsonNode body, String pointer, JsonNode value) {
    JsonNode changed = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    ((ObjectNode) changed.at(at.head())).set(at.last().getMatchingProperty(), value);
    return changed;
  }

  private static boolean isUnfit(JsonNode body) {
    return FRONT.ask(bytes(body)).judged().verdict() == Verdict.UNFIT;
  }

  private static JsonNode answer(JsonNode body) {
    byte[] answer = FRONT.answer(FRONT.ask(bytes(body)), false);
    return ContractSchemas.parse(new String(answer, StandardCharsets.UTF_8));
  }

  private static byte[] bytes(JsonNode body) {
    return body.toString().getBytes(StandardCharsets.UTF_8);
  }
}
