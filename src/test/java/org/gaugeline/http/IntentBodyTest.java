package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.gaugeline.advice.Bench;
import org.gaugeline.http.wire.WireIntent;
import org.junit.jupiter.api.Test;

/** The binder, the finder of faults and an independent validator agree on what is refused. */
class IntentBodyTest {
  private static final long SEED = 7;
  private static final int ROUNDS = 20_000;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final ContractDocument document = ContractDocument.load();
  private final RequestBody<WireIntent> bodies =
      RequestBody.ofIntents(document, new CatalogueFaults(Bench.DATA, Bench.CATALOGUE));
  private final Schema schema = document.schema("Intent");
  private final com.networknt.schema.Schema oracle = ContractSchemas.schema("Intent");

  static List<JsonNode> demoIntents() {
    return demoBodies("intents");
  }

  static List<JsonNode> demoBodies(String folder) {
    try (Stream<Path> files = Files.list(Path.of("demo-data", folder))) {
      List<JsonNode> intents = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        intents.add(ContractSchemas.parse(Files.readString(file)));
      }
      return intents;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void bindsEveryDemoIntent() {
    assertThat(demoIntents())
        .hasSizeGreaterThanOrEqualTo(12)
        .allSatisfy(intent -> assertThat(bodies.bind(bytes(intent))).isNotNull());
  }

  @Test
  void refusesExactlyWhatTheSchemaRefuses() {
    List<JsonNode> intents = demoIntents();
    SplittableRandom random = new SplittableRandom(SEED);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      JsonNode mutant = intents.get(random.nextInt(intents.size())).deepCopy();
      mutate(mutant, random);
      boolean sound = oracle.validate(mutant).isEmpty();
      refused += sound ? 0 : 1;
      String context = "seed " + SEED + ", round " + round + ": " + mutant;
      assertThat(bodies.bind(bytes(mutant)) != null).as("binder, " + context).isEqualTo(sound);
      assertThat(FaultFinder.find(mutant.deepCopy(), schema).isEmpty())
          .as("finder, " + context)
          .isEqualTo(sound);
    }
    assertThat(refused).isBetween(ROUNDS / 10, ROUNDS * 9 / 10);
  }

  private static byte[] bytes(JsonNode node) {
    return node.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** One change somewhere in the tree. */
  private static void mutate(JsonNode root, SplittableRandom random) {
    List<ObjectNode> objects = new ArrayList<>();
    collect(root, objects);
    ObjectNode object = objects.get(random.nextInt(objects.size()));
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    if (names.isEmpty()) {
      object.set("stray", value(random));
      return;
    }
    String name = names.get(random.nextInt(names.size()));
    JsonNode old = object.get(name);
    switch (random.nextInt(6)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name + "x", old);
      case 2 -> object.set(name, value(random));
      default -> object.set(name, near(old, random));
    }
  }

  private static void collect(JsonNode node, List<ObjectNode> objects) {
    if (node instanceof ObjectNode object) {
      objects.add(object);
    }
    node.forEach(child -> collect(child, objects));
  }

  private static JsonNode value(SplittableRandom random) {
    return switch (random.nextInt(11)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.booleanNode(random.nextBoolean());
      case 2 -> NODES.numberNode(random.nextInt(-5, 500));
      case 3 -> NODES.numberNode(random.nextDouble(-5, 500));
      case 4 -> NODES.textNode("12");
      case 5 -> NODES.textNode("");
      case 6 -> NODES.arrayNode();
      case 7 -> NODES.arrayNode().add(12);
      case 8 -> NODES.objectNode();
      case 9 -> NODES.numberNode(Long.MAX_VALUE);
      default -> NODES.textNode("a\u0001b");
    };
  }

  /** Something of the same kind, inside or outside what is permitted. */
  private static JsonNode near(JsonNode old, SplittableRandom random) {
    if (old.isIntegralNumber()) {
      return NODES.numberNode(old.asLong() * random.nextLong(-1, 1000));
    }
    if (old.isNumber()) {
      return NODES.numberNode(old.asDouble() * Math.pow(10, random.nextInt(-6, 7)));
    }
    if (old.isTextual()) {
      String text = old.asText();
      return NODES.textNode(random.nextBoolean() ? text.repeat(random.nextInt(1, 60)) : text + "s");
    }
    if (old instanceof ArrayNode array && !array.isEmpty()) {
      ArrayNode more = array.deepCopy();
      more.add(random.nextBoolean() ? array.get(0) : value(random));
      return more;
    }
    return old.isBoolean() ? NODES.booleanNode(!old.asBoolean()) : value(random);
  }
}
