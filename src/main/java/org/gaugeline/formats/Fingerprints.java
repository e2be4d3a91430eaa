package org.gaugeline.formats;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;

/**
 * Names findings so that the same one is known again in another run, wherever its line has moved
 * to.
 *
 * <p>A fingerprint is the first half of SHA-256, in hexadecimal digits, over what the finding
 * stands on (a line's id, or a list finding's subject), its code, its pointer, and how many
 * findings of these three came before it. Line numbers, order, texts and values do not count. Only
 * findings of lines that share an id change places with one another when those lines do, and a line
 * that was given no id is named by its number.
 */
final class Fingerprints {
  /** Name of the fingerprint; another way of making it needs another version. */
  static final String NAME = "gaugelineFinding/v1";

  private static final int BYTES = 16;

  private final MessageDigest digest = sha256();
  private final Map<String, Integer> seen = new HashMap<>();

  /** The fingerprint of the next finding. */
  String next(String subject, String code, String pointer) {
    String identity = subject.length() + ":" + subject + code + " " + pointer;
    int occurrence = seen.merge(identity, 1, Integer::sum);
    byte[] hash = digest.digest((identity + " " + occurrence).getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(hash, 0, BYTES);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
