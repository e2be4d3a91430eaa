package org.gaugeline.mechanics.beam;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** Check values and their sources. */
final class Reference {
  private Reference() {}

  static JsonNode beam(String table) {
    String path = "/reference/beam-check-values.json";
    try (InputStream in = Objects.requireNonNull(Reference.class.getResourceAsStream(path), path)) {
      return new ObjectMapper().readTree(in).required(table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static BeamMaterial material(JsonNode row) {
    return new BeamMaterial(
        row.required("youngPa").asDouble(),
        row.required("poisson").asDouble(),
        row.required("densityKgPerM3").asDouble());
  }
}
