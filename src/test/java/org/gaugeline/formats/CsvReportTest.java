package org.gaugeline.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Severity;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LineResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** CSV reports read again by a reader of the test's own, straight from the grammar of RFC 4180. */
class CsvReportTest {
  private static final int COLUMNS = 19;

  private static byte[] bytes(List<LineResult> lines) throws IOException {
    return SampleLines.written(out -> new CsvReport(out, SampleLines.WORDS), lines, FailOn.ERROR);
  }

  /** Records of RFC 4180; anything that the grammar does not know fails. */
  private static List<List<String>> read(String csv) {
    List<List<String>> records = new ArrayList<>();
    List<String> fields = new ArrayList<>();
    int at = 0;
    while (at < csv.length()) {
      StringBuilder field = new StringBuilder();
      if (csv.charAt(at) == '"') {
        at++;
        while (csv.charAt(at) != '"' || csv.startsWith("\"\"", at)) {
          at += csv.charAt(at) == '"' ? 1 : 0;
          field.append(csv.charAt(at++));
        }
        at++;
      } else {
        while (",\r".indexOf(csv.charAt(at)) < 0) {
          assertThat("\"\n".indexOf(csv.charAt(at))).as("bare at %d", at).isNegative();
          field.append(csv.charAt(at++));
        }
      }
      fields.add(field.toString());
      if (csv.charAt(at) == ',') {
        at++;
      } else {
        assertThat(csv.substring(at, at + 2)).isEqualTo("\r\n");
        at += 2;
        records.add(List.copyOf(fields));
        fields.clear();
      }
    }
    assertThat(fields).as("the last record ends").isEmpty();
    return records;
  }

  private static List<List<String>> rows(List<LineResult> lines) throws IOException {
    return read(SampleLines.utf8(bytes(lines)));
  }

  private static String cell(List<String> row, CsvColumn column) {
    return row.get(column.ordinal());
  }

