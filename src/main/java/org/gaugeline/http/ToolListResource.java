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
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/**
 * Many lines in, a verdict for each and for the list out. Lines stream both ways where the formats
 * permit, and then take next to no memory; lists that are held whole are few at a time. Each has a
 * thread of its own; the others are asked to come again.
 */
@Path("/v1/tool-list-checks")
public class ToolListResource {
  private static final Set<String> TABLE_CHARSETS =
      Set.of("utf-8", "us-ascii", "iso-8859-1", "iso-8859-15", "windows-1252");
  private static final byte[] NOTHING = {};

  /** Lists that are held take seconds: waiting for a place is better than asking again. */
  private static final int HELD_PATIENCE_SECONDS = 10;

  private final ToolListChecks checks;
  private final Semaphore streamed;
  private final Semaphore held;
  private final int maxLines;
  private final int maxBodyBytes;
  private final int maxLineBytes;

  public ToolListResource(
      ToolListChecks checks,
      @ConfigProperty(name = "gaugeline.tool-lists.max-at-once") int maxAtOnce,
      @ConfigProperty(name = "gaugeline.tool-lists.max-held-at-once") int maxHeldAtOnce,
      @ConfigProperty(name = "gaugeline.tool-lists.max-lines") int maxLines,
      @ConfigProperty(name = "gaugeline.tool-lists.max-body-bytes") int maxBodyBytes,
      @ConfigProperty(name = "gaugeline.recommendations.max-body-bytes") int maxLineBytes) {
    this.checks = checks;
    this.streamed = new Semaphore(maxAtOnce);
    this.held = new Semaphore(maxHeldAtOnce);
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
    if (sent == null) {
      throw new WebApplicationException(Response.Status.UNSUPPORTED_MEDIA_TYPE);
    }
    ToolListFormat format = ToolListFormat.preferred(headers.getAcceptableMediaTypes(), sent);
    if (format == null) {
      throw new WebApplicationException(Response.Status.NOT_ACCEPTABLE);
    }
    ListHeads.Parameters parameters = new ListHeads.Parameters(failOn, artifactUri);
    parameters.check("?");
    Places places = new Places();
    places.take(streamed, 0);
    try {
      // Read before it takes a place among those that are held: a slow sender keeps none of them.
      byte[] whole = isJson(sent) ? readWhole(body) : NOTHING;
      if (format.bounded() || isJson(sent)) {
        places.take(held, HELD_PATIENCE_SECONDS);
      }
      ToolListChecks.Opened opened = open(body, whole, sent, parameters);
      if (format.bounded()) {
        return response(checks.answer(opened, format, maxLines), format);
      }
      return response(streaming(opened, format, places.handOn()), format);
    } finally {
      places.giveBack();
    }
  }

  /** The places that one list has taken. */
  private static final class Places {
    private final List<Semaphore> taken = new ArrayList<>(2);

    void take(Semaphore from, int patienceSeconds) {
      try {
        if (!from.tryAcquire(patienceSeconds, TimeUnit.SECONDS)) {
          throw new ProblemException(Problem.overloaded());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new ProblemException(Problem.overloaded());
      }
      taken.add(from);
    }

    /** Another one gives them back. */
    Places handOn() {
      Places other = new Places();
      other.taken.addAll(taken);
      taken.clear();
      return other;
    }

    void giveBack() {
      taken.forEach(Semaphore::release);
      taken.clear();
    }
  }

  /**
   * How a table's bytes are meant; JSON is always UTF-8 (RFC 8259).
   *
   * @throws WebApplicationException for encodings in which a line cannot be told by its bytes
   */
  private static Charset charset(MediaType sent) {
    String name = sent.getParameters().get(MediaType.CHARSET_PARAMETER);
    if (name == null) {
      return StandardCharsets.UTF_8;
    }
    if (!TABLE_CHARSETS.contains(name.toLowerCase(Locale.ROOT))) {
      throw new WebApplicationException(Response.Status.UNSUPPORTED_MEDIA_TYPE);
    }
    return Charset.forName(name);
  }

  private StreamingOutput streaming(
      ToolListChecks.Opened opened, ToolListFormat format, Places places) {
    return out -> {
      try {
        checks.stream(opened, format, out);
      } finally {
        places.giveBack();
      }
    };
  }

  private static boolean isJson(MediaType sent) {
    return sent.isCompatible(ToolListFormat.JSON.type());
  }

  private byte[] readWhole(InputStream body) throws IOException {
    byte[] whole = body.readNBytes(maxBodyBytes + 1);
    Evaluation.checkLength(whole, maxBodyBytes);
    return whole;
  }

  private ToolListChecks.Opened open(
      InputStream body, byte[] whole, MediaType sent, ListHeads.Parameters parameters)
      throws IOException {
    if (sent.isCompatible(ToolListFormat.CSV.type())) {
      return checks.openCsv(body, charset(sent), parameters);
    }
    return isJson(sent)
        ? checks.openJson(whole, parameters)
        : checks.openNdjson(body, maxLineBytes, parameters);
  }

  private static Response response(Object entity, ToolListFormat format) {
    return Response.ok(entity, format.type()).header(HttpHeaders.CACHE_CONTROL, "no-store").build();
  }
}
