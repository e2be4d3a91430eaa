package org.gaugeline.toollist;

import java.io.IOException;

/** Takes the lines of a list as they are judged, and then the whole. */
public interface LineSink {
  /**
   * Takes a line.
   *
   * @throws IOException where the other end has gone
   */
  void line(LineResult line) throws IOException;

  /**
   * Takes the totals; nothing follows.
   *
   * @throws IOException where the other end has gone
   */
  void end(ListSummary summary) throws IOException;
}
