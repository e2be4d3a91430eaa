package org.gaugeline.http;

import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/** Problems for requests that the server refuses before any resource sees them. */
@Singleton
public class BrokenRequests {
  private static final int BAD_REQUEST = 400;
  private static final int TOO_LARGE = 413;

  void register(@Observes Router router) {
    router.errorHandler(BAD_REQUEST, context -> answer(context, Problem.brokenAddress()));
    router.errorHandler(TOO_LARGE, context -> answer(context, Problem.ofStatus(TOO_LARGE)));
  }

  private static void answer(RoutingContext context, Problem problem) {
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader("Content-Type", Problem.MEDIA_TYPE)
        .end(Buffer.buffer(ProblemWriter.write(problem)));
  }
}
