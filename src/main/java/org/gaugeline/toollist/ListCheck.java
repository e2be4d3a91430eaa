package org.gaugeline.toollist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.advice.Verdict;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Severity;
import org.gaugeline.job.Job;

/**
 * Sees all lines of one list, one after the other, and keeps of each only what the list as a whole
 * needs. What it keeps is bounded: lines beyond {@value #MOST_COMPARED} are counted and judged, but
 * not compared with others. For one thread.
 */
public final class ListCheck {
  /** Lines that are compared with one another. */
  public static final int MOST_COMPARED = 100_000;

  private static final int MOST_MACHINES = 1000;

  private final FailOn failOn;
  private final Stock stock;
  private final Map<String, Places> ids = new LinkedHashMap<>();
  private final Map<String, Places> holders = new LinkedHashMap<>();
  private final Map<Job.Machine, Magazine> magazines = new LinkedHashMap<>();
  private final Map<Verdict, Long> verdicts = new EnumMap<>(Verdict.class);
  private final Map<Severity, Long> severities = new EnumMap<>(Severity.class);
  private final List<ListFinding> told = new ArrayList<>();
  private long problems;
  private long seen;

  /**
   * Begins a list.
   *
   * @param stock what the shop owns
   */
  public ListCheck(FailOn failOn, Stock stock) {
    this.failOn = failOn;
    this.stock = stock;
  }

  /**
   * The holders that all lines share.
   *
   * @param counts how many there are of each reference; empty where no stock was listed
   * @param only whether nothing else may be used
   */
  public record Stock(Map<String, Integer> counts, boolean only) {
    /** No stock was listed: nothing can be missing. */
    public static final Stock UNLISTED = new Stock(Map.of(), false);
  }

  /** Notes a column that was not read. */
  public void unknownColumn(String name) {
    told.add(
        new ListFinding(
            ListCode.UNKNOWN_COLUMN, Severity.NOTE, name, Double.NaN, Double.NaN, List.of()));
  }

  /** Takes the next line. */
  public void add(LineResult line) {
    seen++;
    if (seen <= MOST_COMPARED && line.place().named()) {
      ids.computeIfAbsent(line.place().id(), id -> new Places()).add(line.place());
    }
    if (line instanceof JudgedLine judged) {
      verdicts.merge(judged.verdict(), 1L, Long::sum);
      for (Finding finding : judged.findings()) {
        severities.merge(finding.severity(), 1L, Long::sum);
      }
      if (seen <= MOST_COMPARED) {
        compare(judged);
      }
    } else {
      problems++;
    }
  }

  private void compare(JudgedLine line) {
    for (String ref : line.holderRefs()) {
      holders.computeIfAbsent(ref, key -> new Places()).add(line.place());
    }
    Job.Machine machine = line.job().machine();
    if (magazines.containsKey(machine) || magazines.size() < MOST_MACHINES) {
      magazines.computeIfAbsent(machine, key -> new Magazine()).add(line);
    }
  }

  /** Everything that is said of the list as a whole. */
  public ListSummary finish() {
    List<ListFinding> findings = new ArrayList<>(told);
    ids.forEach((id, places) -> duplicate(id, places, findings));
    holders.forEach((ref, places) -> stock(ref, places, findings));
    magazines.forEach((machine, magazine) -> magazine(machine, magazine, findings));
    if (seen > MOST_COMPARED) {
      findings.add(
          new ListFinding(
              ListCode.LIST_NOT_FULLY_COMPARED, Severity.NOTE, "", seen, MOST_COMPARED, List.of()));
    }
    for (ListFinding finding : findings) {
      severities.merge(finding.severity(), 1L, Long::sum);
    }
    return new ListSummary(List.copyOf(findings), totals(), passed());
  }

  private static void duplicate(String id, Places places, List<ListFinding> findings) {
    if (places.count() > 1) {
      findings.add(
          new ListFinding(
              ListCode.DUPLICATE_ID, Severity.ERROR, id, places.count(), 1, places.first()));
    }
  }

  private void stock(String ref, Places places, List<ListFinding> findings) {
    if (stock.counts().isEmpty()) {
      return;
    }
    Severity severity = stock.only() ? Severity.ERROR : Severity.WARNING;
    Integer owned = stock.counts().get(ref);
    if (owned == null) {
      findings.add(
          new ListFinding(
              ListCode.STOCK_MISSING, severity, ref, places.count(), 0, places.first()));
    } else if (places.count() > owned) {
      findings.add(
          new ListFinding(
              ListCode.HOLDER_ASKED_TWICE, severity, ref, places.count(), owned, places.first()));
    }
  }

  private static void magazine(Job.Machine machine, Magazine magazine, List<ListFinding> findings) {
    String spindle = machine.spindle().id();
    Places large = magazine.large();
    if (large.count() > 0) {
      findings.add(
          new ListFinding(
              ListCode.NEIGHBOURS_EMPTY,
              Severity.NOTE,
              spindle,
              large.count(),
              magazine.needed(),
              large.first()));
    }
    if (magazine.pockets() > 0 && magazine.needed() > magazine.pockets()) {
      findings.add(
          new ListFinding(
              ListCode.MAGAZINE_FULL,
              Severity.ERROR,
              spindle,
              magazine.needed(),
              magazine.pockets(),
              List.of()));
    }
  }

  private Totals totals() {
    return new Totals(
        verdicts.getOrDefault(Verdict.FIT, 0L),
        verdicts.getOrDefault(Verdict.FIT_WITH_CAUTIONS, 0L),
        verdicts.getOrDefault(Verdict.UNFIT, 0L),
        problems,
        severities.getOrDefault(Severity.ERROR, 0L),
        severities.getOrDefault(Severity.WARNING, 0L),
        severities.getOrDefault(Severity.NOTE, 0L));
  }

  private boolean passed() {
    for (Map.Entry<Severity, Long> counted : severities.entrySet()) {
      if (counted.getValue() > 0 && failOn.failedBy(counted.getKey())) {
        return false;
      }
    }
    return problems == 0;
  }
}
