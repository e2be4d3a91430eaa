package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Score;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.Standing;
import org.gaugeline.assessment.Tone;
import org.gaugeline.job.Job;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scores and standing follow from the margins that are told, and from nothing else. */
class StandingRulesTest {
  static Stream<Intents> jobs() {
    return RandomIntents.of(60);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void criterionScoreIsTheLeastOfItsPairs(Intents intents) {
    Recommendation answer = Bench.ask(intents);
    for (RankedAssembly assembly : Bench.told(answer)) {
      Scores scores = assembly.scores();
      assertScore(intents, assembly, Criterion.ACCURACY, scores.accuracy());
      assertScore(intents, assembly, Criterion.GRIP, scores.grip());
      assertScore(intents, assembly, Criterion.REACH, scores.reach());
      assertScore(intents, assembly, Criterion.SPEED, scores.speed());
      assertThat(scores.overall())
          .as("overall of %s for %s is the weighted geometric mean", assembly.id(), intents)
          .isEqualTo(geometricMean(scores, answer.job().preferences()), within(1e-9));
    }
  }

  private static double geometricMean(Scores scores, Job.Preferences weights) {
    double sum =
        weights.accuracyWeight()
            + weights.gripWeight()
            + weights.reachWeight()
            + weights.speedWeight();
    return Math.pow(scores.accuracy(), weights.accuracyWeight() / sum)
        * Math.pow(scores.grip(), weights.gripWeight() / sum)
        * Math.pow(scores.reach(), weights.reachWeight() / sum)
        * Math.pow(scores.speed(), weights.speedWeight() / sum);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void suitableMeansEveryPairMetAtTheConfidence(Intents intents) {
    for (RankedAssembly assembly : Bench.told(Bench.ask(intents))) {
      List<Reason> against =
          assembly.reasons().stream().filter(reason -> reason.tone() == Tone.AGAINST).toList();
      if (assembly.standing() == Standing.SUITABLE) {
        assertThat(against).as("against suitable %s for %s", assembly.id(), intents).isEmpty();
        assertThat(assembly.scores().overall()).isGreaterThanOrEqualTo(50 - 1e-9);
      } else {
        assertThat(against).as("against %s for %s", assembly.id(), intents).isNotEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void lowerConfidenceNeverLowersAStanding(Intents intents) {
    Recommendation careful = Bench.ask(intents.with("/preferences/confidence", 0.95));
    for (RankedAssembly assembly : Bench.told(careful)) {
      RankedAssembly bolder =
          Bench.weigh(intents.with("/preferences/confidence", 0.8), assembly.assembly().holder());
      assertThat(bolder.standing())
          .as("%s at 80 %% for %s", assembly.assembly().holder().ref(), intents)
          .isLessThanOrEqualTo(assembly.standing());
    }
  }

  private static void assertScore(
      Intents intents, RankedAssembly assembly, Criterion criterion, double score) {
    double least =
        Arrays.stream(Pair.values())
            .filter(pair -> pair.criterion() == criterion)
            .flatMap(pair -> Bench.margin(assembly, pair).map(r -> score(r, pair)).stream())
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(100);
    assertThat(score)
        .as("%s of %s for %s", criterion, assembly.assembly().holder().ref(), intents)
        .isEqualTo(least, within(1e-9));
  }

  private static double score(Reason reason, Pair pair) {
    double ratio =
        reason.capacity() <= 0
            ? 0
            : reason.demand() <= 0 ? Double.POSITIVE_INFINITY : reason.capacity() / reason.demand();
    // what is only predicted takes points away a twelfth as fast
    boolean tentative = pair == Pair.STABLE_DEPTH && ratio < 1;
    return Score.of(tentative ? Math.pow(ratio, 1 / 12.0) : ratio, pair.fullRatio());
  }
}
