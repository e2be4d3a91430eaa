package org.gaugeline.formats;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeSet;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.RefusedLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** SARIF reports against the schema of the standard, and what a reader makes of them. */
class SarifReportTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static byte[] bytes(List<LineResult> lines, String uri) throws IOException {
    return SampleLines.written(
        out -> new SarifReport(out, SampleLines.WORDS, uri), lines, FailOn.ERROR);
  }

  private static JsonNode report(List<LineResult> lines) throws IOException {
    return JSON.readTree(bytes(lines, "lists/pump.csv"));
  }

  private static com.networknt.schema.Schema schema() throws IOException {
    try (InputStream file =
        Objects.requireNonNull(
            SarifReportTest.class.getResourceAsStream("/schemas/sarif-schema-2.1.0.json"))) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(JSON.readTree(file));
    }
  }

  @Test
  void isValidByTheSchemaOfTheStandard() throws IOException {
    assertThat(schema().validate(report(SampleLines.all()))).isEmpty();
    assertThat(schema().validate(report(List.of()))).isEmpty();
  }

  /** The schema as read here refuses: otherwise the check above would say nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"\"none-such\"", "7"})
  void theSchemaRefusesAWrongLevel(String level) throws IOException {
    String text = SampleLines.utf8(bytes(SampleLines.all(), ""));
    JsonNode wrong = JSON.readTree(text.replace("\"level\":\"note\"", "\"level\":" + level));
    assertThat(schema().validate(wrong)).isNotEmpty();
  }

  @Test
  void tellsEveryFindingFaultAndListFindingOnce() throws IOException {
    List<LineResult> lines = SampleLines.all();
    int expected = SampleLines.summary(lines, FailOn.ERROR).findings().size();
    for (LineResult line : lines) {
      expected +=
          line instanceof JudgedLine judged
              ? judged.findings().size()
              : Math.max(1, ((RefusedLine) line).faults().size());
    }
    JsonNode results = report(lines).at("/runs/0/results");
    assertThat(results).hasSize(expected);
    TreeSet<String> levels = new TreeSet<>();
    results.forEach(result -> levels.add(result.get("level").asText()));
    assertThat(levels).containsExactly("error", "note", "warning");
  }

  @Test
  void rulesAreThoseThatOccur() throws IOException {
    JsonNode run = report(SampleLines.all()).at("/runs/0");
    JsonNode rules = run.at("/tool/driver/rules");
    TreeSet<String> used = new TreeSet<>();
    for (JsonNode result : run.get("results")) {
      String id = result.get("ruleId").asText();
      assertThat(rules.get(result.get("ruleIndex").asInt()).get("id").asText()).isEqualTo(id);
      used.add(id);
    }
    assertThat(rules).extracting(rule -> rule.get("id").asText()).containsExactlyElementsOf(used);
    assertThat(used).contains("line-refused", "duplicate-id", "unknown-column");
    for (JsonNode rule : rules) {
      assertThat(rule.at("/fullDescription/text").asText()).isNotBlank();
      assertThat(rule.at("/help/text").asText()).contains("Found by: ").contains("What to do: ");
    }
    assertThat(run.at("/tool/driver/version").asText()).isEqualTo(EngineVersion.CURRENT);
    assertThat(report(List.of()).at("/runs/0/tool/driver/rules")).hasSize(1);
  }

  @Test
  void everyResultPointsIntoTheFile() throws IOException {
    for (JsonNode result : report(SampleLines.all()).at("/runs/0/results")) {
      JsonNode at = result.at("/locations/0/physicalLocation");
      assertThat(at.at("/artifactLocation/uri").asText()).isEqualTo("lists/pump.csv");
      assertThat(at.at("/region/startLine").asInt()).isPositive();
    }
    JsonNode unknown = withRule(report(SampleLines.all()), "unknown-column");
    assertThat(unknown.at("/locations/0/physicalLocation/region/startLine").asInt()).isEqualTo(1);
    assertThat(unknown.at("/locations/0/logicalLocations").isMissingNode()).isTrue();
    JsonNode twice = withRule(report(SampleLines.all()), "duplicate-id");
    assertThat(twice.at("/locations/0/physicalLocation/region/startLine").asInt()).isEqualTo(5);
    assertThat(twice.at("/relatedLocations/0/physicalLocation/region/startLine").asInt())
        .isEqualTo(8);
  }

  @Test
  void refusedLinesNameThePointer() throws IOException {
    JsonNode refused = withRule(report(SampleLines.all()), "line-refused");
    assertThat(refused.get("level").asText()).isEqualTo("error");
    assertThat(refused.at("/message/text").asText()).isEqualTo("T05: -4 mm");
    assertThat(refused.at("/properties/pointer").asText()).isEqualTo("/tool/diameterMm");
  }

  private static JsonNode withRule(JsonNode report, String rule) {
    for (JsonNode result : report.at("/runs/0/results")) {
      if (result.get("ruleId").asText().equals(rule)) {
        return result;
      }
    }
    throw new AssertionError("no result of " + rule);
  }

  @Test
  void awkwardIdsArriveWholeAndMakeNoLinkOrPlaceholder() throws IOException {
    String text =
        report(List.of(SampleLines.found(SampleLines.AWKWARD, 1, Severity.NOTE)))
            .at("/runs/0/results/0/message/text")
            .asText();
    assertThat(text).contains("\uD83D\uDD27").contains("[a] (0){{1}}").contains("\"1\" <&>");
    JsonNode halved = report(List.of(SampleLines.found("half \uD83D", 1, Severity.NOTE)));
    assertThat(halved.at("/runs/0/results/0/locations/0/logicalLocations/0/name").asText())
        .isEqualTo("half \uFFFD");
  }

  /** Lines are shuffled and others put between them: a finding keeps its fingerprint. */
  @Test
  void fingerprintsStayWhenLinesMove() throws IOException {
    List<LineResult> lines = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      lines.add(SampleLines.unfit("U" + i, i));
      lines.add(SampleLines.found("F" + i, 10 + i, Severity.WARNING, Severity.NOTE));
      lines.add(SampleLines.refused("R" + i, 20 + i, SampleLines.fault("/tool", "no tool")));
    }
    Map<String, String> before = fingerprints(report(lines));
    assertThat(before.values()).doesNotHaveDuplicates();
    for (long seed = 1; seed <= 5; seed++) {
      List<LineResult> moved = new ArrayList<>();
      moved.add(SampleLines.found("new", 1, Severity.ERROR));
      for (LineResult line : lines) {
        moved.add(movedTo(line, line.place().line() + 100 * seed));
      }
      Collections.shuffle(moved, new Random(seed));
      assertThat(fingerprints(report(moved))).as("seed %d", seed).containsAllEntriesOf(before);
    }
  }

  private static LineResult movedTo(LineResult line, long at) {
    String id = line.place().id();
    if (line instanceof RefusedLine refused) {
      return SampleLines.refused(id, at, refused.faults().toArray(RefusedLine.Fault[]::new));
    }
    return id.startsWith("U")
        ? SampleLines.unfit(id, at)
        : SampleLines.found(id, at, Severity.WARNING, Severity.NOTE);
  }

  /** Fingerprints of findings of lines, by line and rule; a rule finds once in these lines. */
  private static Map<String, String> fingerprints(JsonNode report) {
    Map<String, String> all = new HashMap<>();
    for (JsonNode result : report.at("/runs/0/results")) {
      JsonNode line = result.at("/locations/0/logicalLocations/0/name");
      boolean ofLine = !result.get("ruleId").asText().equals("holder-asked-twice");
      if (!line.isMissingNode() && ofLine) {
        String key = line.asText() + " " + result.get("ruleId").asText() + result.get("properties");
        String print = result.at("/partialFingerprints").get(Fingerprints.NAME).asText();
        assertThat(all.put(key, print)).as("once: %s", key).isNull();
      }
    }
    return all;
  }

  @Test
  void equalFindingsOfALineAreToldApart() {
    Fingerprints prints = new Fingerprints();
    String first = prints.next("T1", "slip", "/a");
    assertThat(prints.next("T1", "slip", "/a")).isNotEqualTo(first);
    assertThat(prints.next("T1", "slip", "/b")).isNotEqualTo(first);
    assertThat(new Fingerprints().next("T1", "slip", "/a")).isEqualTo(first).hasSize(32);
  }

  @ParameterizedTest
  @CsvSource({
    "'', tool-list",
    "lists/pump.csv, lists/pump.csv",
    "tool lists/Pumpe März.csv, tool%20lists/Pumpe%20M%C3%A4rz.csv",
    "100%.csv, 100%25.csv",
    "a%20b.csv, a%20b.csv",
    "list#2?.csv, list%232%3F.csv",
    "C:\\lists\\a b.csv, file:///C:/lists/a%20b.csv",
    "/parts/a[1].csv, file:///parts/a%5B1%5D.csv",
    "\\\\host\\share\\a.csv, file://host/share/a.csv",
    "https://host/a b?v=1#x, https://host/a%20b?v=1#x",
    "1:2.csv, ./1:2.csv",
  })
  void namesOfFilesBecomeReferences(String name, String uri) {
    assertThat(ArtifactUri.of(name)).isEqualTo(uri);
    assertThat(URI.create(uri).toASCIIString()).isEqualTo(uri);
  }

  @Test
  void sameBytesTwice() throws IOException {
    assertThat(bytes(SampleLines.all(), "x")).isEqualTo(bytes(SampleLines.all(), "x"));
  }
}
