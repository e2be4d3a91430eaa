package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Walks a body along its schema and lists every fault. Takes faulty members out of the tree as it
 * goes, so that what is left can be read and checked for contradictions.
 */
final class FaultFinder {
  private static final Fault UNLISTED = new Fault("", "unlisted", "Not listed.", Map.of());

  private final List<Fault> faults = new ArrayList<>();

  private FaultFinder() {}

  /** All faults of the tree, which afterwards holds only what keeps to the schema. */
  static List<Fault> find(JsonNode root, Schema schema) {
    FaultFinder finder = new FaultFinder();
    finder.sound(root, schema, "");
    return finder.faults;
  }

  /** Whether the value may stay in the tree; an object stays, without its faulty members. */
  private boolean sound(JsonNode node, Schema schema, String pointer) {
    if (node.isNull()) {
      add(() -> SchemaFaults.nullValue(pointer, schema));
      return false;
    }
    if (!ofKind(node, schema.kind())) {
      add(() -> SchemaFaults.wrongType(pointer, node, schema));
      return false;
    }
    return switch (schema.kind()) {
      case OBJECT -> object((ObjectNode) node, schema, pointer);
      case ARRAY -> array((ArrayNode) node, schema, pointer);
      case STRING -> text(node.textValue(), schema, pointer);
      case NUMBER, INTEGER -> number(node, schema, pointer);
      case BOOLEAN -> true;
    };
  }

  private static boolean ofKind(JsonNode node, Schema.Kind kind) {
    return switch (kind) {
      case OBJECT -> node.isObject();
      case ARRAY -> node.isArray();
      case STRING -> node.isTextual();
      case NUMBER -> node.isNumber();
      case INTEGER -> node.isIntegralNumber();
      case BOOLEAN -> node.isBoolean();
    };
  }

  private boolean object(ObjectNode node, Schema schema, String pointer) {
    for (String name : schema.required()) {
      if (!node.has(name)) {
        missing(schema.properties().get(name), pointer + '/' + name);
      }
    }
    Iterator<Map.Entry<String, JsonNode>> members = node.properties().iterator();
    while (members.hasNext()) {
      Map.Entry<String, JsonNode> member = members.next();
      String name = member.getKey();
      String at = pointer + '/' + escaped(name);
      Schema property = schema.properties().get(name);
      if (property == null) {
        add(() -> SchemaFaults.unknownField(at, name, schema.properties().keySet()));
        members.remove();
      } else if (!sound(member.getValue(), property, at)) {
        members.remove();
      }
    }
    return true;
  }

  /** A missing object is told by what it would have to hold. */
  private void missing(@Nullable Schema schema, String pointer) {
    if (schema == null || schema.required().isEmpty()) {
      add(() -> SchemaFaults.required(pointer));
      return;
    }
    for (String name : schema.required()) {
      missing(schema.properties().get(name), pointer + '/' + name);
    }
  }

  private boolean array(ArrayNode node, Schema schema, String pointer) {
    Schema items = schema.items();
    int maxItems = schema.size().maxItems();
    if (node.size() > maxItems) {
      add(() -> SchemaFaults.tooMany(pointer, node.size(), maxItems));
      return false;
    }
    boolean sound = items != null;
    for (int i = 0; items != null && i < node.size(); i++) {
      sound &= sound(node.get(i), items, pointer + '/' + i);
    }
    return sound;
  }

  private boolean text(String text, Schema schema, String pointer) {
    if (schema.admits(text)) {
      return true;
    }
    add(() -> SchemaFaults.text(pointer, text, schema));
    return false;
  }

  private boolean number(JsonNode node, Schema schema, String pointer) {
    double value = node.doubleValue();
    if (schema.range().holds(value)) {
      return true;
    }
    add(() -> SchemaFaults.number(pointer, value, schema.range()));
    return false;
  }

  /** Faults beyond those that a problem lists are only counted: finding words for each is slow. */
  private void add(Supplier<Fault> fault) {
    faults.add(faults.size() < Problem.MOST_LISTED ? fault.get() : UNLISTED);
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }
}
