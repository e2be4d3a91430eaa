package org.gaugeline.tables;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Where the table files are read from. */
@FunctionalInterface
public interface TableFolder {
  /**
   * The whole text of a table file.
   *
   * @throws TableException if there is no such file or it cannot be read
   */
  String read(String file);

  /** The tables packaged with the service. */
  static TableFolder packaged() {
    return file -> {
      try (InputStream stream = TableFolder.class.getResourceAsStream("/tables/" + file)) {
        if (stream == null) {
          throw new TableException(file, 0, "no such table in the package");
        }
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new TableException(file, 0, "cannot be read: " + e.getMessage(), e);
      }
    };
  }
}
