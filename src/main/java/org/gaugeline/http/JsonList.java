package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A list as one JSON body. */
final class JsonList implements LineSource {
  private static final Set<String> MEMBERS = Set.of(ListHeads.LIST, ListHeads.LINES);

  private final ListHead head;
  private final JsonNode lines;
  private final List<Long> starts;
  private int next;

  private JsonList(ListHead head, JsonNode lines, List<Long> starts) {
    this.head = head;
    this.lines = lines;
    this.starts = starts;
  }

  /**
   * Reads a body.
   *
   * @throws ProblemException where it is not a list; faults of single lines are told in place
   */
  static JsonList of(byte[] body, ListHeads heads, ListHeads.Parameters parameters) {
    JsonNode tree = RequestBody.tree(body);
    if (!tree.isObject()) {
      throw new ProblemException(
          Problem.invalid(
              List.of(
                  new Fault(
                      "", "wrong-type", "The body must be an object with lines.", Map.of()))));
    }
    List<Fault> faults = new ArrayList<>();
    tree.fieldNames()
        .forEachRemaining(
            name -> {
              if (!MEMBERS.contains(name)) {
                faults.add(SchemaFaults.unknownField("/" + name, name, MEMBERS));
              }
            });
    JsonNode lines = tree.path(ListHeads.LINES);
    if (!lines.isArray() || lines.isEmpty()) {
      faults.add(noLines("/" + ListHeads.LINES));
    }
    ListHead head = null;
    try {
      head = heads.read(tree.get(ListHeads.LIST), parameters);
    } catch (ProblemException e) {
      faults.addAll(e.problem().errors());
    }
    if (head == null || !faults.isEmpty()) {
      throw new ProblemException(Problem.invalid(faults));
    }
    return new JsonList(head, lines, starts(body));
  }

  static Fault noLines(String pointer) {
    return new Fault(
        pointer, "required", "The list has no lines: there must be at least one.", Map.of());
  }

  /** Where each line begins in the body: findings point there where a line does not say better. */
  private static List<Long> starts(byte[] body) {
    List<Long> starts = new ArrayList<>();
    try (JsonParser parser = StrictJson.FACTORY.createParser(body)) {
      parser.nextToken();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        boolean isLines = ListHeads.LINES.equals(parser.currentName());
        parser.nextToken();
        if (!isLines) {
          parser.skipChildren();
          continue;
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          JsonLocation location = parser.currentTokenLocation();
          starts.add((long) location.getLineNr());
          parser.skipChildren();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("what was read once cannot be read again", e);
    }
    return starts;
  }

  int count() {
    return lines.size();
  }

  @Override
  public ListHead head() {
    return head;
  }

  @Override
  public List<String> unknownColumns() {
    return List.of();
  }

  @Override
  public @Nullable RawLine next() {
    if (next == lines.size()) {
      return null;
    }
    JsonNode line = lines.get(next);
    long start = starts.get(next);
    next++;
    return new RawLine.Read(next, start, line, List.of());
  }

  @Override
  public boolean waiting() {
    return true;
  }
}
