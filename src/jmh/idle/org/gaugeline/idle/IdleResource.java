package org.gaugeline.idle;

import io.smallrye.common.annotation.NonBlocking;
import io.smallrye.mutiny.Uni;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestResponse;

/**
 * Takes a body and returns a recorded answer without looking at it: the cost of the service with
 * nothing to do. Built only for measuring.
 */
@Path("/idle/{name:[a-z0-9-]+}")
public class IdleResource {
  private final java.nio.file.Path folder;
  private final Map<String, byte[]> answers = new ConcurrentHashMap<>();

  public IdleResource(@ConfigProperty(name = "idle.answers.folder") java.nio.file.Path folder) {
    this.folder = folder;
  }

  @POST
  @NonBlocking
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  public Uni<RestResponse<byte[]>> idle(@PathParam("name") String name, byte[] body) {
    byte[] answer = answers.computeIfAbsent(name, this::recorded);
    return Uni.createFrom()
        .item(
            () ->
                RestResponse.ResponseBuilder.ok(answer, MediaType.APPLICATION_JSON_TYPE)
                    .header(HttpHeaders.CACHE_CONTROL, "no-store")
                    .build());
  }

  private byte[] recorded(String name) {
    try {
      return Files.readAllBytes(folder.resolve(name + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
