package org.gaugeline.http;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Supplier;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListSummary;

/** One JSON object a line, as computed; the last one holds the totals. */
final class NdjsonReport implements LineSink {
  private static final int USUAL_BYTES = 8 * 1024;

  private final OutputStream out;
  private final ToolListWriter writer;
  private final Supplier<String> inputDigest;
  private final JsonBytes json = new JsonBytes(USUAL_BYTES);

  /**
   * Begins a report.
   *
   * @param inputDigest of all that was read, asked at the end
   */
  NdjsonReport(OutputStream out, ToolListWriter writer, Supplier<String> inputDigest) {
    this.out = out;
    this.writer = writer;
    this.inputDigest = inputDigest;
  }

  @Override
  public void line(LineResult line) throws IOException {
    json.clear();
    writer.line(json, line);
    send();
  }

  @Override
  public void end(ListSummary summary) throws IOException {
    json.clear();
    json.object();
    writer.versions(json, inputDigest.get());
    writer.summary(json, summary);
    json.endObject();
    send();
  }

  private void send() throws IOException {
    json.append('\n');
    out.write(json.toByteArray());
  }
}
