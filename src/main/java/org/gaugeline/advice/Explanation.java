package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.Candidates;
import org.gaugeline.assembly.Part;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.LimitSolver;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Reasons;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.Standing;
import org.gaugeline.assessment.TiltSearch;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/** Turns a ranking into the answer: the shown assemblies in full, and why the others lost. */
final class Explanation {
  private final JobContext context;
  private final ReferenceData data;
  private final Candidates.Composed composed;
  private final Ranking ranking;
  private final LimitSolver limits;

  /** What the shop does now; null where it owns nothing for the job. */
  private final @Nullable Weighed now;

  /** When a heat unit would pay; null where none is missing or it never does. */
  private final @Nullable BreakEven heatUnit;

  private final NearestFit nearest;

  private final IdentityHashMap<Weighed, String> ids = new IdentityHashMap<>();

  Explanation(
      JobContext context,
      ReferenceData data,
      Candidates.Composed composed,
      Ranking ranking,
      @Nullable BreakEven heatUnit,
      NearestFit nearest) {
    this.context = context;
    this.data = data;
    this.composed = composed;
    this.ranking = ranking;
    this.now = BreakEven.now(ranking);
    this.heatUnit = heatUnit;
    this.nearest = nearest;
    this.limits = new LimitSolver(context);
  }

  Recommendation recommendation() {
    List<RankedAssembly> shown = assemblies(ranking.shown(), "a", true);
    List<RankedAssembly> flagged = assemblies(ranking.flagged(), "f", false);
    NearestFit.Found would = shown.isEmpty() ? nearest.among(flagged) : NearestFit.Found.NOTHING;
    return new Recommendation(
        context.job(),
        context.loads(),
        context.demands(),
        families(),
        shown,
        flagged,
        new Recommendation.Weighed(ranking.all().size(), lostBy()),
        ruledOut(),
        Cautions.ofJob(context, ranking, heatUnit, would.assemblyId()),
        would.changes());
  }

  private List<RankedAssembly> assemblies(List<Weighed> weighed, String prefix, boolean shown) {
    List<RankedAssembly> assemblies = new ArrayList<>(weighed.size());
    for (Weighed one : weighed) {
      String id = prefix + (assemblies.size() + 1);
      ids.put(one, id);
      assemblies.add(assembly(id, one, shown));
    }
    return assemblies;
  }

  private RankedAssembly assembly(String id, Weighed weighed, boolean shown) {
    Limits solved = limits.solve(weighed.appraisal());
    List<Part> parts = Components.of(context, weighed.appraisal(), List.of());
    return new RankedAssembly(
        id,
        ranking.rank(weighed),
        weighed.appraisal().assembly(),
        parts,
        weighed.appraisal().standing(),
        weighed.scores(),
        context.probability(weighed.appraisal()),
        weighed.appraisal().geometry(),
        context.predicted(weighed.appraisal()),
        solved,
        shown ? context.stableSpeeds(weighed.appraisal()) : List.of(),
        SetUp.steps(context, weighed.appraisal(), parts, solved),
        weighed.economics().with(BreakEven.of(context, weighed, now)),
        reasons(weighed),
        AssemblyCautions.of(context, weighed.appraisal()));
  }

  private List<Reason> reasons(Weighed weighed) {
    Reason tilt = TiltSearch.reason(context, weighed.appraisal());
    if (tilt == null) {
      return Reasons.of(weighed.appraisal());
    }
    List<Reason> reasons = new ArrayList<>(Reasons.of(weighed.appraisal()));
    reasons.add(0, tilt);
    return List.copyOf(reasons);
  }

  private List<Recommendation.FamilyVerdict> families() {
    List<Recommendation.FamilyVerdict> verdicts = new ArrayList<>();
    for (ClampingFamily family : data.families().values()) {
      Weighed best = ranking.bestOfFamily().get(family.id());
      Candidates.Absence absence = composed.absent().get(family.id());
      if (absence != null) {
        Reason reason = Absences.reason(context.job(), family, absence);
        verdicts.add(
            new Recommendation.FamilyVerdict(
                family, Standing.UNAVAILABLE, Scores.NONE, List.of(reason), null));
      } else if (best != null) {
        verdicts.add(
            new Recommendation.FamilyVerdict(
                family,
                best.appraisal().standing(),
                best.scores(),
                Reasons.decisive(best.appraisal()),
                ids.get(best)));
      }
    }
    return verdicts;
  }

  /**
   * What the candidates that are not shown lost by, in the order of the criteria; a stable depth
   * that is only predicted lets nothing lose.
   */
  private Map<String, Integer> lostBy() {
    int[] lost = new int[Criterion.values().length];
    for (Weighed weighed : ranking.all()) {
      if (!ranking.isShown(weighed)) {
        lost[weighed.appraisal().weakest().ordinal()]++;
      }
    }
    Map<String, Integer> byWord = new LinkedHashMap<>();
    for (Criterion criterion : Criterion.values()) {
      if (lost[criterion.ordinal()] > 0) {
        byWord.put(criterion.id(), lost[criterion.ordinal()]);
      }
    }
    return byWord;
  }

  private List<Recommendation.RuledOut> ruledOut() {
    List<Recommendation.RuledOut> out = new ArrayList<>();
    composed
        .absent()
        .forEach(
            (id, absence) -> {
              ClampingFamily family = data.families().get(id);
              if (family != null) {
                Reason reason = Absences.reason(context.job(), family, absence);
                out.add(
                    new Recommendation.RuledOut(
                        family,
                        reason,
                        Absences.changes(context.job(), family, absence),
                        equipment(id)));
              }
            });
    return out;
  }

  private Recommendation.@Nullable Equipment equipment(String familyId) {
    return heatUnit == null || !composed.unequipped().containsKey(familyId)
        ? null
        : new Recommendation.Equipment(context.practice("heatUnitPrice"), heatUnit);
  }
}
