package org.gaugeline.ops;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.nio.charset.StandardCharsets;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.gaugeline.http.Recommendations;
import org.gaugeline.reference.ReferenceData;

/** Ready once the tables are loaded and one evaluation has been done. */
@org.eclipse.microprofile.health.Readiness
@ApplicationScoped
public class Readiness implements HealthCheck {
  private static final byte[] LEAST_INTENT =
      """
      {"workpiece":{"material":"C45"},"operation":{"kind":"side-milling"},
       "tool":{"kind":"end-mill","diameterMm":12},"machine":{"interface":"BT40"}}
      """
          .getBytes(StandardCharsets.UTF_8);

  private final Recommendations recommendations;
  private final ReferenceData data;
  private volatile boolean warm;

  Readiness(Recommendations recommendations, ReferenceData data) {
    this.recommendations = recommendations;
    this.data = data;
  }

  void warmUp(@Observes StartupEvent started) {
    warm = recommendations.answer(LEAST_INTENT).length > 0;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("evaluation")
        .status(warm)
        .withData("referenceVersion", data.version())
        .build();
  }
}
