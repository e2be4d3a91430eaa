package org.gaugeline.advice;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.gaugeline.http.IntentJson;
import org.gaugeline.job.Intent;

/**
 * Intents under test, built and changed by the pointers that callers use; never changed in place.
 */
public final class Intents {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = Path.of("demo-data", "intents");

  private final ObjectNode body;

  private Intents(ObjectNode body) {
    this.body = body;
  }

  /** The least that can be said. */
  public static Intents of(
      String operation, String tool, double diameterMm, String material, String spindle) {
    return new Intents(JSON.createObjectNode())
        .with("/workpiece/material", material)
        .with("/operation/kind", operation)
        .with("/tool/kind", tool)
        .with("/tool/diameterMm", diameterMm)
        .with("/machine/interface", spindle);
  }

  /** A demonstration body, by its file name without the ending. */
  public static Intents demo(String name) {
    try {
      return new Intents((ObjectNode) JSON.readTree(DEMO.resolve(name + ".json").toFile()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Names of all demonstration bodies, in order. */
  public static List<String> demoNames() {
    try (Stream<Path> files = Files.list(DEMO)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same with one member set: number, word, flag or list. */
  public Intents with(String pointer, Object value) {
    ObjectNode changed = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    ObjectNode parent = at.head().matches() ? changed : changed.withObject(at.head());
    parent.set(at.last().getMatchingProperty(), JSON.valueToTree(value));
    return new Intents(changed);
  }

  public Intents without(String pointer) {
    ObjectNode changed = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = changed.at(at.head());
    if (parent instanceof ObjectNode holder) {
      holder.remove(at.last().getMatchingProperty());
    }
    return new Intents(changed);
  }

  /** Asked at a spindle speed, whatever speed was asked before. */
  public Intents atSpeedRpm(double spindleSpeedRpm) {
    return without("/operation/cuttingSpeedMPerMin")
        .with("/operation/spindleSpeedRpm", spindleSpeedRpm);
  }

  /** Nothing but one holder may be used. */
  public Intents onlyHolder(String ref) {
    return with("/shop/stock", List.of(Map.of("ref", ref, "count", 1)))
        .with("/shop/stockOnly", true);
  }

  /** The body, to be changed at will. */
  ObjectNode body() {
    return body.deepCopy();
  }

  public boolean has(String pointer) {
    return !body.at(pointer).isMissingNode();
  }

  public double number(String pointer) {
    return body.at(pointer).asDouble();
  }

  public String text(String pointer) {
    return body.at(pointer).asText();
  }

  public Intent intent() {
    return IntentJson.read(body);
  }

  @Override
  public String toString() {
    return body.toString();
  }
}
