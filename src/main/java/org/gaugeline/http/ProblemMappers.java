package org.gaugeline.http;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Every refusal as a problem. */
public class ProblemMappers {
  private static final String RETRY_AFTER_SECONDS = "1";

  @ServerExceptionMapper
  RestResponse<byte[]> problem(ProblemException e) {
    return response(e.problem(), null);
  }

  @ServerExceptionMapper
  RestResponse<byte[]> refused(WebApplicationException e) {
    Response refused = e.getResponse();
    return response(
        Problem.ofStatus(refused.getStatus()), refused.getHeaderString(HttpHeaders.ALLOW));
  }

  static RestResponse<byte[]> response(
      Problem problem, @org.jspecify.annotations.Nullable String allow) {
    RestResponse.ResponseBuilder<byte[]> builder =
        RestResponse.ResponseBuilder.create(
                RestResponse.Status.fromStatusCode(problem.status()), ProblemWriter.write(problem))
            .header(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
            .header(HttpHeaders.CACHE_CONTROL, "no-store");
    if (allow != null) {
      builder.header(HttpHeaders.ALLOW, allow);
    }
    if (problem.status() == 429 || problem.status() == 503) {
      builder.header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS);
    }
    return builder.build();
  }
}
