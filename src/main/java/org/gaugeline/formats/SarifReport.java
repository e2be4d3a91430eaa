package org.gaugeline.formats;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.LineSink;
import org.gaugeline.toollist.ListCode;
import org.gaugeline.toollist.ListFinding;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.wording.Words;

/**
 * A checked list as SARIF 2.1.0: one run, a result for every finding, every fault of a refused line
 * and every finding of the list, each at its line in the caller's file. Keeps all findings until
 * the end, since rules are named before results: for lists of bounded length. For one thread.
 */
public final class SarifReport implements LineSink {
  private static final String LINE_REFUSED = ListCode.LINE_REFUSED.id();

  private final OutputStream out;
  private final Words words;
  private final String artifactUri;
  private final FindingTexts texts;
  private final Fingerprints fingerprints = new Fingerprints();
  private final List<SarifResult> results = new ArrayList<>();

  /**
   * Begins a report; nothing is written before the end.
   *
   * @param out takes UTF-8; neither flushed nor closed
   * @param artifactUri the caller's name for the file that the lines came from, a relative or
   *     absolute URI or a path; empty where none was given, which is then told as {@code tool-list}
   */
  public SarifReport(OutputStream out, Words words, String artifactUri) {
    this.out = out;
    this.words = words;
    this.artifactUri = ArtifactUri.of(artifactUri);
    this.texts = new FindingTexts(words);
  }

  @Override
  public void line(LineResult line) {
    if (line instanceof JudgedLine judged) {
      judged.findings().forEach(finding -> judged(judged, finding));
    } else if (line instanceof RefusedLine refused) {
      Refusal.of(refused).forEach(fault -> refused(refused, fault));
    }
  }

  private void judged(JudgedLine line, Finding finding) {
    String id = line.place().id();
    Reason reason = finding.reason();
    Measure measure = reason.measure();
    results.add(
        new SarifResult(
            finding.code(),
            finding.severity(),
            id + ": " + texts.of(finding, line.job()),
            List.of(line.place()),
            fingerprints.next(id, finding.code(), finding.pointer()),
            new SarifResult.Details(
                finding.pointer(),
                "",
                measure.fromSi(reason.demand()),
                measure.fromSi(reason.capacity()),
                measure.unit())));
  }

  private void refused(RefusedLine line, Refusal fault) {
    String id = line.place().id();
    results.add(
        new SarifResult(
            LINE_REFUSED,
            Severity.ERROR,
            id + ": " + fault.detail(),
            List.of(line.place()),
            fingerprints.next(id, LINE_REFUSED + "/" + fault.code(), fault.pointer()),
            new SarifResult.Details(fault.pointer(), fault.code(), Double.NaN, Double.NaN, "")));
  }

  private void listed(ListFinding finding) {
    String code = finding.code().id();
    results.add(
        new SarifResult(
            code,
            finding.severity(),
            texts.of(finding),
            finding.places(),
            fingerprints.next(finding.subject(), code, ""),
            new SarifResult.Details("", "", finding.demand(), finding.capacity(), "")));
  }

  @Override
  public void end(ListSummary summary) throws IOException {
    summary.findings().forEach(this::listed);
    new SarifDocument(words, artifactUri).write(out, results, summary);
  }
}
