package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.RandomIntents;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Geometry;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.tables.SymbolTables;
import org.gaugeline.wording.TemplateWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a recommendation shows can be asked about: the references of an assembly's components, with
 * its stick-out, pasted into an assessment, a line of a list or a chart, say the same of it.
 */
class PastedAssembliesTest {
  private static final double SIX_DIGITS = 1e-5;
  private static final List<String> SAID_OF_BOTH =
      List.of(
          "family",
          "standing",
          "components",
          "scores",
          "probability",
          "geometry",
          "predicted",
          "limits",
          "setUp",
          "reasons");
  private static final Set<String> OUT_OF_PLACE =
      Set.of("component-not-used", "property-not-applicable", "accessory-and-place-differ");
  private static final Assessor ASSESSOR = new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR);
  private static final TemplateWords WORDS = TemplateWords.load();
  private static final Recommendations ADVICE =
      new Recommendations(Bench.ADVISOR::recommend, WORDS, Bench.DATA, Bench.CATALOGUE);
  private static final Assessments ASSESSMENTS =
      new Assessments(ASSESSOR, WORDS, Bench.DATA, Bench.CATALOGUE);
  private static final StabilityCharts CHARTS =
      new StabilityCharts(ASSESSOR, WORDS, Bench.DATA, Bench.CATALOGUE);
  private static final ToolListChecks LISTS =
      new ToolListChecks(
          ASSESSOR, WORDS, Bench.DATA, Bench.CATALOGUE, SymbolTables.load(Bench.DATA));

  static Stream<Map.Entry<String, Intents>> asked() {
    Map<String, Intents> asked = new LinkedHashMap<>();
    Intents.demoNames().forEach(name -> asked.put(name, Intents.demo(name)));
    for (String spindle : List.of("BT40", "CAT40", "SK50", "HSK-A63", "HSK-E40", "PSC-C6")) {
      for (String coolant : List.of("flood", "through-tool")) {
        asked.put(
            spindle + " milling " + coolant, least("side-milling", "end-mill", spindle, coolant));
        asked.put(spindle + " drilling " + coolant, least("drilling", "drill", spindle, coolant));
        asked.put(spindle + " tapping " + coolant, least("tapping", "tap", spindle, coolant));
      }
    }
    asked.put("shell mill", Intents.of("face-milling", "shell-mill", 63, "C45", "BT50"));
    asked.put("disc", Intents.of("slotting", "disc-cutter", 80, "C45", "HSK-A63"));
    asked.put(
        "locked",
        least("side-milling", "end-mill", "HSK-A63", "flood")
            .with("/tool/shank/form", "form-locked"));
    asked.put(
        "pushed in",
        Intents.of("drilling", "drill", 20, "alloy-718", "BT40")
            .with("/operation/feedPerRevMm", 0.4));
    asked.put(
        "deep",
        least("side-milling", "end-mill", "BT40", "through-tool").with("/feature/depthMm", 120));
    RandomIntents.of(12).forEach(one -> asked.put("seed " + one.text("/label"), one));
    return asked.entrySet().stream();
  }

  private static Intents least(String operation, String tool, String spindle, String coolant) {
    return Intents.of(operation, tool, 12, "42CrMo4", spindle)
        .with("/operation/coolant", coolant)
        .with("/machine/throughCoolant", true);
  }

  @ParameterizedTest
  @MethodSource("asked")
  void saysTheSame(Map.Entry<String, Intents> asked) {
    // a line judges what is only predicted where it is asked to
    Intents full = asked.getValue().with("/preferences/stability", true);
    JsonNode body = ContractSchemas.parse(full.toString());
    JsonNode advice = answer(ADVICE.answer(bytes(body)));
    List<String> wrong = new ArrayList<>();
    int told = 0;
    for (String list : List.of("assemblies", "flagged")) {
      for (JsonNode assembly : advice.path(list)) {
        told++;
        String refs = assembly.path("components").findValuesAsText("ref") + " ";
        JsonNode byRefs = pasted(body, assembly, List.of("ref"));
        JsonNode named = pasted(body, assembly, List.of("role", "ref"));
        List<String> found = new ArrayList<>();
        JsonNode line = line(byRefs);
        differences("limits of the line", assembly.path("limits"), limits(line, assembly), found);
        if (!line(named).equals(line)) {
          found.add("role beside ref says otherwise");
        }
        for (JsonNode finding : line.path("findings")) {
          if (OUT_OF_PLACE.contains(finding.path("code").asText())) {
            found.add(finding.toString());
          }
        }
        judged(assembly, byRefs, found);
        if (told == 1) {
          chart(byRefs, found);
        }
        if (list.equals("assemblies") && !line.path("verdict").asText().equals("unfit")) {
          JsonNode whole = assessed(byRefs);
          SAID_OF_BOTH.forEach(
              member -> differences(member, assembly.path(member), whole.path(member), found));
        }
        found.forEach(one -> wrong.add(refs + one));
      }
    }
    assertThat(told).isPositive();
    assertThat(wrong).as(asked.getKey()).isEmpty();
  }

  /**
   * A line may name what the list's stock describes; knobs and names of one's own are not what a
   * count of holders is about.
   */
  @Test
  void aLineNamesWhatTheListDescribes() {
    ObjectNode body =
        (ObjectNode)
            ContractSchemas.parse(Intents.demo("14-own-cutting-constants-and-stock").toString());
    JsonNode advice = answer(ADVICE.answer(bytes(body)));
    ObjectNode list = JsonNodeFactory.instance.objectNode();
    ObjectNode shared = list.putObject("list");
    shared.set("shop", body.remove("shop"));
    ((ArrayNode) shared.at("/shop/stock"))
        .addObject()
        .put("ref", Bench.holder("BT40", "shrink-fit", 16, 75, false).ref())
        .put("count", 1);
    ArrayNode lines = list.putArray("lines");
    List<JsonNode> own = new ArrayList<>();
    for (JsonNode assembly : advice.path("assemblies")) {
      if (assembly.path("components").findValuesAsText("ref").toString().contains("own-")) {
        own.add(assembly);
        lines.add(pasted(body, assembly, List.of("ref")));
      }
    }
    assertThat(own).isNotEmpty();
    JsonNode report = report(list);
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      JsonNode line = report.path("lines").get(i);
      differences("limits", own.get(i).path("limits"), line.path("limits"), wrong);
    }
    assertThat(wrong).isEmpty();
    assertThat(report.path("listFindings")).isEmpty();
  }

  /** The same that an assessment tells, where they are asked for. */
  @Test
  void aLineTellsStableSpeedsWhereAsked() {
    JsonNode demo = IntentBodyTest.demoBodies("assessments").get(1);
    assertThat(line(demo).has("stableSpeeds")).isFalse();
    ObjectNode asking = demo.deepCopy();
    asking.putObject("preferences").put("stability", true);
    JsonNode speeds = line(asking).path("stableSpeeds");
    assertThat(speeds).isNotEmpty().isEqualTo(assessed(asking).path("stableSpeeds"));
  }

  /** Without the search for what would make it fit, which a losing assembly would start. */
  private static void judged(JsonNode told, JsonNode pasted, List<String> found) {
    Assessor.Judged judged = ASSESSMENTS.ask(bytes(pasted)).judged();
    Appraisal appraisal = judged.appraisal();
    Geometry geometry = appraisal.geometry();
    Predicted predicted = judged.context().predicted(appraisal);
    String standing = appraisal.standing().id();
    if (!told.path("standing").asText().equals(standing)) {
      found.add("standing " + told.path("standing") + " is " + standing);
    }
    Map.of(
            "/geometry/gaugeLengthMm", geometry.gaugeLengthM() * 1e3,
            "/geometry/insertionDepthMm", geometry.insertionDepthM() * 1e3,
            "/geometry/massKg", geometry.massKg(),
            "/predicted/runoutAtTipUm/p95", predicted.runoutP95M() * 1e6,
            "/predicted/gripTorqueNm/p05", predicted.gripTorqueP05Nm(),
            "/predicted/axialHoldN/p05", predicted.axialHoldP05N(),
            "/predicted/tipComplianceUmPerN", predicted.tipComplianceMPerN() * 1e6)
        .forEach(
            (at, value) ->
                differences(at, told.at(at), JsonNodeFactory.instance.numberNode(value), found));
  }

  /** A chart is drawn, or the cut is one that has none. */
  private static void chart(JsonNode pasted, List<String> found) {
    try {
      JsonNode chart = answer(CHARTS.answer(CHARTS.ask(bytes(pasted))));
      if (chart.path("boundary").isEmpty()) {
        found.add("no boundary in the chart");
      }
    } catch (ProblemException e) {
      for (Fault fault : e.problem().errors()) {
        if (!fault.code().equals("no-stability-lobes")) {
          found.add("chart refused: " + fault);
        }
      }
    }
  }

  /**
   * What a candidate that fails otherwise is good for is told without its stable depth, which is
   * only looked at where it can matter.
   */
  private static JsonNode limits(JsonNode line, JsonNode candidate) {
    JsonNode limits = line.path("limits");
    boolean sings = limits.at("/axialDepthMm/governedBy").asText().equals("stable-depth");
    if (sings && candidate.path("standing").asText().equals("unsuitable")) {
      ObjectNode without = limits.deepCopy();
      without.set("axialDepthMm", candidate.at("/limits/axialDepthMm"));
      return without;
    }
    return limits;
  }

  private static void differences(String at, JsonNode a, JsonNode b, List<String> wrong) {
    if (a.isNumber() && b.isNumber()) {
      double scale = Math.max(Math.abs(a.asDouble()), Math.abs(b.asDouble()));
      if (Math.abs(a.asDouble() - b.asDouble()) > SIX_DIGITS * scale) {
        wrong.add(at + " " + a + " is " + b);
      }
    } else if (a.isContainerNode() && b.isContainerNode() && a.size() == b.size()) {
      if (a.isArray()) {
        for (int i = 0; i < a.size(); i++) {
          differences(at + "/" + i, a.get(i), b.get(i), wrong);
        }
      } else {
        a.fieldNames()
            .forEachRemaining(n -> differences(at + "/" + n, a.path(n), b.path(n), wrong));
      }
    } else if (!a.equals(b)) {
      wrong.add(at + " " + a + " is " + b);
    }
  }

  private static JsonNode pasted(JsonNode body, JsonNode assembly, List<String> members) {
    ObjectNode pasted = body.deepCopy();
    ObjectNode given = pasted.putObject("assembly");
    given.set("stickOutMm", assembly.at("/geometry/stickOutMm"));
    ArrayNode components = given.putArray("components");
    for (JsonNode component : assembly.path("components")) {
      ObjectNode one = components.addObject();
      members.forEach(member -> one.set(member, component.path(member)));
    }
    return pasted;
  }

  private static JsonNode assessed(JsonNode body) {
    try {
      return answer(ASSESSMENTS.answer(ASSESSMENTS.ask(bytes(body)), false));
    } catch (ProblemException e) {
      throw new AssertionError(e.problem().toString() + body.path("assembly"), e);
    }
  }

  private static JsonNode line(JsonNode body) {
    ObjectNode list = JsonNodeFactory.instance.objectNode();
    list.putArray("lines").add(body);
    return report(list).at("/lines/0");
  }

  private static JsonNode report(JsonNode list) {
    ListHeads.Parameters none = new ListHeads.Parameters(null, null);
    try {
      return answer(LISTS.answer(LISTS.openJson(bytes(list), none), ToolListFormat.JSON, 20));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode answer(byte[] answer) {
    return ContractSchemas.parse(new String(answer, StandardCharsets.UTF_8));
  }

  private static byte[] bytes(JsonNode body) {
    return body.toString().getBytes(StandardCharsets.UTF_8);
  }
}
