package org.gaugeline.http;

import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a tool list's answer can be, by media type. */
enum ToolListFormat {
  JSON(MediaType.APPLICATION_JSON, true),
  NDJSON(ToolListFormat.NDJSON_TYPE, false),
  SARIF(ToolListFormat.SARIF_TYPE, true),
  JUNIT(MediaType.APPLICATION_XML, true),
  CSV(ToolListFormat.CSV_TYPE, false);

  static final String NDJSON_TYPE = "application/x-ndjson";
  static final String SARIF_TYPE = "application/sarif+json";
  static final String CSV_TYPE = "text/csv";

  private final String type;
  private final boolean bounded;

  ToolListFormat(String type, boolean bounded) {
    this.type = type;
    this.bounded = bounded;
  }

  MediaType type() {
    return MediaType.valueOf(type);
  }

  /** Whether the whole answer is held before it is sent. */
  boolean bounded() {
    return bounded;
  }

  /**
   * The format that a caller likes best; where anything will do, that of the body.
   *
   * @return null where none is acceptable
   */
  static @Nullable ToolListFormat preferred(List<MediaType> acceptable, MediaType sent) {
    ToolListFormat own = of(sent);
    for (MediaType asked : acceptable) {
      if (answers(asked, own, acceptable)) {
        return own;
      }
      for (ToolListFormat format : values()) {
        if (answers(asked, format, acceptable)) {
          return format;
        }
      }
    }
    return acceptable.isEmpty() ? own : null;
  }

  private static boolean answers(
      MediaType asked, ToolListFormat format, List<MediaType> acceptable) {
    return !isRefused(asked)
        && asked.isCompatible(format.type())
        && acceptable.stream()
            .filter(ToolListFormat::isRefused)
            .filter(type -> !type.isWildcardSubtype())
            .noneMatch(type -> type.isCompatible(format.type()));
  }

  /** Quality 0 says: not this one (RFC 9110, 12.4.2). */
  private static boolean isRefused(MediaType type) {
    String quality = type.getParameters().get("q");
    return quality != null && quality.matches("0(\\.0*)?");
  }

  private static ToolListFormat of(MediaType sent) {
    for (ToolListFormat format : values()) {
      if (sent.isCompatible(format.type())) {
        return format;
      }
    }
    return JSON;
  }
}
