package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.Word;

/**
 * One row of a table. Cells are asked for by column name; a number is converted to SI by the suffix
 * of that name. Every complaint names file, line, column and cell.
 */
final class Row {
  private final String file;
  private final int line;
  private final Map<String, String> cells;

  Row(String file, int line, Map<String, String> cells) {
    this.file = file;
    this.line = line;
    this.cells = cells;
  }

  String file() {
    return file;
  }

  int line() {
    return line;
  }

  /** A cell that must not be blank. */
  String text(String column) {
    String cell = optionalText(column);
    if (cell.isEmpty()) {
      throw fault(column + " is blank");
    }
    return cell;
  }

  /** A cell that may be blank; empty also where the file has no such column. */
  String optionalText(String column) {
    return cells.getOrDefault(column, "").strip();
  }

  boolean has(String column) {
    return !optionalText(column).isEmpty();
  }

  /** Parts of a cell between vertical bars, in order; none for a blank cell. */
  List<String> list(String column) {
    List<String> parts = new ArrayList<>();
    for (String part : optionalText(column).split("\\|")) {
      if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    return Collections.unmodifiableList(parts);
  }

  /** A number as written, whatever its unit. */
  double number(String column) {
    return parse(column, text(column));
  }

  /** A number in SI. */
  double si(String column) {
    return UnitSuffix.toSi(column, number(column));
  }

  /** A number in SI that must be above zero. */
  double positiveSi(String column) {
    double value = si(column);
    if (!(value > 0)) {
      throw fault(column + " must be > 0, was '" + text(column) + "'");
    }
    return value;
  }

  /** A number in SI, ≥ 0, or NaN for a blank cell. */
  double optionalSi(String column) {
    if (!has(column)) {
      return Double.NaN;
    }
    double value = si(column);
    if (!(value >= 0)) {
      throw fault(column + " must be ≥ 0, was '" + text(column) + "'");
    }
    return value;
  }

  int integer(String column) {
    double value = number(column);
    if (value != Math.rint(value) || Math.abs(value) > 1e9) {
      throw fault(column + " must be a whole number, was '" + text(column) + "'");
    }
    return (int) value;
  }

  boolean flag(String column) {
    String cell = text(column);
    if (cell.equals("true") || cell.equals("false")) {
      return cell.equals("true");
    }
    throw fault(column + " must be true or false, was '" + cell + "'");
  }

  /**
   * The three columns of an uncertain quantity, in SI: {@code stemP05Unit, stemUnit, stemP95Unit}.
   */
  Spread spread(String stem, String unit) {
    double p05 = si(stem + "P05" + unit);
    double median = si(stem + unit);
    double p95 = si(stem + "P95" + unit);
    try {
      return new Spread(p05, median, p95);
    } catch (IllegalArgumentException e) {
      throw fault(stem + unit + ": " + e.getMessage(), e);
    }
  }

  /** A cell that is one word of a closed vocabulary. */
  <W extends Word> W word(String column, W[] vocabulary) {
    return word(column, text(column), vocabulary);
  }

  /** Words of a closed vocabulary between vertical bars, in the order written. */
  <W extends Word> Set<W> words(String column, W[] vocabulary) {
    Set<W> words = new LinkedHashSet<>();
    for (String part : list(column)) {
      words.add(word(column, part, vocabulary));
    }
    if (words.isEmpty()) {
      throw fault(column + " is blank");
    }
    return Collections.unmodifiableSet(words);
  }

  /** The entry that a cell names in another table. */
  <V> V refer(String column, Map<String, V> table) {
    String key = text(column);
    V value = table.get(key);
    if (value == null) {
      throw fault(column + " '" + key + "' is not known; known are " + table.keySet());
    }
    return value;
  }

  /** The key of a source that exists. */
  String source(Map<String, ?> sources) {
    return source("sourceKey", sources);
  }

  String source(String column, Map<String, ?> sources) {
    String key = text(column);
    if (!sources.containsKey(key)) {
      throw fault(column + " '" + key + "' is not in sources.csv");
    }
    return key;
  }

  TableException fault(String what) {
    return new TableException(file, line, what);
  }

  TableException fault(String what, Throwable cause) {
    return new TableException(file, line, what, cause);
  }

  private <W extends Word> W word(String column, String cell, W[] vocabulary) {
    List<String> known = new ArrayList<>();
    for (W word : vocabulary) {
      if (word.id().equals(cell)) {
        return word;
      }
      known.add(word.id());
    }
    throw fault(column + " '" + cell + "' is not one of " + known);
  }

  private double parse(String column, String cell) {
    double value;
    try {
      value = Double.parseDouble(cell);
    } catch (NumberFormatException e) {
      throw fault(column + " is not a number: '" + cell + "'", e);
    }
    if (!Double.isFinite(value) || Character.isLetter(cell.charAt(cell.length() - 1))) {
      throw fault(column + " is not a finite decimal number: '" + cell + "'");
    }
    return value;
  }
}
