package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gaugeline.reference.ItemSymbol;
import org.gaugeline.reference.ItemSymbol.Item;
import org.jspecify.annotations.Nullable;

/**
 * Puts what stands under the symbols of ISO 13399 where the contract has it. Symbols may stand on
 * the line itself, in its tool, or in a component of its assembly; the contract's own members win.
 */
final class SymbolLines {
  private static final String TOOL = "/tool";
  private static final String COMPONENT = "/assembly/components/0";
  private static final String GAUGE_LENGTH = "/assembly/measured/gaugeLengthMm";
  private static final Pattern INDEX = Pattern.compile("\\d");
  private static final Pattern HOLLOW_TAPER =
      Pattern.compile("HSK(?:([A-F])0*(\\d{2,3})|0*(\\d{2,3})([A-F]))");
  private static final Pattern POLYGON = Pattern.compile("(?:PSC)?C?0*([3-8])");
  private static final Pattern STEEP_TAPER = Pattern.compile("(BT|CAT|SK)0*(\\d{2})");

  private final List<ItemSymbol> symbols;

  SymbolLines(List<ItemSymbol> symbols) {
    this.symbols = List.copyOf(symbols);
  }

  /** Moves what stands under symbols; adds what cannot be moved to the faults. */
  void apply(ObjectNode line, List<Fault> faults) {
    flat(line, faults);
    if (line.get("tool") instanceof ObjectNode tool) {
      nested(line, tool, Item.TOOL, TOOL, TOOL, faults);
    }
    JsonNode components = line.path("assembly").path("components");
    for (int i = 0; i < components.size(); i++) {
      if (components.get(i) instanceof ObjectNode component) {
        nested(line, component, Item.HOLDER, COMPONENT, "/assembly/components/" + i, faults);
      }
    }
  }

  private void flat(ObjectNode line, List<Fault> faults) {
    JsonNode overall = line.get("LF");
    JsonNode code = line.get("CZCMS");
    boolean measured = !line.at(GAUGE_LENGTH).isMissingNode();
    JsonNode length = length(line, line.at(COMPONENT));
    Set<String> taken = new HashSet<>();
    for (ItemSymbol symbol : symbols) {
      JsonNode value = line.get(symbol.symbol());
      if (value != null && taken.add(symbol.symbol())) {
        move(line, symbol, symbol.path(), value, length, faults);
      }
    }
    line.remove(taken);
    if (overall != null && overall.isNumber() && length != null && length.isNumber()) {
      standOut(line, overall.doubleValue() - length.doubleValue(), measured);
    }
    if (code != null) {
      put(line, "/machine/interface", spindleEnd(code));
    }
  }

  /** Projection of a body, as a symbol or as the contract has it. */
  private static @Nullable JsonNode length(JsonNode owner, JsonNode component) {
    JsonNode said = component.get("projectionMm");
    return said == null ? owner.get("LPR") : said;
  }

  private static void move(
      ObjectNode line,
      ItemSymbol symbol,
      String path,
      JsonNode value,
      @Nullable JsonNode length,
      List<Fault> faults) {
    if (!symbol.path().endsWith("/profile")) {
      put(line, path, told(symbol, value));
    } else if (length != null) {
      put(line, path, cylinder(value, length));
    } else {
      faults.add(
          new Fault(
              path,
              "projection-needed",
              symbol.symbol() + " is the diameter of a body whose length is not said: add LPR.",
              Map.of("symbol", symbol.symbol())));
    }
  }

  /** Gauge length and projection together say how far the tool stands out. */
  private static void standOut(ObjectNode line, double stickOutMm, boolean measured) {
    if (!measured && line.at("/assembly/measured") instanceof ObjectNode symbolOnly) {
      symbolOnly.remove("gaugeLengthMm");
      if (symbolOnly.isEmpty() && line.get("assembly") instanceof ObjectNode assembly) {
        assembly.remove("measured");
      }
    }
    put(line, "/assembly/stickOutMm", line.numberNode(stickOutMm));
  }

