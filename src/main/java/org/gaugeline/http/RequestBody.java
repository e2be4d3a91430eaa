package org.gaugeline.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.http.wire.WireStabilityChart;
import org.jspecify.annotations.Nullable;

/**
 * A request's bytes into a checked intent. The fast path binds and checks; only where that fails is
 * the body read once more as a tree, to say everything that is wrong with it.
 */
final class RequestBody<W> {
  private final Schema schema;
  private final RecordCheck check;
  private final Class<W> type;
  private final ObjectReader reader;
  private final Function<W, List<Fault>> rest;

  /**
   * Prepares the reading of one kind of body.
   *
   * @param type the record that it binds to
   * @param schema the component of the contract that it keeps to
   * @param rest what a body may still get wrong when it keeps to the schema
   */
  RequestBody(Class<W> type, Schema schema, Function<W, List<Fault>> rest) {
    this.type = type;
    this.schema = schema;
    this.check = RecordCheck.of(type, schema);
    this.reader = StrictJson.MAPPER.readerFor(type);
    this.rest = rest;
  }

  /** Bodies of recommendations. */
  static RequestBody<WireIntent> ofIntents(ContractDocument document, CatalogueFaults catalogue) {
    return new RequestBody<>(
        WireIntent.class,
        document.schema("Intent"),
        wire -> {
          List<Fault> faults = new ArrayList<>(Contradictions.find(wire));
          faults.addAll(catalogue.find(wire));
          return faults;
        });
  }

  /** Bodies of assessments. */
  static RequestBody<WireAssessment> ofAssessments(
      ContractDocument document, CatalogueFaults catalogue) {
    return new RequestBody<>(
        WireAssessment.class,
        document.schema("AssessmentIntent"),
        wire -> assessed(wire, catalogue));
  }

  /** Bodies of stability charts. */
  static RequestBody<WireStabilityChart> ofStabilityCharts(
      ContractDocument document, CatalogueFaults catalogue) {
    return new RequestBody<>(
        WireStabilityChart.class,
        document.schema("StabilityChartIntent"),
        wire -> {
          List<Fault> faults = assessed(wire.assessment(), catalogue);
          WireStabilityChart.Chart chart = wire.chart();
          Double from = chart == null ? null : chart.fromRpm();
          Double to = chart == null ? null : chart.toRpm();
          if (from != null && to != null && from >= to) {
            Contradictions.add(
                faults,
                "/chart/fromRpm",
                from,
                "/chart/toRpm",
                to,
                "is not below",
                "Maybe the two were swapped.");
          }
          return faults;
        });
  }

  private static List<Fault> assessed(WireAssessment wire, CatalogueFaults catalogue) {
    List<Fault> faults = new ArrayList<>(Contradictions.find(wire.intent()));
    faults.addAll(catalogue.find(wire.intent()));
    faults.addAll(AssemblyFaults.find(wire, catalogue));
    return faults;
  }

  /**
   * Reads a body.
   *
   * @throws ProblemException with all faults, including those that only the tables show
   */
  W read(byte[] body) {
    W wire = bind(body);
    if (wire != null && rest.apply(wire).isEmpty()) {
      return wire;
    }
    throw new ProblemException(explain(body));
  }

  /** The body where it keeps to the schema, null where it does not. */
  @Nullable W bind(byte[] body) {
    if (TextScan.firstFault(body) >= 0) {
      return null;
    }
    try (JsonParser parser = new NullRefusingParser(StrictJson.FACTORY.createParser(body))) {
      W wire = type.cast(reader.readValue(parser));
      return wire != null && check.passes(wire) ? wire : null;
    } catch (IOException e) {
      // Not lost: explain() reads the body again and says what is wrong.
      return null;
    }
  }

  private Problem explain(byte[] body) {
    JsonNode tree;
    try {
      tree = tree(body);
    } catch (ProblemException e) {
      return e.problem();
    }
    List<Fault> faults = new ArrayList<>(FaultFinder.find(tree, schema));
    addWhatTheRestContradicts(tree, faults);
    return Problem.invalid(faults);
  }

  /**
   * Reads what was put together from several places.
   *
   * @param tree loses its faulty members
   * @param faults what is known to be wrong already; the rest is added
   * @throws ProblemException with all faults
   */
  W read(ObjectNode tree, List<Fault> faults) {
    faults.addAll(FaultFinder.find(tree, schema));
    W sound = bound(tree);
    faults.addAll(rest.apply(sound));
    if (faults.isEmpty()) {
      return sound;
    }
    throw new ProblemException(Problem.invalid(faults));
  }

  private void addWhatTheRestContradicts(JsonNode tree, List<Fault> faults) {
    if (tree.isObject()) {
      faults.addAll(rest.apply(bound(tree)));
    }
  }

  private W bound(JsonNode tree) {
    try {
      return type.cast(reader.readValue(tree));
    } catch (IOException e) {
      throw new IllegalStateException("what passed the schema does not bind", e);
    }
  }

  /**
   * A body as it stands, whatever it holds.
   *
   * @throws ProblemException where it is not I-JSON
   */
  static JsonNode tree(byte[] body) {
    int textFault = TextScan.firstFault(body);
    if (textFault >= 0) {
      throw new ProblemException(textProblem(body, textFault));
    }
    JsonNode tree;
    try {
      tree = StrictJson.MAPPER.readTree(body);
    } catch (JacksonException e) {
      throw new ProblemException(syntaxProblem(e));
    } catch (IOException e) {
      throw new ProblemException(Problem.malformed("The body cannot be read.", Map.of()));
    }
    if (tree.isMissingNode()) {
      throw new ProblemException(
          Problem.malformed("The body is empty. Send an intent as JSON.", Map.of()));
    }
    return tree;
  }

  private static Problem textProblem(byte[] body, int at) {
    String what =
        body[at] == '\\'
            ? "an escape that is half of a surrogate pair"
            : body[at] == 0 ? "a zero byte; maybe it is UTF-16" : "a byte that is not UTF-8";
    return Problem.malformed("The body holds " + what + " at offset " + at + ".", Map.of());
  }

  private static Problem syntaxProblem(JacksonException e) {
    JsonLocation location = e.getLocation();
    Map<String, Object> parameters = new LinkedHashMap<>();
    String where = "";
    if (location != null) {
      parameters.put("line", location.getLineNr());
      parameters.put("column", location.getColumnNr());
      where = " (line " + location.getLineNr() + ", column " + location.getColumnNr() + ")";
    }
    return Problem.malformed(SyntaxWords.of(e) + where + ".", parameters);
  }

  /** What the parser says, without its own terms. */
  private static final class SyntaxWords {
    static String of(JacksonException e) {
      String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
      if (e instanceof StreamConstraintsException) {
        return said.contains("depth")
            ? "The body is nested deeper than " + StrictJson.DEEPEST
            : "The body holds a number, name or text that is too long to be meant";
      }
      int end = said.length();
      for (String own : List.of(": enable", " (start marker", " at [", "\n")) {
        int at = said.indexOf(own);
        end = at >= 0 && at < end ? at : end;
      }
      String kept = said.substring(0, end);
      return kept.isEmpty() || kept.contains("`") || kept.contains("com.fasterxml")
          ? "The body is not JSON"
          : "The body is not JSON: " + kept;
    }
  }
}
