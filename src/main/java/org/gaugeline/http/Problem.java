package org.gaugeline.http;

import java.util.List;
import java.util.Map;

/**
 * An answer other than the asked one (RFC 9457).
 *
 * @param kind last part of the type's URN
 * @param title the kind in words
 * @param status HTTP status
 * @param detail what happened here
 * @param errors all faults; empty where the request as a whole is at fault
 */
record Problem(String kind, String title, int status, String detail, List<Fault> errors) {
  static final String TYPE_PREFIX = "urn:gaugeline:problem:";
  static final String MEDIA_TYPE = "application/problem+json";
  static final int MOST_LISTED = 1000;

  static Problem malformed(String detail, Map<String, Object> parameters) {
    return malformed("The body is not I-JSON", detail, parameters);
  }

  /** A table, or a row of it, whose cells cannot be told apart. */
  static Problem malformedTable(String detail, Map<String, Object> parameters) {
    return malformed("The table cannot be read", detail, parameters);
  }

  private static Problem malformed(String title, String detail, Map<String, Object> parameters) {
    List<Fault> faults = List.of(new Fault("", "malformed", detail, parameters));
    return new Problem("malformed-body", title, 400, detail, faults);
  }

  static Problem invalid(List<Fault> faults) {
    int count = faults.size();
    String detail =
        count == 1 ? "The request has one fault." : "The request has " + count + " faults.";
    if (count > MOST_LISTED) {
      detail += " The first " + MOST_LISTED + " are listed.";
    }
    return new Problem(
        "invalid-intent",
        "The request is out of range, unknown or contradicts itself",
        422,
        detail,
        List.copyOf(faults.subList(0, Math.min(count, MOST_LISTED))));
  }

  static Problem invalidParameter(Fault fault) {
    return new Problem(
        "invalid-parameter", "A parameter cannot be used", 422, fault.detail(), List.of(fault));
  }

  static Problem notFound(String detail, List<Fault> faults) {
    return new Problem("not-found", "There is nothing at this address", 404, detail, faults);
  }

  static Problem tooLarge(long limitBytes) {
    return plain(
        "body-too-large",
        "The body is larger than the limit",
        413,
        "The body must not be longer than "
            + limitBytes
            + " bytes. Send large stocks as a mounted file, or only the holders in question; send"
            + " long tool lists as NDJSON or CSV.");
  }

  static Problem tooManyLines(int limit) {
    return plain(
        "too-many-lines",
        "The list has more lines than this format takes",
        413,
        "A list in this format must not have more than "
            + limit
            + " lines. Send NDJSON or CSV and take NDJSON or CSV, which have no limit, or send"
            + " parts.");
  }

  static Problem addressTooLong(int limit) {
    return plain(
        "address-too-long",
        "The address is longer than the limit",
        414,
        "The address must not be longer than "
            + limit
            + " characters. The intent belongs into the body.");
  }

  static Problem encoded() {
    return plain(
        "unsupported-media-type",
        "The body is of another media type",
        415,
        "Encoded bodies are not read. Send the body without Content-Encoding.");
  }

  static Problem overloaded() {
    return plain(
        "overloaded", "Too busy now", 503, "Too many large requests at once. Try again shortly.");
  }

  /** Problems that the framework's statuses stand for. */
  static Problem ofStatus(int status) {
    return switch (status) {
      case 404 ->
          notFound(
              "There is nothing at this address. The addresses stand in /q/openapi.", List.of());
      case 405 ->
          plain(
              "method-not-allowed",
              "The address does not answer this method",
              405,
              "Use one of the methods in the Allow header.");
      case 406 ->
          plain(
              "not-acceptable",
              "The answer cannot be had in the accepted media types",
              406,
              "Addresses answer in application/json, /v1/stability-charts also in image/svg+xml,"
                  + " /v1/tool-list-checks also in application/x-ndjson, application/sarif+json,"
                  + " application/xml and text/csv.");
      case 413 -> plain("body-too-large", "The body is larger than the limit", 413, "Send less.");
      case 415 ->
          plain(
              "unsupported-media-type",
              "The body is of another media type",
              415,
              "Send the body as application/json; tool lists also as application/x-ndjson or text/csv,"
                  + " in UTF-8.");
      case 429 -> plain("too-many-requests", "Too many requests", 429, "Wait and try again.");
      case 503 -> overloaded();
      case 500 ->
          plain(
              "defect",
              "The service is at fault",
              500,
              "The request met a defect of the service, which is in its log.");
      default ->
          plain("malformed-request", "The request cannot be read", status, "Check the request.");
    };
  }

  private static Problem plain(String kind, String title, int status, String detail) {
    return new Problem(kind, title, status, detail, List.of());
  }
}
