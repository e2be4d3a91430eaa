package org.gaugeline.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.http.wire.WireIntent;
import org.jspecify.annotations.Nullable;

/**
 * A request's bytes into a checked intent. The fast path binds and checks; only where that fails is
 * the body read once more as a tree, to say everything that is wrong with it.
 */
final class IntentBody {
  private final Schema schema;
  private final RecordCheck check;
  private final ObjectReader reader = StrictJson.MAPPER.readerFor(WireIntent.class);

  private final CatalogueFaults catalogue;

  IntentBody(ContractDocument document, CatalogueFaults catalogue) {
    this.catalogue = catalogue;
    this.schema = document.schema("Intent");
    this.check = RecordCheck.of(WireIntent.class, schema);
  }

  /**
   * Reads a body.
   *
   * @throws ProblemException with all faults, including those that only the tables show
   */
  WireIntent read(byte[] body) {
    WireIntent wire = bind(body);
    if (wire != null && Contradictions.find(wire).isEmpty() && catalogue.find(wire).isEmpty()) {
      return wire;
    }
    throw new ProblemException(explain(body));
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

  private Problem explain(byte[] body) {
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
    addWhatTheRestContradicts(tree, faults);
    return Problem.invalid(faults);
  }

  private void addWhatTheRestContradicts(JsonNode tree, List<Fault> faults) {
    if (!tree.isObject()) {
      return;
    }
    WireIntent rest;
    try {
      rest = reader.readValue(tree);
    } catch (IOException e) {
      throw new IllegalStateException("what passed the schema does not bind", e);
    }
    faults.addAll(Contradictions.find(rest));
    faults.addAll(catalogue.find(rest));
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
