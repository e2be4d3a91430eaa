package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.RulesTest;
import org.gaugeline.advice.Scene;
import org.gaugeline.assessment.Severity;
import org.gaugeline.wording.Codes;
import org.gaugeline.wording.TemplateWords;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every finding, with each severity that it can have, from a body as it is sent to the answer as it
 * is written.
 */
class FindingsAnsweredTest {
  private static final Assessments FRONT =
      new Assessments(
          new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR),
          TemplateWords.load(),
          Bench.DATA,
          Bench.CATALOGUE);

  static Stream<RulesTest.Rise> rises() {
    return RulesTest.rises();
  }

  @ParameterizedTest
  @MethodSource("rises")
  void isAnsweredToABodyWithEachSeverity(RulesTest.Rise rise) {
    Set<Severity> raised = EnumSet.noneOf(Severity.class);
    Set<Severity> answered = EnumSet.noneOf(Severity.class);
    for (Scene scene : rise.scenes()) {
      Severity severity = RulesTest.severity(scene, rise.code());
      if (severity != null && !answered.contains(severity)) {
        raised.add(severity);
        JsonNode finding = answered(scene, rise.code(), severity);
        if (finding != null) {
          answered.add(severity);
          assertThat(finding.path("text").asText()).isNotEmpty().doesNotContain("{", "[", "NaN");
          assertThat(finding.path("remedy").asText()).isNotEmpty();
          assertThat(finding.path("pointer").asText()).startsWith("/");
          assertThat(finding.path("basis")).isNotEmpty();
        }
      }
    }
    assertThat(answered).as("%s over the wire", rise).isEqualTo(raised);
  }

  /** The finding as it is written; null where the wire does not let such a body in. */
  private static @Nullable JsonNode answered(Scene scene, String code, Severity severity) {
    byte[] body = scene.body().toString().getBytes(StandardCharsets.UTF_8);
    Assessments.Asked asked;
    try {
      asked = FRONT.ask(body);
    } catch (ProblemException outOfRange) {
      return null;
    }
    JsonNode answer =
        ContractSchemas.parse(new String(FRONT.answer(asked, true), StandardCharsets.UTF_8));
    assertThat(ContractSchemas.faults("Assessment", answer)).as(code).isEmpty();
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("code").asText().equals(code)
          && finding.path("severity").asText().equals(severity.id())) {
        return finding;
      }
    }
    throw new AssertionError(code + " is not " + severity.id() + " in " + answer);
  }

  @Test
  void coversEveryDocumentedCode() {
    Set<String> covered = new HashSet<>(RulesTest.NOT_YET.keySet());
    rises().forEach(rise -> covered.add(rise.code()));
    assertThat(covered).containsExactlyInAnyOrderElementsOf(Codes.findings());
  }
}
