package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** One line of a list as it was sent, whatever the format, before the list completes it. */
sealed interface RawLine permits RawLine.Read, RawLine.Unreadable {
  /**
   * 1-based: the line of the body where the body is made of lines, the position among the lines
   * otherwise.
   */
  long line();

  /** Line of the body at which it begins: what a finding points to where nothing else was said. */
  long startLine();

  /**
   * A line as JSON, whatever it holds.
   *
   * @param faults what could not be taken over
   */
  record Read(long line, long startLine, JsonNode tree, List<Fault> faults) implements RawLine {}

  /** A line that is none. */
  record Unreadable(long line, Problem problem) implements RawLine {
    @Override
    public long startLine() {
      return line;
    }
  }
}
