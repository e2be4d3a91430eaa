package org.gaugeline.ops;

import io.quarkus.vertx.http.HttpServerStart;
import io.vertx.ext.web.Router;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.ObservesAsync;
import jakarta.inject.Singleton;
import org.jboss.logging.Logger;

/** Says where to look: in the log at the start, and at the root. */
@Singleton
public class FirstSteps {
  private static final Logger LOG = Logger.getLogger(FirstSteps.class);
  private static final String ROOT =
      """
      <!doctype html>
      <html lang="en">
      <head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Gaugeline</title></head>
      <body>
      <h1>Gaugeline</h1>
      <p>Computes what a cut asks of a tool holder and what each tool-holder assembly can give.</p>
      <ul>
      <li><a href="/q/swagger-ui">Try it</a></li>
      <li><a href="/q/openapi">The document (OpenAPI)</a></li>
      <li><a href="/v1/catalogue/materials">Materials</a>,
      <a href="/v1/catalogue/clamping-families">clamping families</a>,
      <a href="/v1/catalogue/sources">sources</a></li>
      <li><a href="/q/health">Health</a></li>
      </ul>
      </body>
      </html>
      """;

  void root(@Observes Router router) {
    router
        .get("/")
        .handler(
            context ->
                context.response().putHeader("Content-Type", "text/html;charset=UTF-8").end(ROOT));
  }

  void announce(@ObservesAsync HttpServerStart started) {
    int port = started.options().getPort();
    LOG.infof(
        "Try it: http://localhost:%d/q/swagger-ui or: curl -s http://localhost:%d/v1/recommendations"
            + " -H 'Content-Type: application/json'"
            + " -d @demo-data/intents/01-impeller-hub-side-milling.json",
        port, port);
  }
}
