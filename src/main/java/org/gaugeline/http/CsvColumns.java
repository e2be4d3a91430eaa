package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ItemSymbol;
import org.jspecify.annotations.Nullable;

/**
 * The names that a table's columns may have, found from the contract: the path of a member with its
 * unit, metric or inch ({@code tool.diameterMm}, {@code tool.diameterIn}), or a symbol of ISO 13399
 * with an optional unit in brackets ({@code DC [in]}).
 */
final class CsvColumns {
  static final String FAIL_ON = "failOn";
  static final String ARTIFACT_URI = "artifactUri";

  private static final String COMPONENT = "/assembly/components/0";
  private static final double MM_PER_IN = UnitSuffix.MM.fromSi(UnitSuffix.IN.toSi(1));
  private static final Pattern POINT_NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern COMMA_NUMBER =
      Pattern.compile("[+-]?(\\d+,\\d*|,\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s|]+");
  private static final Set<String> TEXT_SYMBOLS = Set.of("TCDMM", "HAND", "CZCMS");
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** Inch units by the metric unit that the contract has, with the ends of their names. */
  private static final List<Alias> ALIASES =
      List.of(
          new Alias("raUm", "raMicroinch", UnitSuffix.UM, UnitSuffix.MICROINCH),
          new Alias("Um", "Tenths", UnitSuffix.UM, UnitSuffix.TENTHS),
          new Alias("Mm", "In", UnitSuffix.MM, UnitSuffix.IN),
          new Alias("MPerMin", "FtPerMin", UnitSuffix.M_PER_MIN, UnitSuffix.FT_PER_MIN),
          new Alias("Nm", "LbfFt", UnitSuffix.NM, UnitSuffix.LBF_FT),
          new Alias("Kn", "Klbf", UnitSuffix.KN, UnitSuffix.KLBF),
          new Alias("N", "Lbf", UnitSuffix.N, UnitSuffix.LBF),
          new Alias("Kg", "Lb", UnitSuffix.KG, UnitSuffix.LB),
          new Alias("Kw", "Hp", UnitSuffix.KW, UnitSuffix.HP));

  private final Map<String, Column> byName = new HashMap<>();

  CsvColumns(List<ItemSymbol> symbols) {
    ContractDocument document = ContractDocument.load();
    Schema line = document.schema("ListLine");
    line.properties()
        .forEach(
            (name, schema) -> {
              if (!name.equals("assembly")) {
                member(name, "/" + name, schema);
              }
            });
    Schema assembly = document.schema("GivenAssembly");
    member("stickOutMm", "/assembly/stickOutMm", assembly.properties().get("stickOutMm"));
    member("measured", "/assembly/measured", assembly.properties().get("measured"));
    member("holder", COMPONENT, document.schema("GivenComponent"));
    byName.put(FAIL_ON, new Column(FAIL_ON, "/" + FAIL_ON, Schema.Kind.STRING, 1));
    byName.put(ARTIFACT_URI, new Column(ARTIFACT_URI, "/" + ARTIFACT_URI, Schema.Kind.STRING, 1));
    symbols.forEach(this::symbol);
  }

  private record Alias(String metric, String inch, UnitSuffix metricUnit, UnitSuffix inchUnit) {
    double factor() {
      return metricUnit.fromSi(inchUnit.toSi(1));
    }
  }

  /**
   * Where the cells of a column go.
   *
   * @param name as the header has it
   * @param pointer member of the line
   * @param factor what numbers are multiplied with
   */
  record Column(String name, String pointer, Schema.Kind kind, double factor) {}

