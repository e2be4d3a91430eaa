package org.gaugeline.formats;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Severity;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListFinding;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.toollist.Totals;
import org.gaugeline.wording.Words;

/**
 * A checked list as CSV (RFC 4180, comma, UTF-8): a row a line as soon as it is judged, then one
 * for each finding of the list, named {@code list}, and last one named {@code totals}, so that a
 * table that was cut off shows. Keeps nothing: for lists of any length. For one thread.
 */
public final class CsvReport implements LineSink {
  private final CsvRows rows;
  private final FindingTexts texts;

  /**
   * Begins a report; the names of the columns are written with the first row.
   *
   * @param out takes whole rows in UTF-8; neither flushed nor closed
   */
  public CsvReport(OutputStream out, Words words) {
    this.rows = new CsvRows(out);
    this.texts = new FindingTexts(words);
  }

  @Override
  public void line(LineResult line) throws IOException {
    if (line instanceof JudgedLine judged) {
      judged(judged);
    } else if (line instanceof RefusedLine refused) {
      refused(refused);
    }
  }

  private void judged(JudgedLine line) throws IOException {
    List<Finding> findings = Hardness.hardestFirst(line.findings());
    CsvRow row = new CsvRow();
    row.put(CsvColumn.ID, line.place().id());
    row.put(CsvColumn.LINE, line.place().line());
    row.put(CsvColumn.VERDICT, line.verdict().id());
    row.put(CsvColumn.ERRORS, count(findings, Severity.ERROR));
    row.put(CsvColumn.WARNINGS, count(findings, Severity.WARNING));
    row.put(CsvColumn.NOTES, count(findings, Severity.NOTE));
    row.put(CsvColumn.CODES, codes(findings.stream().map(Finding::code).toList()));
    if (!findings.isEmpty()) {
      Finding hardest = findings.get(0);
      row.put(CsvColumn.TEXT, texts.of(hardest, line.job()));
      row.put(CsvColumn.POINTER, hardest.pointer());
      numbers(row, hardest.reason());
    }
    limits(row, line.limits());
    rows.write(row);
  }

  private static long count(List<Finding> findings, Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  private static String codes(List<String> codes) {
    Set<String> once = new LinkedHashSet<>(codes);
    return String.join(" ", once);
  }

  private static void numbers(CsvRow row, Reason reason) {
    Measure measure = reason.measure();
    row.put(CsvColumn.DEMAND, NumberText.of(measure.fromSi(reason.demand())));
    row.put(CsvColumn.CAPACITY, NumberText.of(measure.fromSi(reason.capacity())));
    if (Double.isFinite(reason.demand()) || Double.isFinite(reason.capacity())) {
      row.put(CsvColumn.UNIT, measure.unit());
    }
  }

  private static void limits(CsvRow row, Limits limits) {
    limit(row, CsvColumn.SPINDLE_SPEED_LIMIT_RPM, limits.spindleSpeedRadPerS(), UnitSuffix.RPM);
    limit(row, CsvColumn.AXIAL_DEPTH_LIMIT_MM, limits.axialDepthM(), UnitSuffix.MM);
    limit(row, CsvColumn.FEED_PER_TOOTH_LIMIT_MM, limits.feedPerToothM(), UnitSuffix.MM);
    limit(row, CsvColumn.STICK_OUT_LIMIT_MM, limits.stickOutM(), UnitSuffix.MM);
    limit(row, CsvColumn.TORQUE_LIMIT_NM, limits.torqueNm(), UnitSuffix.NM);
    limit(row, CsvColumn.AXIAL_FORCE_LIMIT_N, limits.axialForceN(), UnitSuffix.N);
    limit(row, CsvColumn.FEATURE_DEPTH_LIMIT_MM, limits.featureDepthM(), UnitSuffix.MM);
  }

  private static void limit(CsvRow row, CsvColumn column, Limit limit, UnitSuffix unit) {
    double told = limit.told(unit);
    row.put(column, told == Double.POSITIVE_INFINITY ? "unbounded" : NumberText.of(told));
  }

  private void refused(RefusedLine line) throws IOException {
    List<Refusal> faults = Refusal.of(line);
    CsvRow row = new CsvRow();
    row.put(CsvColumn.ID, line.place().id());
    row.put(CsvColumn.LINE, line.place().line());
    row.put(CsvColumn.VERDICT, "problem");
    row.put(CsvColumn.CODES, codes(faults.stream().map(Refusal::code).toList()));
    row.put(CsvColumn.TEXT, faults.stream().map(Refusal::detail).collect(Collectors.joining(" ")));
    row.put(CsvColumn.POINTER, faults.get(0).pointer());
    rows.write(row);
  }

  private void listed(ListFinding finding) throws IOException {
    CsvRow row = new CsvRow();
    row.put(CsvColumn.ID, "list");
    if (!finding.places().isEmpty()) {
      row.put(CsvColumn.LINE, finding.places().get(0).line());
    }
    row.put(severity(finding.severity()), 1);
    row.put(CsvColumn.CODES, finding.code().id());
    row.put(CsvColumn.TEXT, texts.of(finding));
    row.put(CsvColumn.DEMAND, NumberText.of(finding.demand()));
    row.put(CsvColumn.CAPACITY, NumberText.of(finding.capacity()));
    rows.write(row);
  }

  private static CsvColumn severity(Severity severity) {
    return switch (severity) {
      case ERROR -> CsvColumn.ERRORS;
      case WARNING -> CsvColumn.WARNINGS;
      case NOTE -> CsvColumn.NOTES;
    };
  }

  @Override
  public void end(ListSummary summary) throws IOException {
    for (ListFinding finding : summary.findings()) {
      listed(finding);
    }
    Totals totals = summary.totals();
    CsvRow row = new CsvRow();
    row.put(CsvColumn.ID, "totals");
    row.put(CsvColumn.VERDICT, summary.passed() ? "passed" : "failed");
    row.put(CsvColumn.ERRORS, totals.errors());
    row.put(CsvColumn.WARNINGS, totals.warnings());
    row.put(CsvColumn.NOTES, totals.notes());
    row.put(
        CsvColumn.TEXT,
        "lines %d, fit %d, fit-with-cautions %d, unfit %d, problem %d"
            .formatted(
                totals.lines(),
                totals.fit(),
                totals.fitWithCautions(),
                totals.unfit(),
                totals.problems()));
    rows.write(row);
  }
}
