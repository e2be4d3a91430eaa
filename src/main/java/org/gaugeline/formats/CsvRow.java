package org.gaugeline.formats;

import java.util.EnumMap;
import java.util.Map;

/** One row in the making; what is not put stays empty. */
final class CsvRow {
  private final Map<CsvColumn, String> cells = new EnumMap<>(CsvColumn.class);

  /** Puts text, defused. */
  void put(CsvColumn column, String text) {
    cells.put(column, Cell.text(text));
  }

  void put(CsvColumn column, long whole) {
    cells.put(column, Long.toString(whole));
  }

  String cell(CsvColumn column) {
    return cells.getOrDefault(column, "");
  }
}