  private void member(String name, String pointer, @Nullable Schema schema) {
    if (schema == null) {
      throw new IllegalStateException("the contract lacks " + pointer);
    }
    switch (schema.kind()) {
      case OBJECT ->
          schema
              .properties()
              .forEach((child, of) -> member(name + "." + child, pointer + "/" + child, of));
      case ARRAY -> {
        Schema items = schema.items();
        if (items != null && items.kind() == Schema.Kind.STRING) {
          byName.put(name, new Column(name, pointer, Schema.Kind.ARRAY, 1));
        }
      }
      case NUMBER -> number(name, pointer);
      case STRING, INTEGER, BOOLEAN ->
          byName.put(name, new Column(name, pointer, schema.kind(), 1));
    }
  }

  private void number(String name, String pointer) {
    byName.put(name, new Column(name, pointer, Schema.Kind.NUMBER, 1));
    String leaf = name.substring(name.lastIndexOf('.') + 1);
    UnitSuffix unit = UnitSuffix.findOf(leaf);
    for (Alias alias : ALIASES) {
      if (unit == alias.metricUnit() && leaf.endsWith(alias.metric())) {
        String stem = name.substring(0, name.length() - alias.metric().length());
        String inch = stem + alias.inch();
        byName.putIfAbsent(inch, new Column(inch, pointer, Schema.Kind.NUMBER, alias.factor()));
      }
    }
  }

  private void symbol(ItemSymbol symbol) {
    String code = symbol.symbol();
    Schema.Kind kind = TEXT_SYMBOLS.contains(code) ? Schema.Kind.STRING : Schema.Kind.NUMBER;
    String prefix =
        switch (symbol.item()) {
          case TOOL -> "tool";
          case HOLDER -> "holder";
          case ASSEMBLY -> "";
        };
    symbol(code, "/" + code, kind, symbol.path());
    if (!prefix.isEmpty()) {
      String owner = prefix.equals("tool") ? "/tool/" : COMPONENT + "/";
      symbol(prefix + "." + code, owner + code, kind, symbol.path());
    }
  }

  private void symbol(String name, String pointer, Schema.Kind kind, String path) {
    byName.putIfAbsent(name, new Column(name, pointer, kind, 1));
    if (path.endsWith("Mm") || path.endsWith("/profile")) {
      byName.putIfAbsent(name + " [mm]", new Column(name, pointer, kind, 1));
      byName.putIfAbsent(name + " [in]", new Column(name, pointer, kind, MM_PER_IN));
    }
  }

  /** The column of a name; null where there is none. */
  @Nullable Column find(String name) {
    return byName.get(name.replace('(', '[').replace(')', ']'));
  }

  Set<String> names() {
    return byName.keySet();
  }

  /**
   * A cell as a member's value; null where it cannot be read as what the column holds.
   *
   * @param decimalComma whether a comma may stand for the point
   */
  static @Nullable JsonNode value(Column column, String cell, boolean decimalComma) {
    return switch (column.kind()) {
      case NUMBER -> {
        Double number = number(cell, decimalComma);
        yield number == null ? null : NODES.numberNode(number * column.factor());
      }
      case INTEGER -> {
        Double number = number(cell, decimalComma);
        yield number == null || number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE
            ? null
            : NODES.numberNode(number.intValue());
      }
      case BOOLEAN -> flag(cell);
      case ARRAY -> words(cell);
      case STRING, OBJECT -> NODES.textNode(cell);
    };
  }

  private static @Nullable Double number(String cell, boolean decimalComma) {
    if (POINT_NUMBER.matcher(cell).matches()) {
      return Double.valueOf(cell);
    }
    return decimalComma && COMMA_NUMBER.matcher(cell).matches()
        ? Double.valueOf(cell.replace(',', '.'))
        : null;
  }

  private static @Nullable JsonNode flag(String cell) {
    return switch (cell.toLowerCase(Locale.ROOT)) {
      case "true", "yes" -> NODES.booleanNode(true);
      case "false", "no" -> NODES.booleanNode(false);
      default -> null;
    };
  }

  private static JsonNode words(String cell) {
    ArrayNode words = NODES.arrayNode();
    for (String word : BETWEEN_WORDS.split(cell)) {
      words.add(word);
    }
    return words;
  }
}
