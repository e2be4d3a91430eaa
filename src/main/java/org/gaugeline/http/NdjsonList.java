package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import org.gaugeline.formats.TextLines;
import org.jspecify.annotations.Nullable;

/** A list as one JSON object a line, read as it comes. Blank lines are skipped. */
final class NdjsonList implements LineSource {
  private final TextLines lines;
  private final long longestBytes;
  private final ListHead head;
  private @Nullable RawLine first;

  /**
   * Reads the first line.
   *
   * @throws ProblemException where it is a list object with faults, or there is no line at all
   */
  NdjsonList(TextLines lines, long longestBytes, ListHeads heads, ListHeads.Parameters parameters)
      throws IOException {
    this.lines = lines;
    this.longestBytes = longestBytes;
    byte[] bytes = nextBytes();
    JsonNode tree = bytes == null ? null : treeOrNull(bytes);
    JsonNode list = tree == null || tree.size() != 1 ? null : tree.get(ListHeads.LIST);
    head = heads.read(list, parameters);
    first = list != null ? following() : bytes == null ? null : line(bytes);
    if (first == null) {
      throw new ProblemException(Problem.invalid(List.of(JsonList.noLines(""))));
    }
  }

  @Override
  public ListHead head() {
    return head;
  }

  @Override
  public List<String> unknownColumns() {
    return List.of();
  }

  @Override
  public @Nullable RawLine next() throws IOException {
    RawLine line = first;
    if (line == null) {
      return following();
    }
    first = null;
    return line;
  }

  @Override
  public boolean waiting() throws IOException {
    return first != null || lines.waiting();
  }

  private @Nullable RawLine following() throws IOException {
    byte[] bytes = nextBytes();
    return bytes == null ? null : line(bytes);
  }

  private byte @Nullable [] nextBytes() throws IOException {
    byte[] bytes = lines.next();
    while (bytes != null && isBlank(bytes)) {
      bytes = lines.next();
    }
    return bytes;
  }

  private RawLine line(byte[] bytes) {
    long number = lines.number();
    if (lines.tooLong()) {
      return new RawLine.Unreadable(number, Problem.tooLarge(longestBytes));
    }
    try {
      return new RawLine.Read(number, number, RequestBody.tree(bytes), List.of());
    } catch (ProblemException e) {
      return new RawLine.Unreadable(number, e.problem());
    }
  }

  private static @Nullable JsonNode treeOrNull(byte[] bytes) {
    try {
      return RequestBody.tree(bytes);
    } catch (ProblemException e) {
      // Told when it is read again as a line.
      return null;
    }
  }

  private static boolean isBlank(byte[] line) {
    for (byte b : line) {
      if (b != ' ' && b != '\t') {
        return false;
      }
    }
    return true;
  }
}
