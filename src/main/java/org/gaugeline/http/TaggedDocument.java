package org.gaugeline.http;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;

/**
 * A document with the hash of its content, for conditional requests (RFC 9110).
 *
 * @param body its bytes
 * @param tag entity tag, in quotes
 */
@SuppressWarnings("ArrayRecordComponent")
record TaggedDocument(byte[] body, String tag) {
  private static final int TAG_DIGITS = 32;

  static TaggedDocument of(byte[] body) {
    return new TaggedDocument(
        body, '"' + Recommendations.digest(body).substring(0, TAG_DIGITS) + '"');
  }

  /** The document, or 304 where the caller has it. */
  RestResponse<byte[]> response(@Nullable String ifNoneMatch) {
    RestResponse.ResponseBuilder<byte[]> builder =
        ifNoneMatch != null && matches(ifNoneMatch)
            ? RestResponse.ResponseBuilder.create(RestResponse.Status.NOT_MODIFIED)
            : RestResponse.ResponseBuilder.ok(body, MediaType.APPLICATION_JSON_TYPE);
    return builder
        .header(HttpHeaders.ETAG, tag)
        .header(HttpHeaders.CACHE_CONTROL, "no-cache")
        .build();
  }

  private boolean matches(String ifNoneMatch) {
    for (String candidate : ifNoneMatch.split(",")) {
      String plain = candidate.strip();
      if (plain.equals("*") || plain.equals(tag) || plain.equals("W/" + tag)) {
        return true;
      }
    }
    return false;
  }
}
