package org.gaugeline.formats;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.gaugeline.advice.Assessment;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.Verdict;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LinePlace;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListCheck;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.wording.TemplateWords;
import org.gaugeline.wording.Words;

/** Judged and refused lines of a pump maker's list. */
final class SampleLines {
  static final Words WORDS = TemplateWords.load();

  /** What strikes every text format somewhere. */
  static final String AWKWARD = "T\"1\" <&> 'x', ;\r\n\u0007\uD83D\uDD27[a](0){1}]]>";

  private static final Assessor ASSESSOR = new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR);
  private static final HolderBody HOLDER = Bench.holder("HSK-A63", "shrink-fit", 12, 80, true);
  private static final Intents JOB =
      Intents.of("side-milling", "end-mill", 12, "42CrMo4", "HSK-A63")
          .with("/operation/axialDepthMm", 5);
  private static final Assessment GOOD = assess(JOB);
  private static final Assessment WRONG_SPINDLE =
      assess(JOB.with("/machine/interface", "HSK-A100"));

  private SampleLines() {}

  private static Assessment assess(Intents intents) {
    GivenAssembly given =
        new GivenAssembly(
            List.of(
                new GivenAssembly.Component(
                    "/assembly/components/0", null, HOLDER.ref(), InlineHolder.NONE)),
            null,
            Measured.NONE);
    return ASSESSOR.assess(intents.intent(), given, ASSESSOR.judge(intents.intent(), given));
  }

  static LinePlace place(String id, long line) {
    return new LinePlace(id, line, line + 1, true);
  }

  /** A holder that does not fit the spindle, among other things. */
  static JudgedLine unfit(String id, long line) {
    return judged(id, line, WRONG_SPINDLE, WRONG_SPINDLE.findings());
  }

  /** A line with one finding of each given severity and of as many codes, softest first. */
  static JudgedLine found(String id, long line, Severity... severities) {
    Finding like = WRONG_SPINDLE.findings().get(0);
    List<String> codes = List.of("slip", "runout", "pull-out", "holder-speed");
    List<Finding> findings = new ArrayList<>();
    for (Severity severity : severities) {
      findings.add(new Finding(codes.get(findings.size()), severity, like.reason(), "/assembly"));
    }
    return judged(id, line, GOOD, List.copyOf(findings));
  }

  static JudgedLine limited(String id, Limits limits) {
    return new JudgedLine(
        place(id, 1), GOOD.job(), Verdict.FIT, List.of(), limits, List.of(), List.of(), 0);
  }

  private static JudgedLine judged(
      String id, long line, Assessment assessment, List<Finding> findings) {
    return new JudgedLine(
        place(id, line),
        assessment.job(),
        verdict(findings),
        findings,
        assessment.assembly().limits(),
        List.of(),
        List.of(HOLDER.ref()),
        0);
  }

  private static Verdict verdict(List<Finding> findings) {
    Severity hardest =
        findings.stream().map(Finding::severity).max(Severity::compareTo).orElse(Severity.NOTE);
    return switch (hardest) {
      case ERROR -> Verdict.UNFIT;
      case WARNING -> Verdict.FIT_WITH_CAUTIONS;
      case NOTE -> Verdict.FIT;
    };
  }

  static RefusedLine refused(String id, long line, RefusedLine.Fault... faults) {
    return new RefusedLine(
        place(id, line),
        "invalid-request",
        "Not valid",
        400,
        "The line is wrong.",
        List.of(faults));
  }

  static RefusedLine.Fault fault(String pointer, String detail) {
    return new RefusedLine.Fault(pointer, "out-of-range", detail, Map.of());
  }

  /** One of everything. */
  static List<LineResult> all() {
    return List.of(
        unfit("T01", 1),
        found("T02", 2, Severity.NOTE, Severity.WARNING),
        found("T03", 3, Severity.NOTE),
        found("T04", 4),
        refused("T05", 5, fault("/tool/diameterMm", "-4 mm"), fault("/tool/teeth", "0 teeth")),
        refused("T06", 6),
        found("T04", 7, Severity.WARNING),
        found(AWKWARD, 8, Severity.NOTE, Severity.ERROR, Severity.WARNING));
  }

  static ListSummary summary(List<LineResult> lines, FailOn failOn) {
    ListCheck check = new ListCheck(failOn, new ListCheck.Stock(Map.of(HOLDER.ref(), 2), false));
    check.unknownColumn("=remark");
    lines.forEach(check::add);
    return check.finish();
  }

  /** What a report makes of lines. */
  static byte[] written(
      Function<OutputStream, LineSink> report, List<LineResult> lines, FailOn failOn)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LineSink sink = report.apply(out);
    for (LineResult line : lines) {
      sink.line(line);
    }
    sink.end(summary(lines, failOn));
    return out.toByteArray();
  }

  static String utf8(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
