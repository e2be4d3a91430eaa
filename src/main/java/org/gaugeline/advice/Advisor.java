package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.Candidates;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Appraiser;
import org.gaugeline.assessment.Body;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Models;
import org.gaugeline.assessment.Standing;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.ReferenceData;

/**
 * The story of one recommendation: complete the intent, find the loads and what they demand,
 * compose candidates, weigh each, rank them, and explain the few that are shown.
 */
public final class Advisor {
  private final Completion completion;
  private final Candidates candidates;
  private final ReferenceData data;
  private final Models models;

  /** Bodies that stand for more than one request, each prepared when it is first weighed. */
  private final Map<String, Body> bodies = new ConcurrentHashMap<>();

  public Advisor(ReferenceData data, HolderCatalogue catalogue) {
    this.data = data;
    this.completion = new Completion(data, MaterialIndex.of(data.materials().values()));
    this.candidates = new Candidates(data, catalogue);
    this.models = new Models(data);
  }

  /**
   * Recommends assemblies for an intent.
   *
   * @throws org.gaugeline.job.IntentFaultException where too little is said of a holder in stock
   */
  public Recommendation recommend(Intent intent) {
    return recommend(intent, Ranking.Search.WHERE_IT_MATTERS);
  }

  Recommendation recommend(Intent intent, Ranking.Search search) {
    Job job = completion.complete(intent);
    JobContext context = JobContext.of(job, models);
    Candidates.Composed composed = candidates.compose(job);
    Ranking ranking = Ranking.of(context, weigh(context, composed), search);
    BreakEven heatUnit = BreakEven.ofHeatUnit(context, ranking, unequipped(context, composed));
    NearestFit nearest = new NearestFit(intent, job, this::meets);
    return new Explanation(context, data, composed, ranking, heatUnit, nearest).recommendation();
  }

  /** The holders that a recommendation would show, best first, without all that it says of them. */
  List<HolderBody> best(Intent intent) {
    Job job = completion.complete(intent);
    JobContext context = JobContext.of(job, models);
    return Ranking.of(
            context, weigh(context, candidates.compose(job)), Ranking.Search.WHERE_IT_MATTERS)
        .shown()
        .stream()
        .map(shown -> shown.appraisal().assembly().holder())
        .toList();
  }

  /** Whether a holder meets an intent, at the confidence or at the median. */
  private boolean meets(Intent intent, HolderBody holder) {
    JobContext context = JobContext.of(completion.complete(intent), models);
    Standing standing = new Appraiser(context).appraise(body(holder)).standing();
    return standing.compareTo(Standing.MARGINAL) <= 0;
  }

  private Map<String, List<Weighed>> weigh(JobContext context, Candidates.Composed composed) {
    Appraiser appraiser = new Appraiser(context);
    Economist economist = new Economist(context);
    Map<String, List<Weighed>> weighed = new LinkedHashMap<>();
    composed
        .byFamily()
        .forEach(
            (family, of) -> {
              List<Weighed> all = new ArrayList<>(of.size());
              boolean suits = weigh(context, appraiser, economist, of, all);
              if (!suits) {
                // every joint costs accuracy and stiffness: more parts only where fewer will not do
                weigh(
                    context,
                    appraiser,
                    economist,
                    composed.deeper().getOrDefault(family, List.of()),
                    all);
              }
              weighed.put(family, all);
            });
    return weighed;
  }

  /** What would take part if the shop had a heat unit. */
  private List<Weighed> unequipped(JobContext context, Candidates.Composed composed) {
    List<Weighed> heated = new ArrayList<>();
    for (List<Candidate> of : composed.unequipped().values()) {
      weigh(context, new Appraiser(context), new Economist(context), of, heated);
    }
    return heated;
  }

  /** Weighs candidates; says whether one of them is suitable. */
  private boolean weigh(
      JobContext context,
      Appraiser appraiser,
      Economist economist,
      List<Candidate> candidates,
      List<Weighed> all) {
    boolean suits = false;
    for (Candidate candidate : candidates) {
      Appraisal appraisal = appraiser.appraise(body(candidate.holder()));
      suits |= appraisal.standing() == Standing.SUITABLE;
      all.add(Weighed.of(context, economist, candidate, appraisal));
    }
    return suits;
  }

  private Body body(HolderBody holder) {
    if (holder.origin() == HolderBody.Origin.REQUEST) {
      return Body.prepare(holder, models);
    }
    Body prepared = bodies.get(holder.ref());
    return prepared == null
        ? bodies.computeIfAbsent(holder.ref(), ref -> Body.prepare(holder, models))
        : prepared;
  }
}
