package org.gaugeline.http;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestResponse;

/** What all evaluations of a body have in common at the edge. */
final class Evaluation {
  private Evaluation() {}

  /**
   * Refuses what is too long and came in chunks; announced lengths were refused before.
   *
   * @throws ProblemException where it is longer
   */
  static void checkLength(byte[] body, long maxBodyBytes) {
    if (body.length > maxBodyBytes) {
      throw new ProblemException(Problem.tooLarge(maxBodyBytes));
    }
  }

  /** An answer that nobody may keep: the next version may give another one. */
  static RestResponse<byte[]> answer(byte[] body, MediaType type) {
    return RestResponse.ResponseBuilder.ok(body, type)
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }
}
