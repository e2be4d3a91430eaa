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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.IntentFaultException;
import org.jspecify.annotations.Nullable;

/**
 * A request's bytes into a checked intent. The fast path binds and checks; only where that fails is
 * the body read once more as a tree, to say everything that is wrong with it.
 */
final class IntentBody {
  private static final String NO_NAME = "-";

  private final Schema schema;
  private final RecordCheck check;
  private final ObjectReader reader = StrictJson.MAPPER.readerFor(WireIntent.class);

  private final IntentFaultWords faultWords;

  IntentBody(ContractDocument document, IntentFaultWords faultWords) {
    this.faultWords = faultWords;
    this.schema = document.schema("Intent");
    this.check = RecordCheck.of(WireIntent.class, schema);
  }

  /**
   * Reads a body.
   *
   * @throws ProblemException with all faults, including those that only the engine sees
   */
  WireIntent read(byte[] body, RecommendationEngine engine) {
    WireIntent wire = bind(body);
    if (wire != null && Contradictions.find(wire).isEmpty()) {
      return wire;
    }
    throw new ProblemException(explain(body, engine));
  }

  /** The body where it keeps to the schema, null where it does not. */
  @Nullable WireIntent bind(byte[] body) {
    if (TextScan.firstFault(body) >= 0) {
      return null;
    }
    try (JsonParser parser = new NullRefusingParser(StrictJson.FACTORY.createParser(body))) {
      WireIntent wire = reader.readValue(parser);
      return wire != null && check.passes(wire) ? wire : null;
    } catch (IOException e) {
      // Not lost: explain() reads the body again and says what is wrong.
      return null;
    }
  }

  private Problem explain(byte[] body, RecommendationEngine engine) {
    int textFault = TextScan.firstFault(body);
    if (textFault >= 0) {
      return textProblem(body, textFault);
    }
    JsonNode tree;
    try {
      tree = StrictJson.MAPPER.readTree(body);
    } catch (JacksonException e) {
      return syntaxProblem(e);
    } catch (IOException e) {
      return Problem.malformed("The body cannot be read.", Map.of());
    }
    if (tree.isMissingNode()) {
      return Problem.malformed("The body is empty. Send an intent as JSON.", Map.of());
    }
    List<Fault> faults = new ArrayList<>(FaultFinder.find(tree, schema));
    addWhatTheRestContradicts(tree, faults, engine);
    return Problem.invalid(faults);
  }

  private void addWhatTheRestContradicts(
      JsonNode tree, List<Fault> faults, RecommendationEngine engine) {
    if (!tree.isObject()) {
      return;
    }
    WireIntent rest;
    try {
      rest = reader.readValue(tree);
    } catch (IOException e) {
      throw new IllegalStateException("what passed the schema does not bind", e);
    }
    List<Fault> contradictions = Contradictions.find(rest);
    faults.addAll(contradictions);
    if (contradictions.isEmpty() && check.passes(rest)) {
      try {
        engine.recommend(IntentReader.read(rest));
      } catch (IntentFaultException e) {
        faults.addAll(faultWords.faults(e.faults()));
      }
    } else {
      faults.addAll(unknownNames(tree, engine));
    }
  }

  /**
   * What the tables lack among the names that were given, told even where the rest of the body
   * cannot be read: the names are put into the least intent.
   */
  private List<Fault> unknownNames(JsonNode tree, RecommendationEngine engine) {
    ObjectNode least = StrictJson.MAPPER.createObjectNode();
    ObjectNode workpiece = least.putObject("workpiece");
    if (tree.path("workpiece") instanceof ObjectNode given) {
      workpiece.setAll(given);
    }
    least.putObject("operation").put("kind", "side-milling");
    least.putObject("tool").put("kind", "end-mill").put("diameterMm", 10);
    ObjectNode machine = least.putObject("machine");
    JsonNode spindle = tree.path("machine").get("interface");
    if (spindle != null) {
      machine.set("interface", spindle);
    }
    Set<String> absent = new HashSet<>();
    if (!workpiece.has("material")) {
      workpiece.put("material", NO_NAME);
      absent.add("/workpiece/material");
    }
    if (!machine.has("interface")) {
      machine.put("interface", NO_NAME);
      absent.add("/machine/interface");
    }
    try {
      engine.recommend(IntentReader.read(reader.readValue(least)));
      return List.of();
    } catch (IntentFaultException e) {
      return faultWords.faults(
          e.faults().stream()
              .filter(fault -> fault.code().startsWith("unknown-"))
              .filter(fault -> !absent.contains(fault.pointer()))
              .toList());
    } catch (IOException e) {
      throw new IllegalStateException("what passed the schema does not bind", e);
    }
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
