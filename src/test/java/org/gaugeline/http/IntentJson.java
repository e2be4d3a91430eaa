package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Intent;

/** Bodies as they are sent, read into intents by the reader of the service. */
public final class IntentJson {
  private IntentJson() {}

  public static Intent read(JsonNode body) {
    try {
      return IntentReader.read(StrictJson.MAPPER.treeToValue(body, WireIntent.class));
    } catch (IOException e) {
      throw new UncheckedIOException("not an intent: " + body, e);
    }
  }
}
