package org.gaugeline.ops;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.gaugeline.http.Recommendations;
import org.gaugeline.reference.ReferenceData;

/** Ready once the tables are loaded and one evaluation has been done. */
@org.eclipse.microprofile.health.Readiness
@ApplicationScoped
public class Readiness implements HealthCheck {
  private final Recommendations recommendations;
  private final ReferenceData data;
  private volatile boolean warm;

  Readiness(Recommendations recommendations, ReferenceData data) {
    this.recommendations = recommendations;
    this.data = data;
  }

  void warmUp(@Observes StartupEvent started) {
    warm = Groundwork.answersLeast(recommendations);
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("evaluation")
        .status(warm)
        .withData("referenceVersion", data.version())
        .build();
  }
}
