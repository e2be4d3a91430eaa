package org.gaugeline.http;

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

  private final long maxBodyBytes;

  BodyLimits(@ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes) {
    this.maxBodyBytes = maxBodyBytes;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, EARLY);
  }

  private void check(RoutingContext context) {
    HttpServerRequest request = context.request();
    Problem problem = refusal(request);
    if (problem == null) {
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
    return isOver(request.getHeader("Content-Length"), maxBodyBytes)
        ? Problem.tooLarge(maxBodyBytes)
        : null;
  }

  /** The server has refused lengths that are not numbers before. */
  private static boolean isOver(@Nullable String length, long limitBytes) {
    return length != null
        && (length.length() > LONGEST_NUMBER || Long.parseLong(length) > limitBytes);
  }
}
