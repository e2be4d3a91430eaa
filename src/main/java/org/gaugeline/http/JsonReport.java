package org.gaugeline.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Supplier;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListSummary;

/** One JSON object: what is said of the whole first, then the lines. */
final class JsonReport implements LineSink {
  private static final int USUAL_BYTES = 8 * 1024;

  private final OutputStream out;
  private final ToolListWriter writer;
  private final Supplier<String> inputDigest;
  private final JsonBytes json = new JsonBytes(USUAL_BYTES);
  private final ByteArrayOutputStream lines = new ByteArrayOutputStream();

  JsonReport(OutputStream out, ToolListWriter writer, Supplier<String> inputDigest) {
    this.out = out;
    this.writer = writer;
    this.inputDigest = inputDigest;
  }

  @Override
  public void line(LineResult line) {
    json.clear();
    if (lines.size() > 0) {
      lines.write(',');
    }
    writer.line(json, line);
    lines.writeBytes(json.toByteArray());
  }

  @Override
  public void end(ListSummary summary) throws IOException {
    json.clear();
    json.object();
    writer.versions(json, inputDigest.get());
    writer.summary(json, summary);
    json.array("lines");
    out.write(json.toByteArray());
    lines.writeTo(out);
    json.clear();
    json.endArray();
    json.endObject();
    out.write(json.toByteArray());
  }
}
