package org.gaugeline.http;

import io.smallrye.common.annotation.Blocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Semaphore;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/**
 * Many lines in, a verdict for each and for the list out. Lines stream both ways where the formats
 * permit; some lists at a time, each on a thread of its own, the others are asked to come again.
 */
@Path("/v1/tool-list-checks")
public class ToolListResource {
  private final ToolListChecks checks;
  private final Semaphore places;
  private final int maxLines;
  private final int maxBodyBytes;
  private final int maxLineBytes;

  public ToolListResource(
      ToolListChecks checks,
      @ConfigProperty(name = "gaugeline.tool-lists.max-at-once") int maxAtOnce,
      @ConfigProperty(name = "gaugeline.tool-lists.max-lines") int maxLines,
      @ConfigProperty(name = "gaugeline.tool-lists.max-body-bytes") int maxBodyBytes,
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") int maxLineBytes) {
    this.checks = checks;
    this.places = new Semaphore(maxAtOnce);
    this.maxLines = maxLines;
    this.maxBodyBytes = maxBodyBytes;
    this.maxLineBytes = maxLineBytes;
  }

  @POST
  @Blocking
  @Consumes({MediaType.APPLICATION_JSON, ToolListFormat.NDJSON_TYPE, ToolListFormat.CSV_TYPE})
  @Produces({
    MediaType.APPLICATION_JSON,
    ToolListFormat.NDJSON_TYPE,
    ToolListFormat.SARIF_TYPE,
    MediaType.APPLICATION_XML,
    ToolListFormat.CSV_TYPE
  })
  public Response check(
      InputStream body,
      @Context HttpHeaders headers,
      @QueryParam("failOn") @Nullable String failOn,
      @QueryParam("artifactUri") @Nullable String artifactUri)
      throws IOException {
    MediaType sent = headers.getMediaType();
    ToolListFormat format = ToolListFormat.preferred(headers.getAcceptableMediaTypes(), sent);
    if (format == null) {
      throw new WebApplicationException(Response.Status.NOT_ACCEPTABLE);
    }
    ListHeads.Parameters parameters = new ListHeads.Parameters(failOn, artifactUri);
    parameters.check();
    if (!places.tryAcquire()) {
      throw new ProblemException(Problem.overloaded());
    }
    boolean handedOn = false;
    try {
      ToolListChecks.Opened opened = open(body, sent, parameters);
      if (format.bounded()) {
        return response(checks.answer(opened, format, maxLines), format);
      }
      handedOn = true;
      return response(streamed(opened, format), format);
    } finally {
      if (!handedOn) {
        places.release();
      }
    }
  }

  private StreamingOutput streamed(ToolListChecks.Opened opened, ToolListFormat format) {
    return out -> {
      try {
        checks.stream(opened, format, out);
      } finally {
        places.release();
      }
    };
  }

  private ToolListChecks.Opened open(
      InputStream body, MediaType sent, ListHeads.Parameters parameters) throws IOException {
    if (sent.isCompatible(ToolListFormat.CSV.type())) {
      return checks.openCsv(body, parameters);
    }
    if (sent.isCompatible(ToolListFormat.NDJSON.type())) {
      return checks.openNdjson(body, maxLineBytes, parameters);
    }
    byte[] whole = body.readNBytes(maxBodyBytes + 1);
    if (whole.length > maxBodyBytes) {
      throw new ProblemException(Problem.tooLarge(maxBodyBytes));
    }
    return checks.openJson(whole, parameters);
  }

  private static Response response(Object entity, ToolListFormat format) {
    return Response.ok(entity, format.type()).header(HttpHeaders.CACHE_CONTROL, "no-store").build();
  }
}
