package org.gaugeline.http;

import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/**
 * Refuses bodies that are announced too long, or encoded, before anything of them is read, and
 * addresses that are too long.
 */
public class BodyLimits {
  private static final int EARLY = 1000;
  private static final long MOST_DISCARDED_BYTES = 32 * 1024 * 1024;
  private static final int LONGEST_NUMBER = 18;
  private static final int LONGEST_ADDRESS = 4096;

  private static final String TOOL_LISTS = "/v1/tool-list-checks";

  private final long maxBodyBytes;
  private final long maxListBytes;

  BodyLimits(
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes,
      @ConfigProperty(name = "gaugeline.tool-lists.max-body-bytes") long maxListBytes) {
    this.maxBodyBytes = maxBodyBytes;
    this.maxListBytes = maxListBytes;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, EARLY);
  }

  private void check(RoutingContext context) {
    HttpServerRequest request = context.request();
    Problem problem = refusal(request);
    if (problem == null) {
      if (request.path().startsWith("/v1/")) {
        // What was not announced is counted by the server, which stops reading there.
        context.put(
            VertxHttpRecorder.MAX_REQUEST_SIZE_KEY,
            request.path().equals(TOOL_LISTS) ? Long.MAX_VALUE : MOST_DISCARDED_BYTES);
      }
      context.next();
      return;
    }
    HttpServerResponse response =
        context
            .response()
            .setStatusCode(problem.status())
            .putHeader("Content-Type", Problem.MEDIA_TYPE);
    if (isOver(request.getHeader("Content-Length"), MOST_DISCARDED_BYTES)) {
      response.putHeader("Connection", "close");
    } else {
      // Clients that send everything before they read would otherwise meet a reset.
      request.resume();
    }
    response.end(Buffer.buffer(ProblemWriter.write(problem)));
  }

  private @Nullable Problem refusal(HttpServerRequest request) {
    if (request.uri().length() > LONGEST_ADDRESS) {
      return Problem.addressTooLong(LONGEST_ADDRESS);
    }
    if (!request.path().startsWith("/v1/")) {
      return null;
    }
    String encoding = request.getHeader("Content-Encoding");
    if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
      return Problem.encoded();
    }
    long limit = limitBytes(request);
    return isOver(request.getHeader("Content-Length"), limit) ? Problem.tooLarge(limit) : null;
  }

  /** Lists that are read line by line may be of any length. */
  private long limitBytes(HttpServerRequest request) {
    if (!request.path().equals(TOOL_LISTS)) {
      return maxBodyBytes;
    }
    String type = request.getHeader("Content-Type");
    return type != null && type.startsWith("application/json") ? maxListBytes : Long.MAX_VALUE;
  }

  /** The server has refused lengths that are not numbers before. */
  private static boolean isOver(@Nullable String length, long limitBytes) {
    return length != null
        && (length.length() > LONGEST_NUMBER || Long.parseLong(length) > limitBytes);
  }
}
