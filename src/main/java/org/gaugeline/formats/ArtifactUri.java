package org.gaugeline.formats;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * The caller's name for a file as a URI reference of RFC 3986. What has a scheme is taken as a URI,
 * and only what a URI cannot hold is escaped. All else is a path: absolute ones become {@code file}
 * URIs, backslashes become slashes, and question mark and number sign are part of the name.
 */
final class ArtifactUri {
  /** Stands for a list whose file was not named. */
  static final String UNNAMED = "tool-list";

  private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:[/\\\\].*", Pattern.DOTALL);
  private static final Pattern SCHEME =
      Pattern.compile("[A-Za-z][A-Za-z0-9+.-]+:.*", Pattern.DOTALL);
  private static final Pattern ESCAPE = Pattern.compile("%[0-9A-Fa-f]{2}");
  private static final String UNRESERVED = "-._~";
  private static final String IN_PATH = "/:@!$&'()*+,;=";
  private static final String DIGITS = "0123456789ABCDEF";

  private ArtifactUri() {}

  /**
   * The reference.
   *
   * @param name as the caller gave it; empty where no file was named
   */
  static String of(String name) {
    String given = Characters.paired(name);
    if (given.isBlank()) {
      return UNNAMED;
    }
    if (DRIVE.matcher(given).matches()) {
      return "file:///" + path(given.replace('\\', '/'));
    }
    if (SCHEME.matcher(given).matches()) {
      return uri(given);
    }
    String path = path(given.replace('\\', '/'));
    if (path.startsWith("//")) {
      return "file:" + path;
    }
    if (path.startsWith("/")) {
      return "file://" + path;
    }
    boolean colonFirst = path.indexOf(':') >= 0 && path.indexOf(':') < firstSlash(path);
    return colonFirst ? "./" + path : path;
  }

  private static int firstSlash(String path) {
    int slash = path.indexOf('/');
    return slash < 0 ? path.length() : slash;
  }

  private static String uri(String given) {
    int fragment = given.indexOf('#');
    return fragment < 0
        ? escaped(given, IN_PATH + "?")
        : escaped(given.substring(0, fragment), IN_PATH + "?")
            + "#"
            + escaped(given.substring(fragment + 1), IN_PATH + "?");
  }

  private static String path(String given) {
    return escaped(given, IN_PATH);
  }

  private static String escaped(String text, String allowed) {
    StringBuilder out = new StringBuilder(text.length());
    for (int at = 0; at < text.length(); ) {
      int c = text.codePointAt(at);
      if (isKept(c, allowed) || ESCAPE.matcher(text).region(at, text.length()).lookingAt()) {
        out.appendCodePoint(c);
      } else {
        for (byte octet : Character.toString(c).getBytes(StandardCharsets.UTF_8)) {
          out.append('%');
          out.append(DIGITS.charAt((octet >> 4) & 0xF)).append(DIGITS.charAt(octet & 0xF));
        }
      }
      at += Character.charCount(c);
    }
    return out.toString();
  }

  private static boolean isKept(int c, String allowed) {
    boolean letterOrDigit =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    return letterOrDigit || UNRESERVED.indexOf(c) >= 0 || allowed.indexOf(c) >= 0;
  }
}
