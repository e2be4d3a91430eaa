package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;
import static org.gaugeline.http.IntentReader.si;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assessment.ChartAsked;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.assessment.StabilityMethod;
import org.gaugeline.drawing.StabilityDiagram;
import org.gaugeline.http.wire.WireStabilityChart;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.wording.Words;

/** Body with a given assembly in, its stability chart out. Holds no state of requests. */
public final class StabilityCharts {
  private static final WordIndex<StabilityMethod> METHODS = WordIndex.of(StabilityMethod.values());

  private final RequestBody<WireStabilityChart> bodies;
  private final Assessor assessor;
  private final StabilityChartWriter writer;

  public StabilityCharts(
      Assessor assessor, Words words, ReferenceData data, HolderCatalogue holders) {
    this.bodies =
        RequestBody.ofStabilityCharts(ContractDocument.load(), new CatalogueFaults(data, holders));
    this.assessor = assessor;
    this.writer = new StabilityChartWriter(words, data.version());
  }

  /** A body that was read. */
  record Asked(
      WireStabilityChart wire,
      String digest,
      Intent intent,
      GivenAssembly given,
      ChartAsked chart) {}

  /**
   * Reads a body.
   *
   * @throws ProblemException where it has faults
   */
  Asked ask(byte[] body) {
    WireStabilityChart wire = bodies.read(body);
    WireStabilityChart.Chart chart = orElse(wire.chart(), WireStabilityChart.Chart.NONE);
    return new Asked(
        wire,
        Recommendations.digest(body),
        IntentReader.read(wire.assessment().intent()),
        AssessmentReader.assembly(wire.assessment()),
        new ChartAsked(
            si(chart.fromRpm(), UnitSuffix.RPM),
            si(chart.toRpm(), UnitSuffix.RPM),
            orEmpty(chart.spindleSpeedsRpm()).stream().map(UnitSuffix.RPM::toSi).toList(),
            METHODS.find(chart.method())));
  }

  /**
   * The chart as JSON.
   *
   * @throws ProblemException where no lobes apply to the cut
   */
  byte[] answer(Asked asked) {
    Assessor.Charted charted = charted(asked);
    return writer.write(
        charted.context().job(),
        chart(charted),
        charted.assumptions(),
        asked.wire().assessment().intent(),
        asked.digest());
  }

  /**
   * The chart as SVG.
   *
   * @throws ProblemException where no lobes apply to the cut
   */
  byte[] draw(Asked asked) {
    Assessor.Charted charted = charted(asked);
    return StabilityDiagram.of(chart(charted), charted.context().job())
        .getBytes(StandardCharsets.UTF_8);
  }

  private Assessor.Charted charted(Asked asked) {
    try {
      return assessor.chart(asked.intent(), asked.given(), asked.chart());
    } catch (IntentFaultException e) {
      throw new ProblemException(Problem.invalid(IntentFaultWords.faults(e.faults())));
    }
  }

  private static StabilityChart chart(Assessor.Charted charted) {
    StabilityChart chart = charted.chart();
    if (chart == null) {
      String kind = charted.context().job().operation().kind().id();
      throw new ProblemException(
          Problem.invalid(
              List.of(
                  new Fault(
                      "/operation/kind",
                      "no-stability-lobes",
                      "kind is "
                          + kind
                          + ", to which the depth limit of regenerative milling does not apply."
                          + " It does to side-milling, slotting, face-milling,"
                          + " high-efficiency-milling, profiling and ramping. POST /v1/assessments"
                          + " warns of slender bars and long overhangs.",
                      Map.of("actual", kind)))));
    }
    return chart;
  }
}
