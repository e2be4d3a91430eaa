package org.gaugeline.http;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.gaugeline.advice.Advisor;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assessment.ChartAsked;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.bench.DemoIntent;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Intent;
import org.gaugeline.job.StockEntry;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.gaugeline.wording.TemplateWords;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A whole predicted chart: 400 speeds, the band of 64 draws over 100 speeds, best speeds. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
// The harness fills the fields before it measures.
@SuppressWarnings("NullAway.Init")
public class ChartBenchmark {
  private Assessor assessor;
  private Intent intent;
  private final GivenAssembly given =
      new GivenAssembly(
          List.of(
              new GivenAssembly.Component(
                  "/assembly/components/0",
                  null,
                  "g-hsk-a63-shrink-fit-12-p75",
                  StockEntry.InlineHolder.NONE)),
          40e-3,
          Measured.NONE);

  @Setup
  public void prepare() {
    ReferenceData data = ReferenceTables.load();
    HolderCatalogue catalogue = CatalogueTables.load(data, null);
    assessor = new Assessor(data, catalogue, new Advisor(data, catalogue));
    WireIntent wire =
        new Recommendations(
                new Advisor(data, catalogue)::recommend, TemplateWords.load(), data, catalogue)
            .read(DemoIntent.body("01"));
    intent = IntentReader.read(wire);
  }

  @Benchmark
  public StabilityChart chartWithBand() {
    return Objects.requireNonNull(assessor.chart(intent, given, ChartAsked.NONE).chart());
  }
}
