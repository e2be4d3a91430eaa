package org.gaugeline.ops;

import java.util.List;
import java.util.Map;
import org.gaugeline.advice.Economics;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Geometry;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Loads;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.assessment.Probability;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.assessment.Severity;
import org.gaugeline.assessment.Standing;
import org.gaugeline.assessment.Tone;
import org.gaugeline.http.RecommendationEngine;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.ReferenceData;

/** Stands in until the advising is wired: completes the intent, names holders, computes nothing. */
final class ProvisionalEngine implements RecommendationEngine {
  private static final double NONE = Double.NaN;

  private final ReferenceData data;
  private final HolderCatalogue holders;
  private final Completion completion;

  ProvisionalEngine(ReferenceData data, HolderCatalogue holders) {
    this.data = data;
    this.holders = holders;
    this.completion = new Completion(data, MaterialIndex.of(data.materials().values()));
  }

  @Override
  public Recommendation recommend(Intent intent) {
    Job job = completion.complete(intent);
    List<RankedAssembly> ranked =
        holders.byInterface().getOrDefault(job.machine().spindle().id(), List.of()).stream()
            .filter(body -> body.takes(job.tool().shankDiameterM()))
            .limit(job.preferences().limit())
            .map(body -> ranked(body, job))
            .toList();
    Reason none =
        new Reason(
            Criterion.GATE, "not-computed", Tone.NEUTRAL, NONE, NONE, Measure.COUNT, "", List.of());
    return new Recommendation(
        job,
        new Loads(
            job.operation().spindleSpeedRadPerS(),
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            List.of()),
        new Demands(NONE, NONE, NONE, NONE, job.feature().depthM()),
        data.families().values().stream()
            .map(
                family ->
                    new Recommendation.FamilyVerdict(
                        family, Standing.UNAVAILABLE, Scores.NONE, List.of(none), null))
            .toList(),
        ranked,
        List.of(),
        new Recommendation.Weighed(ranked.size(), Map.of()),
        List.of(),
        List.of(new Caution("not-computed", Severity.WARNING, NONE, Measure.COUNT, "")));
  }

  private static RankedAssembly ranked(HolderBody body, Job job) {
    double insertionM = Math.min(body.maxInsertionM(), job.tool().overallLengthM() / 2);
    Assembly assembly = new Assembly(body, job.tool().overallLengthM() - insertionM, insertionM);
    Limit unbounded = new Limit(Double.POSITIVE_INFINITY, "");
    return new RankedAssembly(
        body.ref(),
        1,
        assembly,
        Standing.UNAVAILABLE,
        Scores.NONE,
        new Probability(0, 0, 0, 0, 0),
        new Geometry(assembly.gaugeLengthM(), assembly.stickOutM(), insertionM, NONE, NONE, NONE),
        new Predicted(
            NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, List.of(), NONE, NONE, NONE,
            NONE),
        new Limits(unbounded, unbounded, unbounded, unbounded, unbounded, unbounded, unbounded),
        List.of(new SetUpStep("insert-tool", insertionM, Measure.LENGTH)),
        new Economics(body.price(), false, NONE, NONE, NONE),
        List.of(),
        List.of());
  }
}
