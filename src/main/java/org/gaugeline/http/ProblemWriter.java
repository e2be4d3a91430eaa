package org.gaugeline.http;

import java.util.Collection;
import java.util.Map;
import org.gaugeline.reference.Word;

/** Problems as {@code application/problem+json}. */
final class ProblemWriter {
  private static final int USUAL_BYTES = 1024;

  private ProblemWriter() {}

  static byte[] write(Problem problem) {
    JsonBytes json = new JsonBytes(USUAL_BYTES);
    write(problem, json);
    return json.toByteArray();
  }

  static void write(Problem problem, JsonBytes json) {
    json.object();
    json.text("type", Problem.TYPE_PREFIX + problem.kind());
    json.text("title", problem.title());
    json.whole("status", problem.status());
    json.text("detail", problem.detail());
    if (!problem.errors().isEmpty()) {
      json.array("errors");
      for (Fault fault : problem.errors()) {
        write(fault, json);
      }
      json.endArray();
    }
    json.endObject();
  }

  private static void write(Fault fault, JsonBytes json) {
    json.object();
    json.text("pointer", fault.pointer());
    json.text("code", fault.code());
    json.text("detail", fault.detail());
    if (!fault.parameters().isEmpty()) {
      json.object("parameters");
      for (Map.Entry<String, Object> parameter : fault.parameters().entrySet()) {
        json.name(parameter.getKey());
        writeValue(parameter.getValue(), json);
      }
      json.endObject();
    }
    json.endObject();
  }

  private static void writeValue(Object value, JsonBytes json) {
    if (value instanceof Double number) {
      json.exact(number);
    } else if (value instanceof Integer number) {
      json.whole(number);
    } else if (value instanceof Boolean flag) {
      json.flag(flag);
    } else if (value instanceof Collection<?> list) {
      json.array();
      for (Object item : list) {
        writeValue(item, json);
      }
      json.endArray();
    } else {
      json.text(value instanceof Word word ? word.id() : String.valueOf(value));
    }
  }
}
