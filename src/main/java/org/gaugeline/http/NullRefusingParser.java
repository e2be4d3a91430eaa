package org.gaugeline.http;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Stops at a null: binding cannot tell it from an absent member, and it is not permitted. */
final class NullRefusingParser extends JsonParserDelegate {

  NullRefusingParser(JsonParser parser) {
    super(parser);
  }

  @Override
  public @Nullable JsonToken nextToken() throws IOException {
    JsonToken token = delegate.nextToken();
    if (token == JsonToken.VALUE_NULL) {
      throw new JsonParseException(this, "null");
    }
    return token;
  }

  @Override
  public @Nullable JsonToken nextValue() throws IOException {
    JsonToken token = nextToken();
    return token == JsonToken.FIELD_NAME ? nextToken() : token;
  }
}
