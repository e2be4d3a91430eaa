package org.gaugeline.http;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.gaugeline.advice.Advisor;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.Candidates;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Appraiser;
import org.gaugeline.assessment.Body;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.Models;
import org.gaugeline.bench.DemoIntent;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.gaugeline.wording.TemplateWords;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The demonstration's intents against the whole generic catalogue, from body to answer and in
 * parts.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
// The harness fills the fields before it measures.
@SuppressWarnings("NullAway.Init")
public class RecommendationBenchmark {
  @Param({"01", "02", "05", "06", "13"})
  public String intentNumber;

  private byte[] body;
  private WireIntent wire;
  private Intent intent;
  private Intent withoutStability;
  private Recommendation recommendation;
  private Recommendations front;
  private RecommendationWriter writer;
  private Advisor advisor;
  private Models models;
  private Job job;
  private Appraiser appraiser;
  private List<Body> bodies;
  private int next;

  @Setup
  public void prepare() {
    ReferenceData data = ReferenceTables.load();
    HolderCatalogue catalogue = CatalogueTables.load(data, null);
    advisor = new Advisor(data, catalogue);
    TemplateWords words = TemplateWords.load();
    front = new Recommendations(advisor::recommend, words, data, catalogue);
    writer = new RecommendationWriter(words, data.version());
    body = DemoIntent.body(intentNumber);
    wire = front.read(body);
    intent = IntentReader.read(wire);
    withoutStability = IntentReader.read(front.read(DemoIntent.withoutStability(body)));
    recommendation = advisor.recommend(intent);
    models = new Models(data);
    job = new Completion(data, MaterialIndex.of(data.materials().values())).complete(intent);
    appraiser = new Appraiser(JobContext.of(job, models));
    bodies = new ArrayList<>();
    for (List<Candidate> family :
        new Candidates(data, catalogue).compose(job).byFamily().values()) {
      for (Candidate candidate : family) {
        bodies.add(Body.prepare(candidate.holder(), models));
      }
    }
    System.out.println("intent " + intentNumber + ": " + bodies.size() + " candidates weighed");
  }

  @Benchmark
  public JobContext jobContext() {
    return JobContext.of(job, models);
  }

  /** One body after another, so that no branch is learnt by heart. */
  @Benchmark
  public Appraisal oneAssessment() {
    next = next + 1 == bodies.size() ? 0 : next + 1;
    return appraiser.appraise(bodies.get(next));
  }

  @Benchmark
  public Recommendation recommend() {
    return advisor.recommend(intent);
  }

  @Benchmark
  public Recommendation recommendWithoutStability() {
    return advisor.recommend(withoutStability);
  }

  @Benchmark
  public WireIntent readJson() {
    return front.read(body);
  }

  @Benchmark
  public byte[] writeJson() {
    return writer.write(recommendation, wire, "0".repeat(64));
  }

  @Benchmark
  public byte[] bodyToAnswer() {
    return front.answer(body);
  }
}
