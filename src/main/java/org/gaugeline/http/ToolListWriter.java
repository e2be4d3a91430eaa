package org.gaugeline.http;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.advice.EngineVersion;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LinePlace;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.ListFinding;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.toollist.Totals;
import org.gaugeline.wording.Words;

/** Lines of a list and what is said of the whole, as JSON. */
final class ToolListWriter {
  private final Words words;
  private final String referenceVersion;
  private final AssessmentWriter assessments;

  ToolListWriter(Words words, String referenceVersion) {
    this.words = words;
    this.referenceVersion = referenceVersion;
    this.assessments = new AssessmentWriter(words, referenceVersion);
  }

  void line(JsonBytes json, LineResult result) {
    LinePlace place = result.place();
    json.object();
    json.text("id", place.id());
    json.whole("line", place.line());
    if (place.startLine() != place.line()) {
      json.whole("startLine", place.startLine());
    }
    if (result instanceof JudgedLine judged) {
      json.word("verdict", judged.verdict().id());
      assessments.findings(json, judged.findings(), judged.job());
      AssemblyWriter.limits(json, judged.limits());
      AssemblyWriter.stableSpeeds(json, judged.stableSpeeds());
    } else if (result instanceof RefusedLine refused) {
      json.name("problem");
      ProblemWriter.write(problem(refused), json);
    }
    json.endObject();
  }

  private static Problem problem(RefusedLine refused) {
    List<Fault> faults = new ArrayList<>();
    for (RefusedLine.Fault f : refused.faults()) {
      faults.add(new Fault(f.pointer(), f.code(), f.detail(), f.parameters()));
    }
    return new Problem(refused.kind(), refused.title(), refused.status(), refused.detail(), faults);
  }

  /** The members that say what computed the answer. */
  void versions(JsonBytes json, String inputDigest) {
    json.word("engineVersion", EngineVersion.CURRENT);
    json.word("referenceVersion", referenceVersion);
    json.word("inputDigest", inputDigest);
  }

  void summary(JsonBytes json, ListSummary summary) {
    json.word("verdict", summary.passed() ? "passed" : "failed");
    totals(json, summary.totals());
    json.array("listFindings");
    for (ListFinding finding : summary.findings()) {
      finding(json, finding);
    }
    json.endArray();
  }

  private static void totals(JsonBytes json, Totals totals) {
    json.object("totals");
    json.whole("lines", totals.lines());
    json.whole("fit", totals.fit());
    json.whole("fitWithCautions", totals.fitWithCautions());
    json.whole("unfit", totals.unfit());
    json.whole("problems", totals.problems());
    json.whole("errors", totals.errors());
    json.whole("warnings", totals.warnings());
    json.whole("notes", totals.notes());
    json.endObject();
  }

  private void finding(JsonBytes json, ListFinding finding) {
    json.object();
    json.word("code", finding.code().id());
    json.word("severity", finding.severity().id());
    json.startText("text");
    words.listFinding(json, finding);
    json.endText();
    if (!finding.subject().isEmpty()) {
      json.text("subject", finding.subject());
    }
    json.number("demand", finding.demand());
    json.number("capacity", finding.capacity());
    json.array("lines");
    for (LinePlace place : finding.places()) {
      json.whole(place.line());
    }
    json.endArray();
    json.text("remedy", words.explained(finding.code().id()).remedy());
    json.endObject();
  }
}
