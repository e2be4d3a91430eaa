package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes the members of one catalogue entry. */
@FunctionalInterface
interface CatalogueEntryWriter<T> {
  void write(JsonGenerator json, T entry) throws IOException;
}
