package org.gaugeline.http;

import io.smallrye.common.annotation.NonBlocking;
import io.smallrye.mutiny.Uni;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestResponse;

/** One intent and one given assembly in, a verdict out. */
@Path("/v1/assessments")
public class AssessmentResource {
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
    Evaluation.checkLength(body, maxBodyBytes);
    Assessments.Asked asked = assessments.ask(body);
    Supplier<RestResponse<byte[]>> answer =
        () ->
            Evaluation.answer(assessments.answer(asked, explain), MediaType.APPLICATION_JSON_TYPE);
    return asked.needsSearch() ? largeWork.beside(answer) : Uni.createFrom().item(answer);
  }
}
