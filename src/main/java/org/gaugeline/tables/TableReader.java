package org.gaugeline.tables;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads comma-separated table files: header lines that begin with {@code #}, one line of column
 * names, then one row a line. A cell never spans lines, so that a complaint can name its line.
 */
final class TableReader {
  /** Header entries without which a table does not load. */
  static final List<String> HEADER_KEYS =
      List.of(
          "table",
          "source",
          "edition",
          "kind",
          "units",
          "valid",
          "licence",
          "transcribed",
          "checked-by");

  /** Read as a stream of cells: binding them to arrays would be most of a cold start. */
  private static final CsvFactory CSV = new CsvFactory();

  private TableReader() {}

  /** Rows of a reference table, which must carry a full header and exactly these columns. */
  static List<Row> table(String file, String text, List<String> columns) {
    Set<String> header = new HashSet<>();
    int lineNumber = 0;
    for (String line : text.split("\n", -1)) {
      lineNumber++;
      if (!line.startsWith("#")) {
        break;
      }
      headerEntry(file, lineNumber, line, header);
    }
    for (String key : HEADER_KEYS) {
      if (!header.contains(key)) {
        throw new TableException(file, 1, "header entry '# " + key + ":' is missing");
      }
    }
    return rows(file, text, Set.copyOf(columns), Set.copyOf(columns));
  }

  /** Rows of a file whose columns are some of {@code known} and at least {@code required}. */
  static List<Row> rows(String file, String text, Set<String> known, Set<String> required) {
    List<Row> rows = new ArrayList<>();
    String[] columns = null;
    int lineNumber = 0;
    for (String line : text.split("\n", -1)) {
      lineNumber++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] cells = cells(file, lineNumber, line);
      if (columns == null) {
        columns = checkedColumns(file, lineNumber, cells, known, required);
      } else {
        rows.add(row(file, lineNumber, columns, cells));
      }
    }
    if (columns == null) {
      throw new TableException(file, lineNumber, "has no line of column names");
    }
    return rows;
  }

  /** Values by id in table order; the same id twice is a fault. */
  static <V> Map<String, V> index(List<Row> rows, Function<Row, V> read, Function<V, String> idOf) {
    Map<String, V> map = new LinkedHashMap<>();
    for (Row row : rows) {
      V value = guarded(row, read);
      if (map.put(idOf.apply(value), value) != null) {
        throw row.fault("'" + idOf.apply(value) + "' stands twice");
      }
    }
    return map;
  }

  /** Reads one row, giving the row's place to a complaint of a record's constructor. */
  static <V> V guarded(Row row, Function<Row, V> read) {
    try {
      return read.apply(row);
    } catch (IllegalArgumentException e) {
      throw row.fault(String.valueOf(e.getMessage()), e);
    }
  }

  private static void headerEntry(String file, int lineNumber, String line, Set<String> header) {
    int colon = line.indexOf(':');
    String key = colon < 0 ? "" : line.substring(1, colon).strip();
    if (!HEADER_KEYS.contains(key)) {
      throw new TableException(file, lineNumber, "header entry '" + line + "' is not known");
    }
    if (line.substring(colon + 1).isBlank()) {
      throw new TableException(file, lineNumber, "header entry '" + key + "' is empty");
    }
    header.add(key);
  }

  private static String[] cells(String file, int lineNumber, String line) {
    String text = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
    List<String> cells = new ArrayList<>();
    try (CsvParser parser = CSV.createParser(text)) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.VALUE_STRING) {
          cells.add(parser.getText());
        }
      }
    } catch (JsonProcessingException e) {
      throw new TableException(
          file, lineNumber, "is not comma-separated text: " + e.getOriginalMessage(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return cells.toArray(String[]::new);
  }

  private static String[] checkedColumns(
      String file, int lineNumber, String[] cells, Set<String> known, Set<String> required) {
    Set<String> seen = new HashSet<>();
    for (String cell : cells) {
      if (!known.contains(cell)) {
        throw new TableException(file, lineNumber, "column '" + cell + "' is not known");
      }
      if (!seen.add(cell)) {
        throw new TableException(file, lineNumber, "column '" + cell + "' stands twice");
      }
    }
    for (String column : required.stream().sorted().toList()) {
      if (!seen.contains(column)) {
        throw new TableException(file, lineNumber, "column '" + column + "' is missing");
      }
    }
    return cells;
  }

  private static Row row(String file, int lineNumber, String[] columns, String[] cells) {
    if (cells.length != columns.length) {
      throw new TableException(
          file, lineNumber, "has " + cells.length + " cells for " + Arrays.toString(columns));
    }
    Map<String, String> byColumn = new HashMap<>();
    for (int i = 0; i < columns.length; i++) {
      byColumn.put(columns[i], cells[i]);
    }
    return new Row(file, lineNumber, byColumn);
  }
}
