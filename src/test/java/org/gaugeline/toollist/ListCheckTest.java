package org.gaugeline.toollist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.Verdict;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Severity;
import org.gaugeline.assessment.Tone;
import org.gaugeline.job.Job;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What shows only when all lines are seen, and what passes. */
class ListCheckTest {
  private static final Job JOB = job();

  private static Job job() {
    Intents least = Intents.of("side-milling", "end-mill", 12, "42CrMo4", "HSK-A63");
    return Bench.ADVISOR.recommend(least.intent()).job();
  }

  private static JudgedLine line(
      long number,
      String id,
      Verdict verdict,
      List<Finding> findings,
      List<String> refs,
      int pockets) {
    Limit none = new Limit(Double.POSITIVE_INFINITY, "gap");
    return new JudgedLine(
        new LinePlace(id, number, number, true),
        JOB,
        verdict,
        findings,
        new Limits(none, none, none, none, none, none, none),
        List.of(),
        refs,
        pockets);
  }

  private static Finding finding(String code, Severity severity) {
    return new Finding(
        code,
        severity,
        new Reason(Criterion.GRIP, code, Tone.AGAINST, 1, 1, Measure.COUNT, "", List.of("given")),
        "");
  }

  private static JudgedLine plain(long number, String... refs) {
    return line(number, "T" + number, Verdict.FIT, List.of(), List.of(refs), 0);
  }

  /**
   * Pockets of a ring: large tools side by side with one empty pocket between two of them (plane
   * counting; a ring of eight holds four large ones, or three and one ordinary).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 8, false",
    "8, 0, 8, false",
    "9, 0, 8, true",
    "0, 4, 8, false",
    "0, 5, 8, true",
    "1, 3, 8, false",
    "2, 3, 8, true",
    "5, 1, 8, false",
    "6, 1, 8, true"
  })
  void countsPockets(int ordinary, int large, int pockets, boolean full) {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    Finding neighbours = finding("neighbour-pockets-empty", Severity.NOTE);
    for (int i = 0; i < ordinary + large; i++) {
      List<Finding> findings = i < large ? List.of(neighbours) : List.of();
      check.add(line(i + 1, "T" + i, Verdict.FIT, findings, List.of(), pockets));
    }
    ListSummary summary = check.finish();
    assertThat(summary.findings().stream().map(ListFinding::code).toList())
        .as("%d ordinary and %d large in %d", ordinary, large, pockets)
        .matches(codes -> codes.contains(ListCode.MAGAZINE_FULL) == full)
        .matches(codes -> codes.contains(ListCode.NEIGHBOURS_EMPTY) == large > 0);
    assertThat(summary.passed()).isEqualTo(!full);
  }

  @Test
  void comparesWithTheStock() {
    for (boolean only : new boolean[] {false, true}) {
      ListCheck check =
          new ListCheck(FailOn.ERROR, new ListCheck.Stock(Map.of("a", 1, "b", 2), only));
      check.add(plain(1, "a"));
      check.add(plain(2, "a", "b"));
      check.add(plain(3, "b"));
      check.add(plain(4, "c"));
      ListSummary summary = check.finish();
      Severity severity = only ? Severity.ERROR : Severity.WARNING;
      assertThat(summary.findings())
          .containsExactly(
              new ListFinding(
                  ListCode.HOLDER_ASKED_TWICE,
                  severity,
                  "a",
                  2,
                  1,
                  List.of(new LinePlace("T1", 1, 1, true), new LinePlace("T2", 2, 2, true))),
              new ListFinding(
                  ListCode.STOCK_MISSING,
                  severity,
                  "c",
                  1,
                  0,
                  List.of(new LinePlace("T4", 4, 4, true))));
      assertThat(summary.passed()).isEqualTo(!only);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "error, error, false", "error, warning, true", "error, note, true",
    "warning, error, false", "warning, warning, false", "warning, note, true"
  })
  void failsOnWhatTheCallerAsks(String failOn, String severity, boolean passes) {
    Severity hard = Severity.valueOf(severity.toUpperCase(Locale.ROOT));
    ListCheck check =
        new ListCheck(
            failOn.equals("error") ? FailOn.ERROR : FailOn.WARNING, ListCheck.Stock.UNLISTED);
    check.add(line(1, "a", Verdict.FIT, List.of(finding("slip", hard)), List.of(), 0));
    assertThat(check.finish().passed()).isEqualTo(passes);
  }

  @Test
  void failsOnALineThatCannotBeRead() {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    check.add(
        new RefusedLine(new LinePlace("a", 1, 1, true), "invalid-intent", "", 422, "", List.of()));
    ListSummary summary = check.finish();
    assertThat(summary.passed()).isFalse();
    assertThat(summary.totals()).isEqualTo(new Totals(0, 0, 0, 1, 0, 0, 0));
  }

  @Test
  void comparesOnlyIdsThatTheCallerGave() {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    for (int i = 1; i <= 2; i++) {
      check.add(
          new RefusedLine(
              new LinePlace("finish", i, i, false), "invalid-intent", "", 422, "", List.of()));
    }
    assertThat(check.finish().findings()).isEmpty();
  }

  /** Which line says how many pockets there are does not matter. */
  @ParameterizedTest
  @CsvSource({"0, 1", "1, 0", "1, 5"})
  void takesThePocketsFromWhicheverLineSaysThem(int first, int second) {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    check.add(line(1, "a", Verdict.FIT, List.of(), List.of(), first));
    check.add(line(2, "b", Verdict.FIT, List.of(), List.of(), second));
    assertThat(check.finish().findings())
        .extracting(ListFinding::code)
        .containsExactly(ListCode.MAGAZINE_FULL);
  }

  @Test
  void remembersOnlySoMany() {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    LongStream.rangeClosed(1, ListCheck.MOST_COMPARED + 5L).forEach(n -> check.add(plain(n)));
    check.add(line(1, "T1", Verdict.FIT, List.of(), List.of(), 0));
    ListSummary summary = check.finish();
    assertThat(summary.findings()).hasSize(1);
    assertThat(summary.findings().get(0).code()).isEqualTo(ListCode.LIST_NOT_FULLY_COMPARED);
    assertThat(summary.totals().lines()).isEqualTo(ListCheck.MOST_COMPARED + 6L);
  }

  @Test
  void tellsDuplicateIdsOnceWithTheirFirstLines() {
    ListCheck check = new ListCheck(FailOn.ERROR, ListCheck.Stock.UNLISTED);
    for (int i = 1; i <= 30; i++) {
      check.add(line(i, "same", Verdict.FIT, List.of(), List.of(), 0));
    }
    List<ListFinding> findings = check.finish().findings();
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).demand()).isEqualTo(30);
    assertThat(findings.get(0).places()).hasSize(ListFinding.MOST_PLACES);
  }
}