  private void nested(
      ObjectNode line, ObjectNode owner, Item item, String general, String at, List<Fault> faults) {
    JsonNode length = length(owner, owner);
    List<String> taken = new ArrayList<>();
    for (ItemSymbol symbol : symbols) {
      JsonNode value = symbol.item() == item ? owner.get(symbol.symbol()) : null;
      if (value != null) {
        taken.add(symbol.symbol());
        String path = at + symbol.path().substring(general.length());
        move(line, symbol, path, value, length, faults);
      }
    }
    owner.remove(taken);
  }

  private static JsonNode told(ItemSymbol symbol, JsonNode value) {
    return switch (symbol.symbol()) {
      case "HAND" -> hand(value);
      case "CZCMS" -> spindleEnd(value);
      case "NOF", "ZEFP" -> whole(value);
      default -> value;
    };
  }

  private static JsonNode hand(JsonNode value) {
    return switch (value.asText()) {
      case "R" -> StrictJson.MAPPER.getNodeFactory().textNode("right");
      case "L" -> StrictJson.MAPPER.getNodeFactory().textNode("left");
      default -> value;
    };
  }

  private static JsonNode whole(JsonNode value) {
    double number = value.doubleValue();
    return value.isDouble() && number == Math.rint(number) && Math.abs(number) < 1e6
        ? StrictJson.MAPPER.getNodeFactory().numberNode((int) number)
        : value;
  }

  /** A body of which only the diameter is known: as thick all along its projection. */
  private static JsonNode cylinder(JsonNode diameter, JsonNode projection) {
    ArrayNode profile = StrictJson.MAPPER.createArrayNode();
    ObjectNode section = profile.addObject();
    section.set("lengthMm", projection);
    section.set("diameterMm", diameter);
    return profile;
  }

  /** The usual ways to write a spindle end, as the catalogue writes it; others stay as they are. */
  private static JsonNode spindleEnd(JsonNode code) {
    String text = code.asText().toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    String id = code.asText();
    Matcher hollow = HOLLOW_TAPER.matcher(text);
    Matcher polygon = POLYGON.matcher(text);
    Matcher steep = STEEP_TAPER.matcher(text);
    if (hollow.matches()) {
      id =
          hollow.group(1) == null
              ? "HSK-" + hollow.group(4) + hollow.group(3)
              : "HSK-" + hollow.group(1) + hollow.group(2);
    } else if (polygon.matches() && text.contains("C")) {
      id = "PSC-C" + polygon.group(1);
    } else if (steep.matches()) {
      id = steep.group(1) + steep.group(2);
    }
    return StrictJson.MAPPER.getNodeFactory().textNode(id);
  }

  /** Sets a member unless it is there already; makes the objects on the way. */
  static boolean put(ObjectNode root, String pointer, JsonNode value) {
    String[] steps = pointer.substring(1).split("/", -1);
    JsonNode at = root;
    for (int i = 0; i < steps.length - 1; i++) {
      at = step(at, steps[i], steps[i + 1].equals("0"));
    }
    if (!(at instanceof ObjectNode owner) || owner.has(steps[steps.length - 1])) {
      return false;
    }
    owner.set(steps[steps.length - 1], value);
    return true;
  }

  private static JsonNode step(JsonNode at, String name, boolean list) {
    if (at instanceof ArrayNode array) {
      boolean index = INDEX.matcher(name).matches();
      return index && array.isEmpty()
          ? array.addObject()
          : at.path(index ? Integer.parseInt(name) : -1);
    }
    if (!(at instanceof ObjectNode owner)) {
      return at;
    }
    JsonNode next = owner.get(name);
    if (next == null) {
      next = list ? owner.putArray(name) : owner.putObject(name);
    }
    return next;
  }
}
