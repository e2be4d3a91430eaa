package org.gaugeline.http;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/** Refuses bodies that are announced too long, or encoded, before anything of them is read. */
public class BodyLimits {
  private static final int EARLY = 1000;

  private final long maxBodyBytes;

  BodyLimits(@ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes) {
    this.maxBodyBytes = maxBodyBytes;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, EARLY);
  }

  private void check(RoutingContext context) {
    HttpServerRequest request = context.request();
    Problem problem = request.path().startsWith("/v1/") ? refusal(request) : null;
    if (problem == null) {
      context.next();
      return;
    }
    // The rest of the body would be read as the next request.
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader("Content-Type", Problem.MEDIA_TYPE)
        .putHeader("Connection", "close")
        .end(Buffer.buffer(ProblemWriter.write(problem)))
        .onComplete(done -> request.connection().close());
  }

  private @Nullable Problem refusal(HttpServerRequest request) {
    String encoding = request.getHeader("Content-Encoding");
    if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
      return Problem.encoded();
    }
    String length = request.getHeader("Content-Length");
    return length != null && isOver(length) ? Problem.tooLarge(maxBodyBytes) : null;
  }

  /** The server has refused lengths that are not numbers before. */
  private boolean isOver(String length) {
    return length.length() > 18 || Long.parseLong(length) > maxBodyBytes;
  }
}
