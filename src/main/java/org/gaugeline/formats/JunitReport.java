package org.gaugeline.formats;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListFinding;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.wording.Words;

/**
 * A checked list as a JUnit test report: a test case a line, which fails with its hardest finding
 * or is in error where the line was refused; then one for each finding of the list that fails it,
 * and one, {@code list}, that always passes and tells the others. Keeps all cases until the end,
 * since the counts stand first: for lists of bounded length. For one thread.
 */
public final class JunitReport implements LineSink {
  private final OutputStream out;
  private final FailOn failOn;
  private final FindingTexts texts;
  private final List<JunitCase> cases = new ArrayList<>();

  /**
   * Begins a report; nothing is written before the end.
   *
   * @param out takes UTF-8; flushed at the end, not closed
   * @param failOn the least hard finding that fails a case, the same that the summary was made with
   */
  public JunitReport(OutputStream out, Words words, FailOn failOn) {
    this.out = out;
    this.failOn = failOn;
    this.texts = new FindingTexts(words);
  }

  @Override
  public void line(LineResult line) {
    if (line instanceof JudgedLine judged) {
      cases.add(judged(judged));
    } else if (line instanceof RefusedLine refused) {
      cases.add(refused(refused));
    }
  }

  private JunitCase judged(JudgedLine line) {
    String name = line.place().id();
    List<Finding> findings = Hardness.hardestFirst(line.findings());
    StringBuilder body = new StringBuilder();
    for (Finding finding : findings) {
      tell(body, finding.severity(), finding.code(), texts.of(finding, line.job()));
    }
    if (findings.isEmpty() || !failOn.failedBy(findings.get(0).severity())) {
      return JunitCase.passed(name, body.toString());
    }
    Finding hardest = findings.get(0);
    return new JunitCase(
        name,
        JunitCase.Outcome.FAILURE,
        hardest.code(),
        texts.of(hardest, line.job()),
        body.toString());
  }

  private static JunitCase refused(RefusedLine line) {
    StringBuilder body = new StringBuilder();
    for (Refusal fault : Refusal.of(line)) {
      body.append(fault.code()).append(" at \"").append(fault.pointer()).append("\": ");
      body.append(fault.detail()).append('\n');
    }
    return new JunitCase(
        line.place().id(), JunitCase.Outcome.ERROR, line.kind(), line.detail(), body.toString());
  }

  @Override
  public void end(ListSummary summary) throws IOException {
    StringBuilder told = new StringBuilder();
    for (ListFinding finding : summary.findings()) {
      String code = finding.code().id();
      String text = texts.of(finding);
      if (failOn.failedBy(finding.severity())) {
        StringBuilder body = new StringBuilder();
        tell(body, finding.severity(), code, text);
        cases.add(
            new JunitCase(
                "list " + code + " " + finding.subject(),
                JunitCase.Outcome.FAILURE,
                code,
                text,
                body.toString()));
      } else {
        tell(told, finding.severity(), code, text);
      }
    }
    cases.add(JunitCase.passed("list", told.toString()));
    JunitDocument.write(out, cases, summary);
  }

  private static void tell(StringBuilder body, Severity severity, String code, String text) {
    body.append(severity.id()).append(' ').append(code).append(": ").append(text).append('\n');
  }
}
