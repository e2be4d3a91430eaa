package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Map;
import org.gaugeline.reference.Word;

/** Problems as {@code application/problem+json}. */
final class ProblemWriter {
  private ProblemWriter() {}

  static byte[] write(Problem problem) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(512);
    try (JsonGenerator json = StrictJson.FACTORY.createGenerator(out, JsonEncoding.UTF8)) {
      write(problem, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void write(Problem problem, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("type", Problem.TYPE_PREFIX + problem.kind());
    json.writeStringField("title", problem.title());
    json.writeNumberField("status", problem.status());
    json.writeStringField("detail", problem.detail());
    if (!problem.errors().isEmpty()) {
      json.writeArrayFieldStart("errors");
      for (Fault fault : problem.errors()) {
        write(fault, json);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private static void write(Fault fault, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("pointer", fault.pointer());
    json.writeStringField("code", fault.code());
    json.writeStringField("detail", fault.detail());
    if (!fault.parameters().isEmpty()) {
      json.writeObjectFieldStart("parameters");
      for (Map.Entry<String, Object> parameter : fault.parameters().entrySet()) {
        json.writeFieldName(parameter.getKey());
        writeValue(parameter.getValue(), json);
      }
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static void writeValue(Object value, JsonGenerator json) throws IOException {
    if (value instanceof Double number) {
      JsonNumbers.write(json, number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else if (value instanceof Collection<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        writeValue(item, json);
      }
      json.writeEndArray();
    } else {
      json.writeString(value instanceof Word word ? word.id() : String.valueOf(value));
    }
  }
}
