package org.gaugeline.http;

import io.smallrye.common.annotation.NonBlocking;
import io.smallrye.mutiny.Uni;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.function.Function;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestResponse;

/** One intent and one given assembly in, a stability chart out. Always beside the event loop. */
@Path("/v1/stability-charts")
public class StabilityChartResource {
  private static final String SVG_TYPE = "image/svg+xml";
  private static final MediaType SVG = MediaType.valueOf(SVG_TYPE);

  private final StabilityCharts charts;
  private final LargeWork largeWork;
  private final long maxBodyBytes;

  public StabilityChartResource(
      StabilityCharts charts,
      LargeWork largeWork,
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes) {
    this.charts = charts;
    this.largeWork = largeWork;
    this.maxBodyBytes = maxBodyBytes;
  }

  @POST
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  public Uni<RestResponse<byte[]>> chart(byte[] body, @Context HttpHeaders headers) {
    return beside(body, headers, charts::answer, MediaType.APPLICATION_JSON_TYPE);
  }

  @POST
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(SVG_TYPE)
  public Uni<RestResponse<byte[]>> draw(byte[] body, @Context HttpHeaders headers) {
    return beside(body, headers, charts::draw, SVG);
  }

  private Uni<RestResponse<byte[]>> beside(
      byte[] body,
      HttpHeaders headers,
      Function<StabilityCharts.Asked, byte[]> work,
      MediaType type) {
    // the framework takes either method where neither type is acceptable
    if (headers.getAcceptableMediaTypes().stream().noneMatch(type::isCompatible)) {
      throw new WebApplicationException(Response.Status.NOT_ACCEPTABLE);
    }
    Evaluation.checkLength(body, maxBodyBytes);
    StabilityCharts.Asked asked = charts.ask(body);
    return largeWork.beside(() -> Evaluation.answer(work.apply(asked), type));
  }
}
