package org.gaugeline.formats;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a stream, one at a time, in memory that does not grow with their number. A line ends
 * with LF; a CR before it does not belong to it, nor does a byte order mark at the start. A line
 * that is longer than permitted is cut there and the rest of it skipped.
 */
public final class TextLines {
  private static final int CHUNK_BYTES = 16 * 1024;
  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private final InputStream in;
  private final int longestBytes;
  private final byte[] chunk = new byte[CHUNK_BYTES];
  private int at;
  private int end;
  private byte[] line = new byte[CHUNK_BYTES];
  private int length;
  private long number;
  private boolean tooLong;

  public TextLines(InputStream in, int longestBytes) {
    this.in = in;
    this.longestBytes = longestBytes;
  }

  /** 1-based number of the line that was read last; 0 before the first. */
  public long number() {
    return number;
  }

  /** Whether the line that was read last was cut. */
  public boolean tooLong() {
    return tooLong;
  }

  /** Whether another line, or a part of one, can be had without waiting for the other end. */
  public boolean waiting() throws IOException {
    return at < end || in.available() > 0;
  }

  /** The next line without its end; null where there is none. */
  public byte @Nullable [] next() throws IOException {
    length = 0;
    tooLong = false;
    boolean any = false;
    while (at < end || fill()) {
      any = true;
      int stop = endOfLine();
      keep(stop);
      boolean ended = stop < end;
      at = ended ? stop + 1 : stop;
      if (ended) {
        break;
      }
    }
    if (!any) {
      return null;
    }
    number++;
    int from = number == 1 && startsWithMark() ? BYTE_ORDER_MARK.length : 0;
    int to = length > from && line[length - 1] == '\r' ? length - 1 : length;
    return Arrays.copyOfRange(line, from, to);
  }

  private int endOfLine() {
    int stop = at;
    while (stop < end && chunk[stop] != '\n') {
      stop++;
    }
    return stop;
  }

  private void keep(int stop) {
    int count = Math.min(stop - at, longestBytes - length);
    tooLong |= count < stop - at;
    if (length + count > line.length) {
      line = Arrays.copyOf(line, Math.max(length + count, 2 * line.length));
    }
    System.arraycopy(chunk, at, line, length, count);
    length += count;
  }

  private boolean startsWithMark() {
    return length >= BYTE_ORDER_MARK.length
        && Arrays.equals(
            line, 0, BYTE_ORDER_MARK.length, BYTE_ORDER_MARK, 0, BYTE_ORDER_MARK.length);
  }

  private boolean fill() throws IOException {
    int read = in.read(chunk);
    at = 0;
    end = Math.max(read, 0);
    return read > 0;
  }
}
