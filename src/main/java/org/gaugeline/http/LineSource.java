package org.gaugeline.http;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The lines of one list, whatever the format. What concerns them all has been read before. */
interface LineSource {
  /** What concerns all lines. */
  ListHead head();

  /** Columns that were not read. */
  List<String> unknownColumns();

  /**
   * The next line; null after the last.
   *
   * @throws IOException where the other end has gone
   */
  @Nullable RawLine next() throws IOException;

  /** Whether more can be had without waiting for the other end. */
  boolean waiting() throws IOException;
}
