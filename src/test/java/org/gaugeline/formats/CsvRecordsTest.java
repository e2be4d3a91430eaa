package org.gaugeline.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gaugeline.formats.CsvRecords.Csv;
import org.junit.jupiter.api.Test;

/** Tables as RFC 4180 has them, and as people's spreadsheets write them besides. */
class CsvRecordsTest {

  private static List<Csv> records(byte[] text) {
    CsvRecords records =
        new CsvRecords(
            new TextLines(new ByteArrayInputStream(text), CsvRecords.LONGEST_BYTES),
            StandardCharsets.UTF_8);
    List<Csv> all = new ArrayList<>();
    try {
      for (Csv next = records.next(); next != null; next = records.next()) {
        all.add(next);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return all;
  }

  private static List<List<String>> cells(String text) {
    return records(text.getBytes(StandardCharsets.UTF_8)).stream().map(Csv::cells).toList();
  }

  /** RFC 4180, section 2, rules 1 and 2: CRLF between records; the last may go without. */
  @Test
  void endsRecordsAtLineBreaks() {
    List<List<String>> expected = List.of(List.of("aaa", "bbb", "ccc"), List.of("z", "y", "x"));
    assertThat(cells("aaa,bbb,ccc\r\nz,y,x\r\n")).isEqualTo(expected);
    assertThat(cells("aaa,bbb,ccc\r\nz,y,x")).isEqualTo(expected);
    assertThat(cells("aaa,bbb,ccc\nz,y,x\n")).isEqualTo(expected);
  }

  /** RFC 4180, section 2, rules 5 to 7: quotes around cells, breaks and commas in them, doubled. */
  @Test
  void readsQuotedCells() {
    assertThat(cells("\"aaa\",\"bbb\",\"ccc\"\r\nz,y,x"))
        .isEqualTo(List.of(List.of("aaa", "bbb", "ccc"), List.of("z", "y", "x")));
    assertThat(cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nz,y,x").get(1))
        .isEqualTo(List.of("z", "y", "x"));
    assertThat(cells("\"aaa\",\"b,bb\",\"c\"\"cc\""))
        .isEqualTo(List.of(List.of("aaa", "b,bb", "c\"cc")));
  }

  /** RFC 4180, section 2, rule 4: spaces are part of a cell. */
  @Test
  void keepsSpaces() {
    assertThat(cells("a, b ,c")).isEqualTo(List.of(List.of("a", " b ", "c")));
  }

  /** What spreadsheets write (common practice). */
  @Test
  void takesOtherSeparatorsMarksAndBlankLines() {
    assertThat(cells("\uFEFFid;x\r\n\r\n;;\r\n1;2,5\r\n"))
        .isEqualTo(List.of(List.of("id", "x"), List.of("1", "2,5")));
    assertThat(cells("id\tx\n1\t2")).isEqualTo(List.of(List.of("id", "x"), List.of("1", "2")));
    assertThat(cells("\"a;b;c\",x\n1,2"))
        .isEqualTo(List.of(List.of("a;b;c", "x"), List.of("1", "2")));
  }

  /** An inch mark inside a cell opens nothing: no line may vanish behind it. */
  @Test
  void takesQuotesWithinCellsAsText() {
    assertThat(cells("id,name\nT1,a\nT2,1/2\" EM\nT3,1/4\" EM\nT4,b\n"))
        .isEqualTo(
            List.of(
                List.of("id", "name"),
                List.of("T1", "a"),
                List.of("T2", "1/2\" EM"),
                List.of("T3", "1/4\" EM"),
                List.of("T4", "b")));
    assertThat(cells("id,name\nT2,1/2\" EM\nT3,b\nT4,c\n")).hasSize(4);
    assertThat(cells("id;a\n1;x,\"y\n2;z\n")).hasSize(3);
  }

  @Test
  void numbersTheLinesAtWhichRecordsBegin() {
    byte[] text = "id,x\n\n\"a\nb\",1\nc,2\n".getBytes(StandardCharsets.UTF_8);
    assertThat(records(text).stream().map(Csv::line)).containsExactly(1L, 3L, 5L);
  }

  @Test
  void goesOnAfterWhatCannotBeRead() {
    StringBuilder open = new StringBuilder("id,x\n\"never closed,1\n");
    for (int i = 0; i < 60; i++) {
      open.append("n").append(i).append(",2\n");
    }
    List<Csv> records = records(open.toString().getBytes(StandardCharsets.UTF_8));
    assertThat(records.get(1).fault()).contains("quote");
    assertThat(records.get(1).line()).isEqualTo(2);
    assertThat(records.get(records.size() - 1).cells()).isEqualTo(List.of("n59", "2"));

    byte[] latin = "id,x\nM\u00fcller,1\nb,2\n".getBytes(StandardCharsets.ISO_8859_1);
    List<Csv> wrong = records(latin);
    assertThat(wrong.get(1).fault()).contains("UTF-8");
    assertThat(wrong.get(2).cells()).isEqualTo(List.of("b", "2"));

    String tooLong = "id,x\n" + "y".repeat(CsvRecords.LONGEST_BYTES + 10) + ",1\nb,2\n";
    List<Csv> cut = records(tooLong.getBytes(StandardCharsets.UTF_8));
    assertThat(cut.get(1).fault()).contains("longer");
    assertThat(cut.get(2).cells()).isEqualTo(List.of("b", "2"));
  }

  /** Whatever is in the cells, what was written by the rules of RFC 4180 comes back. */
  @Test
  void readsBackWhatWasWritten() {
    for (long seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      char separator = ",;\t".charAt(random.nextInt(3));
      List<List<String>> table = new ArrayList<>();
      StringBuilder text = new StringBuilder("id" + separator + "b" + separator + "c\r\n");
      table.add(List.of("id", "b", "c"));
      for (int row = 0; row < 5; row++) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
          cells.add(i == 0 ? "r" + row : cell(random));
          text.append(i == 0 ? "" : separator);
          text.append('"').append(cells.get(i).replace("\"", "\"\"")).append('"');
        }
        table.add(cells);
        text.append("\r\n");
      }
      assertThat(cells(text.toString())).as("seed %d", seed).isEqualTo(table);
    }
  }

  private static String cell(Random random) {
    String alphabet = "ab\",;\t\n é€😀=";
    StringBuilder cell = new StringBuilder();
    int length = random.nextInt(8);
    for (int i = 0; i < length; i++) {
      cell.appendCodePoint(
          alphabet.codePointAt(alphabet.offsetByCodePoints(0, random.nextInt(12))));
    }
    return cell.toString();
  }
}
