package org.gaugeline.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Bodies of the demonstration, by the number that opens their file's name. */
public final class DemoIntent {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path FOLDER = Path.of("demo-data", "intents");

  private DemoIntent() {}

  /** The body whose file begins with a number. */
  public static byte[] body(String number) {
    try (DirectoryStream<Path> found = Files.newDirectoryStream(FOLDER, number + "-*.json")) {
      return Files.readAllBytes(found.iterator().next());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A body with {@code preferences.stability} set to false. */
  public static byte[] withoutStability(byte[] body) {
    try {
      ObjectNode tree = (ObjectNode) JSON.readTree(body);
      tree.withObject("/preferences").put("stability", false);
      return JSON.writeValueAsBytes(tree);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
