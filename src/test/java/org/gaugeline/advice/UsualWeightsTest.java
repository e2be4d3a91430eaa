package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.gaugeline.assessment.Scores;
import org.gaugeline.job.Job;
import org.gaugeline.job.UsualWeights;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What matters most to an operation (common practice), until the asker weighs it himself. */
class UsualWeightsTest {
  @ParameterizedTest
  @CsvSource({
    "side-milling,            end-mill,      roughing,       grip",
    "side-milling,            end-mill,      finishing,      accuracy",
    "slotting,                end-mill,      roughing,       grip",
    "slotting,                end-mill,      finishing,      accuracy",
    "face-milling,            face-mill,     roughing,       grip",
    "face-milling,            face-mill,     finishing,      accuracy",
    "high-efficiency-milling, end-mill,      roughing,       grip",
    "profiling,               ball-end-mill, roughing,       reach",
    "profiling,               ball-end-mill, finishing,      accuracy",
    "plunge-milling,          end-mill,      roughing,       reach",
    "ramping,                 end-mill,      roughing,       grip",
    "ramping,                 end-mill,      finishing,      accuracy",
    "chamfering,              chamfer-mill,  finishing,      speed",
    "thread-milling,          thread-mill,   semi-finishing, accuracy",
    "drilling,                drill,         roughing,       accuracy",
    "reaming,                 reamer,        finishing,      accuracy",
    "boring,                  boring-tool,   finishing,      accuracy",
    "tapping,                 tap,           semi-finishing, grip",
    "slotting,                disc-cutter,   finishing,      accuracy",
  })
  void mattersMost(String operation, String tool, String stage, String criterion) {
    Job.Preferences usual = job(operation, tool, stage).job().preferences();
    Map<String, Double> weights = weights(usual);
    double most = Objects.requireNonNull(weights.remove(criterion));
    assertThat(weights.values()).allSatisfy(other -> assertThat(other).isLessThan(most));
  }

  private static Map<String, Double> weights(Job.Preferences preferences) {
    return new TreeMap<>(
        Map.of(
            "accuracy", preferences.accuracyWeight(),
            "grip", preferences.gripWeight(),
            "reach", preferences.reachWeight(),
            "speed", preferences.speedWeight()));
  }

  private static Recommendation job(String operation, String tool, String stage) {
    double diameterMm =
        switch (tool) {
          case "face-mill" -> 50;
          case "disc-cutter" -> 100;
          default -> 12;
        };
    Intents intents =
        Intents.of(operation, tool, diameterMm, "C45", "HSK-A63").with("/operation/stage", stage);
    return Bench.ask(intents);
  }

  @Test
  void everyWeightOtherThanOneIsTold() {
    Recommendation answer = job("side-milling", "end-mill", "roughing");
    Map<String, Double> weights = weights(answer.job().preferences());
    weights.forEach(
        (criterion, weight) ->
            assertThat(
                    answer.job().assumptions().stream()
                        .anyMatch(
                            a ->
                                a.pointer().equals("/preferences/weights/" + criterion)
                                    && a.value().equals(weight)
                                    && a.sourceKey().equals("operation-practice")))
                .as(criterion)
                .isEqualTo(weight != 1));
  }

  @Test
  void whatTheCallerWeighsWins() {
    Recommendation own =
        Bench.ask(
            Intents.of("side-milling", "end-mill", 12, "C45", "HSK-A63")
                .with("/operation/stage", "roughing")
                .with("/preferences/weights/accuracy", 3));
    assertThat(weights(own.job().preferences()))
        .isEqualTo(new TreeMap<>(Map.of("accuracy", 3.0, "grip", 1.0, "reach", 1.0, "speed", 1.0)));
    assertThat(own.job().assumptions())
        .noneMatch(a -> a.pointer().startsWith("/preferences/weights"));
  }

  /** The overall score is the geometric mean of the four with just these weights. */
  @Test
  void theyAreWhatTheOverallScoreIsMadeWith() {
    Recommendation answer = job("slotting", "end-mill", "roughing");
    Map<String, Double> weights = weights(answer.job().preferences());
    assertThat(Bench.told(answer)).isNotEmpty();
    for (RankedAssembly assembly : Bench.told(answer)) {
      Scores scores = assembly.scores();
      Map<String, Double> of =
          Map.of(
              "accuracy", scores.accuracy(),
              "grip", scores.grip(),
              "reach", scores.reach(),
              "speed", scores.speed());
      double product = 1;
      double sum = 0;
      for (String criterion : UsualWeights.CRITERIA) {
        double weight = weights.getOrDefault(criterion, Double.NaN);
        product *= Math.pow(of.getOrDefault(criterion, Double.NaN), weight);
        sum += weight;
      }
      assertThat(scores.overall()).isCloseTo(Math.pow(product, 1 / sum), within(1e-9));
    }
  }

  @Test
  void everyOperationHasSomethingThatMattersMoreOrLess() {
    for (OperationKind kind : OperationKind.values()) {
      assertThat(
              UsualWeights.CRITERIA.stream()
                  .anyMatch(
                      criterion ->
                          UsualWeights.ofAnyStage(Bench.DATA, criterion, kind) != null
                              || List.of(Stage.values()).stream()
                                  .anyMatch(
                                      stage ->
                                          UsualWeights.ofStage(Bench.DATA, criterion, kind, stage)
                                              != null)))
          .as(kind.id())
          .isTrue();
    }
  }
}
