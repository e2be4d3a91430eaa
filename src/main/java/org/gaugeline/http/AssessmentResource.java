package org.gaugeline.http;

import io.smallrye.common.annotation.NonBlocking;
import io.smallrye.mutiny.Uni;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.RestResponse;

/** One intent and one given assembly in, a verdict out. */
@Path("/v1/assessments")
public class AssessmentResource {
  private static final Logger LOG = Logger.getLogger(AssessmentResource.class);

  private final Assessments assessments;
  private final LargeWork largeWork;
  private final long maxBodyBytes;

  public AssessmentResource(
      Assessments assessments,
      LargeWork largeWork,
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") long maxBodyBytes) {
    this.assessments = assessments;
    this.largeWork = largeWork;
    this.maxBodyBytes = maxBodyBytes;
  }

  @POST
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  public Uni<RestResponse<byte[]>> assess(byte[] body, @QueryParam("explain") boolean explain) {
    if (body.length > maxBodyBytes) {
      throw new ProblemException(Problem.tooLarge(maxBodyBytes));
    }
    Assessments.Asked asked = assessments.ask(body);
    if (!asked.needsSearch()) {
      return Uni.createFrom().item(response(assessments.answer(asked, explain)));
    }
    try {
      return Uni.createFrom()
          .completionStage(
              CompletableFuture.supplyAsync(
                  () -> response(assessments.answer(asked, explain)), largeWork));
    } catch (RejectedExecutionException e) {
      LOG.debug("too many searches at once", e);
      throw new ProblemException(Problem.overloaded());
    }
  }

  private static RestResponse<byte[]> response(byte[] body) {
    return RestResponse.ResponseBuilder.ok(body, MediaType.APPLICATION_JSON_TYPE)
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }
}
