package org.gaugeline.http;

import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;

/**
 * Serves the committed document byte for byte. The framework would build a model of it at every
 * start and write that down again, which is a third of a cold start.
 */
@Singleton
public class ContractRoute {
  private static final List<String> PATHS =
      List.of("/q/openapi", "/q/openapi.yaml", "/q/openapi.yml", "/q/openapi.json");
  private static final int BEFORE_THE_FRAMEWORK = -1;

  private final ContractDocument document = ContractDocument.load();

  void register(@Observes Router router) {
    for (String path : PATHS) {
      router.get(path).order(BEFORE_THE_FRAMEWORK).handler(this::answer);
      router.head(path).order(BEFORE_THE_FRAMEWORK).handler(this::answer);
    }
  }

  private void answer(RoutingContext context) {
    boolean json = asksForJson(context);
    context
        .response()
        .putHeader("Content-Type", json ? "application/json" : "application/yaml;charset=UTF-8")
        .end(Buffer.buffer(json ? document.json() : document.yaml()));
  }

  private static boolean asksForJson(RoutingContext context) {
    String path = context.request().path();
    String accept = context.request().getHeader("Accept");
    return path.endsWith(".json")
        || context.queryParam("format").stream().anyMatch("json"::equalsIgnoreCase)
        || (path.endsWith("openapi") && accept != null && accept.startsWith("application/json"));
  }
}
