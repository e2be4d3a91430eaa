package org.gaugeline.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.formats.CsvRecords;
import org.gaugeline.formats.CsvReport;
import org.gaugeline.formats.JunitReport;
import org.gaugeline.formats.SarifReport;
import org.gaugeline.formats.TextLines;
import org.gaugeline.reference.ItemSymbol;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListCheck;
import org.gaugeline.wording.Words;

/**
 * Whole lists, line by line: open the list, judge each line as it comes, tell it, tell the whole.
 * Holds no state of requests.
 */
public final class ToolListChecks {
  private final ListHeads heads;
  private final LineJudge judge;
  private final CsvColumns columns;
  private final ToolListWriter writer;
  private final Words words;

  public ToolListChecks(
      Assessor assessor,
      Words words,
      ReferenceData data,
      HolderCatalogue holders,
      List<ItemSymbol> itemSymbols) {
    this.heads = new ListHeads(data, holders);
    this.judge = new LineJudge(assessor, data, holders, itemSymbols);
    this.columns = new CsvColumns(itemSymbols);
    this.writer = new ToolListWriter(words, data.version());
    this.words = words;
  }

  /** A list that was opened: what is wrong with it as a whole would have been said by now. */
  record Opened(LineSource source, MessageDigest digest) {}

  /** Opens a JSON body, which has been read whole. */
  Opened openJson(byte[] body, ListHeads.Parameters parameters) {
    MessageDigest digest = sha256();
    digest.update(body);
    return new Opened(JsonList.of(body, heads, parameters), digest);
  }

  /** Opens a body of one JSON object a line; reads as far as the first line. */
  Opened openNdjson(InputStream body, int longestLineBytes, ListHeads.Parameters parameters)
      throws IOException {
    DigestInputStream in = new DigestInputStream(body, sha256());
    TextLines lines = new TextLines(in, longestLineBytes);
    return new Opened(
        new NdjsonList(lines, longestLineBytes, heads, parameters), in.getMessageDigest());
  }

  /** Opens a table; reads as far as the first row. */
  Opened openCsv(InputStream body, Charset charset, ListHeads.Parameters parameters)
      throws IOException {
    DigestInputStream in = new DigestInputStream(body, sha256());
    TextLines lines = new TextLines(in, CsvRecords.LONGEST_BYTES);
    return new Opened(new CsvList(lines, charset, columns, parameters), in.getMessageDigest());
  }

  /**
   * Judges all lines and holds the answer.
   *
   * @throws ProblemException where there are more lines than that
   */
  byte[] answer(Opened opened, ToolListFormat format, int maxLines) throws IOException {
    if (opened.source() instanceof JsonList whole && whole.count() > maxLines) {
      throw new ProblemException(Problem.tooManyLines(maxLines));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    run(opened, sink(opened, format, out), out, maxLines);
    return out.toByteArray();
  }

  /** Judges line by line and sends each on its way while the next ones are still coming. */
  void stream(Opened opened, ToolListFormat format, OutputStream out) throws IOException {
    run(opened, sink(opened, format, out), out, Integer.MAX_VALUE);
  }

  private void run(Opened opened, LineSink sink, OutputStream out, int maxLines)
      throws IOException {
    LineSource source = opened.source();
    ListCheck check = new ListCheck(source.head().failOn(), source.head().stock());
    source.unknownColumns().forEach(check::unknownColumn);
    int count = 0;
    for (RawLine raw = source.next(); raw != null; raw = source.next()) {
      if (++count > maxLines) {
        throw new ProblemException(Problem.tooManyLines(maxLines));
      }
      LineResult result = judge.judge(raw, source.head());
      check.add(result);
      sink.line(result);
      if (!source.waiting()) {
        out.flush();
      }
    }
    sink.end(check.finish());
    out.flush();
  }

  private LineSink sink(Opened opened, ToolListFormat format, OutputStream out) throws IOException {
    ListHead head = opened.source().head();
    Supplier<String> digest = () -> HexFormat.of().formatHex(opened.digest().digest());
    return switch (format) {
      case JSON -> new JsonReport(out, writer, digest);
      case NDJSON -> new NdjsonReport(out, writer, digest);
      case SARIF -> new SarifReport(out, words, head.artifactUri());
      case JUNIT -> new JunitReport(out, words, head.failOn());
      case CSV -> new CsvReport(out, words);
    };
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