  @Test
  void everyRowHasEveryColumn() throws IOException {
    List<List<String>> rows = rows(SampleLines.all());
    assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(COLUMNS));
    assertThat(rows.get(0))
        .startsWith("id", "line", "verdict", "errors", "warnings", "notes", "codes", "text")
        .endsWith("torqueLimitNm", "axialForceLimitN", "featureDepthLimitMm");
    assertThat(rows.get(1)).startsWith("T01", "1", "unfit");
  }

  @Test
  void aRowTellsItsHardestFinding() throws IOException {
    List<String> row =
        rows(List.of(SampleLines.found("T1", 1, Severity.NOTE, Severity.ERROR, Severity.WARNING)))
            .get(1);
    assertThat(row).startsWith("T1", "1", "unfit", "1", "1", "1", "runout pull-out slip");
    assertThat(cell(row, CsvColumn.POINTER)).isEqualTo("/assembly");
  }

  @Test
  void limitsAreRoundedDownOrUnboundedOrEmpty() throws IOException {
    JudgedLine line = SampleLines.found("T1", 1);
    Limits limits = line.limits();
    List<String> row = rows(List.of(line)).get(1);
    double speedRpm = limits.spindleSpeedRadPerS().value() * 60 / (2 * Math.PI);
    assertThat(speedRpm).isPositive();
    assertThat(cell(row, CsvColumn.SPINDLE_SPEED_LIMIT_RPM))
        .isEqualTo(
            Double.isInfinite(speedRpm)
                ? "unbounded"
                : NumberText.of(SixDigits.roundDown(speedRpm)));
    double depthMm = limits.axialDepthM().value() * 1e3;
    assertThat(depthMm).isPositive().isFinite();
    assertThat(Double.parseDouble(cell(row, CsvColumn.AXIAL_DEPTH_LIMIT_MM)))
        .isBetween(depthMm * (1 - 1e-5), depthMm);
    Limit free = new Limit(Double.POSITIVE_INFINITY, "");
    Limit none = new Limit(Double.NaN, "slip");
    Limit third = new Limit(1.0 / 3, "slip");
    Limits mixed = new Limits(free, none, third, third, free, none, new Limit(-1e-9, "gap"));
    List<String> told = rows(List.of(SampleLines.limited("T1", mixed))).get(1);
    assertThat(told.subList(CsvColumn.UNIT.ordinal() + 1, COLUMNS))
        .containsExactly("unbounded", "333.333", "unbounded", "", "", "0.333333", "0");
    List<String> refused = rows(List.of(SampleLines.refused("T1", 1))).get(1);
    assertThat(refused.subList(CsvColumn.UNIT.ordinal(), COLUMNS)).containsOnly("");
  }

  @Test
  void refusedLinesAreProblems() throws IOException {
    List<String> row = rows(SampleLines.all()).get(5);
    assertThat(row).startsWith("T05", "5", "problem", "", "", "", "out-of-range");
    assertThat(cell(row, CsvColumn.TEXT)).isEqualTo("'-4 mm 0 teeth");
    assertThat(cell(row, CsvColumn.POINTER)).isEqualTo("/tool/diameterMm");
  }

  @Test
  void endsWithTheListAndTheTotals() throws IOException {
    List<List<String>> rows = rows(SampleLines.all());
    List<String> last = rows.get(rows.size() - 1);
    assertThat(last).startsWith("totals", "", "failed");
    assertThat(cell(last, CsvColumn.TEXT)).startsWith("lines 8, ").endsWith("problem 2");
    assertThat(rows)
        .filteredOn(row -> row.get(0).equals("list"))
        .extracting(row -> cell(row, CsvColumn.CODES))
        .containsExactly("unknown-column", "duplicate-id", "holder-asked-twice");
    assertThat(rows(List.of())).hasSize(3);
    assertThat(rows(List.of()).get(2)).startsWith("totals", "", "passed", "0", "0", "1");
  }

  /** A reader at the other end has a line before the next one is judged. */
  @Test
  void rowsLeaveWholeAndAtOnce() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvReport report = new CsvReport(out, SampleLines.WORDS);
    int records = 1;
    for (LineResult line : SampleLines.all()) {
      report.line(line);
      assertThat(read(SampleLines.utf8(out.toByteArray()))).hasSize(++records);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain",
        "comma, inside",
        "\"quoted\"",
        "one \" quote",
        "two\r\nlines",
        "two\nlines",
        "ends in \r",
        " blanks ",
        "",
        "T\u00E4 \uD83D\uDD27",
      })
  void cellsAreReadAsTheyWere(String id) throws IOException {
    assertThat(rows(List.of(SampleLines.found(id, 1))).get(1).get(0)).isEqualTo(id);
  }

  static List<List<String>> cells() {
    return List.of(
        List.of("=1+2", "'=1+2"),
        List.of("+SUM(A1)", "'+SUM(A1)"),
        List.of("-cmd", "'-cmd"),
        List.of("@x", "'@x"),
        List.of("\tx", "'\tx"),
        List.of("\rx", "'\rx"),
        List.of("\n=x", "'\n'=x"),
        List.of("  =x", "'  =x"),
        List.of("\u00A0\u200B\uFEFF=x", "'\u00A0\u200B\uFEFF=x"),
        List.of("\"=x", "'\"=x"),
        List.of("'=x", "''=x"),
        List.of("\uFF1Dx", "'\uFF1Dx"),
        List.of("a;=x", "a;'=x"),
        List.of("a; \"+x|@y", "a;' \"+x|'@y"),
        List.of("a\r\n=x", "a\r\n'=x"),
        List.of("-12.5", "-12.5"),
        List.of("+3", "+3"),
        List.of("-1e-7", "-1e-7"),
        List.of("-1+2", "'-1+2"),
        List.of("-1 mm", "'-1 mm"),
        List.of("a=b", "a=b"),
        List.of("T-1", "T-1"),
        List.of("one\r\ntwo; three", "one\r\ntwo; three"),
        List.of("bell\u0007, nul\u0000, half \uD83D", "bell, nul, half "),
        List.of("\u0001=x", "'=x"),
        List.of("", ""));
  }

  @ParameterizedTest
  @MethodSource("cells")
  void formulasAreDefused(List<String> cell) {
    assertThat(Cell.text(cell.get(0))).isEqualTo(cell.get(1));
  }

  @Test
  void sameBytesTwice() throws IOException {
    assertThat(bytes(SampleLines.all())).isEqualTo(bytes(SampleLines.all()));
  }
}
