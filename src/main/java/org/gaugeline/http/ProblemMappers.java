package org.gaugeline.http;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jspecify.annotations.Nullable;

/** Every refusal as a problem. */
public class ProblemMappers {
  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);
  private static final String RETRY_AFTER_SECONDS = "1";

  @ServerExceptionMapper
  Response problem(ProblemException e) {
    return response(e.problem(), null);
  }

  @ServerExceptionMapper
  Response refused(WebApplicationException e, UriInfo uri) {
    int status = e.getResponse().getStatus();
    return response(
        Problem.ofStatus(status),
        status == Response.Status.METHOD_NOT_ALLOWED.getStatusCode() ? allowed(uri) : null);
  }

  /** The catalogue is read, everything else is computed from a body. */
  private static String allowed(UriInfo uri) {
    return uri.getPath().startsWith("/v1/catalogue/") ? "GET, HEAD, OPTIONS" : "POST, OPTIONS";
  }

  /** The other end has gone: nobody is left to answer, and nothing is at fault here. */
  @ServerExceptionMapper
  Response gone(IOException e) {
    LOG.debug("a caller hung up", e);
    return response(Problem.ofStatus(Response.Status.BAD_REQUEST.getStatusCode()), null);
  }

  /** A defect of the service: told in the log, not to the caller. */
  @ServerExceptionMapper
  Response defect(Exception e) {
    LOG.error("a request met a defect", e);
    return response(Problem.ofStatus(Response.Status.INTERNAL_SERVER_ERROR.getStatusCode()), null);
  }

  static Response response(Problem problem, @Nullable String allow) {
    Response.ResponseBuilder builder =
        Response.status(problem.status())
            .entity(ProblemWriter.write(problem))
            .type(Problem.MEDIA_TYPE)
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
