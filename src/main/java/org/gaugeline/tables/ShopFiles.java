package org.gaugeline.tables;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Reads the holder files of a shop's folder, in the order of their names: {@code *.csv} with column
 * names first, {@code *.json} with an array of objects. Other files are left alone.
 */
final class ShopFiles {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();

  private ShopFiles() {}

  static List<Row> rows(Path folder) {
    List<Path> files;
    try (Stream<Path> entries = Files.list(folder)) {
      files = entries.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new TableException(folder.toString(), 0, "is not a folder that can be read", e);
    }
    List<Row> rows = new ArrayList<>();
    for (Path file : files) {
      String name = String.valueOf(file.getFileName());
      if (name.endsWith(".csv")) {
        rows.addAll(
            TableReader.rows(name, text(file, name), ShopHolder.KNOWN, ShopHolder.REQUIRED));
      } else if (name.endsWith(".json")) {
        rows.addAll(json(name, text(file, name)));
      }
    }
    return rows;
  }

  private static String text(Path file, String name) {
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new TableException(name, 0, "is not UTF-8 text", e);
    } catch (IOException e) {
      throw new TableException(name, 0, "cannot be read: " + e.getMessage(), e);
    }
  }

  private static List<Row> json(String name, String text) {
    List<Row> rows = new ArrayList<>();
    try (JsonParser parser = JSON.createParser(text)) {
      if (parser.nextToken() != JsonToken.START_ARRAY) {
        throw new TableException(name, 1, "must be an array of holders");
      }
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        int line = parser.currentTokenLocation().getLineNr();
        rows.add(row(name, line, parser.readValueAsTree()));
      }
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      throw new TableException(name, line, "is not JSON: " + e.getOriginalMessage(), e);
    } catch (IOException e) {
      throw new TableException(name, 0, "cannot be read: " + e.getMessage(), e);
    }
    return rows;
  }

  private static Row row(String name, int line, JsonNode holder) {
    if (!holder.isObject()) {
      throw new TableException(name, line, "must be a holder object, was " + holder);
    }
    Map<String, String> cells = new HashMap<>();
    for (Map.Entry<String, JsonNode> field : holder.properties()) {
      if (!ShopHolder.KNOWN.contains(field.getKey())) {
        throw new TableException(name, line, "field '" + field.getKey() + "' is not known");
      }
      boolean sections = field.getKey().equals("profile") && field.getValue().isArray();
      if (!sections && !field.getValue().isValueNode()) {
        throw new TableException(name, line, "field '" + field.getKey() + "' must be one value");
      }
      cells.put(
          field.getKey(),
          sections ? profile(name, line, field.getValue()) : field.getValue().asText());
    }
    return new Row(name, line, cells);
  }

  private static String profile(String name, int line, JsonNode sections) {
    List<String> parts = new ArrayList<>();
    for (JsonNode section : sections) {
      if (!section.path("lengthMm").isNumber() || !section.path("diameterMm").isNumber()) {
        throw new TableException(name, line, "profile section needs lengthMm and diameterMm");
      }
      double start = section.path("diameterMm").asDouble();
      parts.add(
          section.path("lengthMm").asDouble()
              + ":"
              + start
              + ":"
              + section.path("endDiameterMm").asDouble(start)
              + ":"
              + section.path("boreMm").asDouble(0));
    }
    return String.join(";", parts);
  }
}
