package org.gaugeline.idle;

import io.smallrye.common.annotation.Blocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.InputStream;
import org.gaugeline.formats.TextLines;

/**
 * Takes lines and gives each back as it comes: the cost of streaming with nothing to do. Built only
 * for measuring.
 */
@Path("/idle-lines")
public class EchoResource {
  private static final String NDJSON = "application/x-ndjson";
  private static final int LONGEST_BYTES = 1 << 20;

  @POST
  @Blocking
  @Consumes(NDJSON)
  @Produces(NDJSON)
  public StreamingOutput echo(InputStream body) {
    return out -> {
      TextLines lines = new TextLines(body, LONGEST_BYTES);
      for (byte[] line = lines.next(); line != null; line = lines.next()) {
        out.write(line);
        out.write('\n');
        if (!lines.waiting()) {
          out.flush();
        }
      }
    };
  }
}
