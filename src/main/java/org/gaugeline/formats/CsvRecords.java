package org.gaugeline.formats;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The records of a table as people's spreadsheets write it (RFC 4180, and besides: semicolon or tab
 * as separator, a byte order mark, LF alone, blank lines). A record that cannot be read is told in
 * its place, and reading goes on with the next line: an open quote swallows no more than {@value
 * #MOST_LINES} lines.
 */
public final class CsvRecords {
  /** Longest record in bytes. */
  public static final int LONGEST_BYTES = 64 * 1024;

  private static final int MOST_LINES = 50;
  private static final String SEPARATORS = ";,\t";
  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

  private final TextLines lines;
  private final Charset charset;
  private @Nullable ObjectReader reader;
  private char separator;

  /**
   * Begins to read.
   *
   * @param charset of the text; one in which separators, quotes and line ends are ASCII
   */
  public CsvRecords(TextLines lines, Charset charset) {
    this.lines = lines;
    this.charset = charset;
  }

  /**
   * One record.
   *
   * @param line 1-based line at which it begins
   * @param cells its cells, empty where it could not be read
   * @param fault why it could not be read; empty where it could
   */
  public record Csv(long line, List<String> cells, String fault) {}

  /** What separates cells, found in the first record: the one that stands there most often. */
  public char separator() {
    return separator;
  }

  /** The next record that is not blank; null after the last. */
  public @Nullable Csv next() throws IOException {
    byte[] first = lines.next();
    while (first != null && isBlank(first)) {
      first = lines.next();
    }
    if (first == null) {
      return null;
    }
    long start = lines.number();
    if (lines.tooLong()) {
      return faulty(start, "The line is longer than " + LONGEST_BYTES + " bytes.");
    }
    ByteArrayOutputStream whole = new ByteArrayOutputStream(first.length);
    whole.writeBytes(first);
    boolean open = endsQuoted(first, false);
    int count = 1;
    while (open) {
      byte[] more = count < MOST_LINES ? lines.next() : null;
      if (more == null || lines.tooLong() || whole.size() + more.length > LONGEST_BYTES) {
        return faulty(start, "A quote opens here and does not close. Write two quotes for one.");
      }
      whole.write('\n');
      whole.writeBytes(more);
      open = endsQuoted(more, true);
      count++;
    }
    return record(start, whole.toByteArray());
  }

  private Csv record(long line, byte[] bytes) throws IOException {
    String text;
    try {
      text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return faulty(line, "The line is not " + charset.name() + ". Save the table as UTF-8.");
    }
    try (MappingIterator<List<String>> found = reader(text).readValues(text)) {
      List<String> cells = found.hasNext() ? List.copyOf(found.next()) : List.of();
      return found.hasNext()
          ? faulty(
              line, "A quote within a cell joins it to the next line. Write two quotes for one.")
          : new Csv(line, cells, "");
    } catch (JsonProcessingException | RuntimeException e) {
      String why = e.getMessage() == null ? "" : e.getMessage().lines().findFirst().orElse("");
      return faulty(line, "The cells cannot be told apart: " + why);
    }
  }

  private ObjectReader reader(String firstRecord) {
    ObjectReader known = reader;
    if (known == null) {
      separator = separatorOf(firstRecord);
      known =
          MAPPER
              .readerForListOf(String.class)
              .with(CsvSchema.emptySchema().withColumnSeparator(separator));
      reader = known;
    }
    return known;
  }

  private static char separatorOf(String text) {
    int[] counts = new int[SEPARATORS.length()];
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      int which = quoted ? -1 : SEPARATORS.indexOf(c);
      if (which >= 0) {
        counts[which]++;
      }
    }
    int best = SEPARATORS.indexOf(',');
    for (int i = 0; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return SEPARATORS.charAt(best);
  }

  private static Csv faulty(long line, String fault) {
    return new Csv(line, List.of(), fault);
  }

  /**
   * Whether a line ends inside a quoted cell. A quote opens only where a cell begins: inch marks
   * within a cell are text.
   */
  private boolean endsQuoted(byte[] line, boolean open) {
    boolean quoted = open;
    boolean cellBegins = !open;
    for (int i = 0; i < line.length; i++) {
      if (quoted) {
        boolean doubled = line[i] == '"' && i + 1 < line.length && line[i + 1] == '"';
        quoted = doubled || line[i] != '"';
        i += doubled ? 1 : 0;
      } else {
        quoted = cellBegins && line[i] == '"';
        cellBegins = separates(line[i]);
      }
    }
    return quoted;
  }

  /** Before the first record is read, any of the usual ones does. */
  private boolean separates(byte b) {
    return reader == null ? SEPARATORS.indexOf(b) >= 0 : b == separator;
  }

  /** Spreadsheets write rows without content as separators alone. */
  private static boolean isBlank(byte[] line) {
    for (byte b : line) {
      if (b != ' ' && SEPARATORS.indexOf(b) < 0) {
        return false;
      }
    }
    return true;
  }
}
