package org.gaugeline.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.gaugeline.advice.Advisor;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.job.Intent;
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
 * The demonstration's assessments, from body to answer and in parts: 01 is unfit and searched for
 * what would make it fit, 02 is in the caller's own words, 03 is a stack of the catalogue.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
// The harness fills the fields before it measures.
@SuppressWarnings("NullAway.Init")
public class AssessmentBenchmark {
  @Param({
    "01-impeller-hub-in-a-collet",
    "02-impeller-hub-shrunk-and-measured",
    "03-volute-on-an-extension"
  })
  public String name;

  private byte[] body;
  private Assessments front;
  private Assessor assessor;
  private Assessments.Asked asked;
  private Intent intent;
  private GivenAssembly given;

  @Setup
  public void prepare() {
    ReferenceData data = ReferenceTables.load();
    HolderCatalogue catalogue = CatalogueTables.load(data, null);
    assessor = new Assessor(data, catalogue, new Advisor(data, catalogue));
    front = new Assessments(assessor, TemplateWords.load(), data, catalogue);
    try {
      body = Files.readAllBytes(Path.of("demo-data", "assessments", name + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    asked = front.ask(body);
    intent = asked.intent();
    given = asked.given();
  }

  /** Completing the intent, building the stack, weighing it and looking at it by every rule. */
  @Benchmark
  public Assessor.Judged judge() {
    return assessor.judge(intent, given);
  }

  @Benchmark
  public Assessments.Asked readAndJudge() {
    return front.ask(body);
  }

  /** Limits, set-up and what would make it fit, and all that in words. */
  @Benchmark
  public byte[] solveAndWrite() {
    return front.answer(asked, false);
  }

  @Benchmark
  public byte[] bodyToAnswer() {
    return front.answer(front.ask(body), false);
  }
}
