package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The stable depth of candidates: what it does to a recommendation, and what it does not. */
class StableDepthAdviceTest {
  private static final Intents STUBBY = Intents.demo("15-coupling-finishing-flat-shank");

  static Stream<Intents> jobs() {
    return Stream.concat(Intents.demoNames().stream().map(Intents::demo), RandomIntents.of(60))
        .flatMap(
            intents ->
                Stream.of(
                    intents,
                    intents
                        .with("/preferences/rankBy", "cost")
                        .with("/preferences/confidence", 0.8)
                        .with("/preferences/limit", 3)));
  }

  /** Looking only where it matters must find what looking everywhere finds. */
  @ParameterizedTest
  @MethodSource("jobs")
  void theShortcutNeverChangesTheAnswer(Intents intents) {
    Recommendation some =
        Bench.ADVISOR.recommend(intents.intent(), Ranking.Search.WHERE_IT_MATTERS);
    Recommendation all = Bench.ADVISOR.recommend(intents.intent(), Ranking.Search.EXHAUSTIVE);
    assertThat(said(some)).as("%s", intents).isEqualTo(said(all));
  }

  private static List<String> said(Recommendation answer) {
    List<String> said = new ArrayList<>();
    for (RankedAssembly one : Bench.told(answer)) {
      said.add(
          String.join(
              " ",
              one.id(),
              String.valueOf(one.rank()),
              one.assembly().holder().ref(),
              String.valueOf(one.assembly().stickOutM()),
              one.standing().toString(),
              one.scores().toString(),
              one.probability().toString(),
              one.limits().toString(),
              one.stableSpeeds().toString(),
              one.cautions().toString(),
              one.reasons().toString()));
    }
    answer
        .families()
        .forEach(
            verdict ->
                said.add(
                    String.join(
                        " ",
                        verdict.family().id(),
                        verdict.standing().toString(),
                        verdict.scores().toString(),
                        String.valueOf(verdict.bestAssembly()))));
    said.add(answer.weighed().toString());
    said.add(answer.cautions().toString());
    return said;
  }

  @Test
  void millingIsJudgedUnlessItIsNotWanted() {
    assertThat(stable(Bench.ask(STUBBY).assemblies().get(0))).isPresent();
    assertThat(Bench.ask(STUBBY).assemblies().get(0).stableSpeeds()).isNotEmpty();
    Recommendation without = Bench.ask(STUBBY.with("/preferences/stability", false));
    assertThat(without.assemblies())
        .allSatisfy(one -> assertThat(stable(one)).isEmpty())
        .allSatisfy(one -> assertThat(one.stableSpeeds()).isEmpty());
    Recommendation drilled = Bench.ask(Intents.demo("06-manifold-drilling"));
    assertThat(drilled.assemblies()).allSatisfy(one -> assertThat(stable(one)).isEmpty());
  }

  private static Optional<Reason> stable(RankedAssembly one) {
    return Bench.margin(one, Pair.STABLE_DEPTH);
  }

  /** Nothing backs a prediction: it may cost the place, and not the standing of a candidate. */
  @ParameterizedTest
  @MethodSource("jobs")
  void aPredictionMakesNothingUnsuitable(Intents intents) {
    Recommendation plain = Bench.ask(intents.with("/preferences/stability", false));
    Recommendation judged = Bench.ask(intents);
    assertThat(judged.weighed().candidates()).isEqualTo(plain.weighed().candidates());
    assertThat(judged.assemblies()).as("%s", intents).hasSameSizeAs(plain.assemblies());
    for (RankedAssembly one : judged.assemblies()) {
      assertThat(one.standing()).isLessThanOrEqualTo(Standing.MARGINAL);
      stable(one)
          .filter(reason -> reason.capacity() < reason.demand())
          .ifPresent(reason -> assertThat(one.standing()).isEqualTo(Standing.MARGINAL));
    }
  }

  /** Common practice: the longer it stands out, the less deep it cuts before it sings. */
  @Test
  void longReachCostsStableDepth() {
    Intents wall = Intents.demo("16-volute-deep-wall");
    double before = Double.POSITIVE_INFINITY;
    for (double overall : new double[] {90, 110, 130}) {
      Intents longer =
          wall.with("/tool/overallLengthMm", overall)
              .with("/tool/neckLengthMm", overall - 40)
              .with("/feature/depthMm", overall - 45);
      RankedAssembly best = Bench.best(Bench.ask(longer), "shrink-fit");
      double depth = stable(best).orElseThrow().capacity();
      assertThat(depth).as("%s mm long", overall).isLessThan(before);
      before = depth;
    }
  }

  /** A depth that is asked beyond the flutes is judged like any other. */
  @Test
  void deeperThanTheFlutesIsNoPass() {
    Intents shallow = Intents.demo("01-impeller-hub-side-milling").with("/tool/fluteLengthMm", 12);
    for (RankedAssembly one : Bench.told(Bench.ask(shallow))) {
      stable(one)
          .ifPresent(
              reason -> assertThat(reason.capacity()).isFinite().isLessThan(reason.demand()));
    }
  }

  /** Common practice: at low cutting speed a cut forgives more; rubbing flanks damp short waves. */
  @Test
  void slowCutsForgiveMore() {
    Intents job = Intents.demo("01-impeller-hub-side-milling");
    RankedAssembly fast =
        Bench.best(Bench.ask(job.with("/operation/cuttingSpeedMPerMin", 140)), "shrink-fit");
    RankedAssembly slow =
        Bench.weigh(job.with("/operation/cuttingSpeedMPerMin", 40), fast.assembly().holder());
    assertThat(stable(slow).orElseThrow().capacity())
        .isGreaterThan(2 * stable(fast).orElseThrow().capacity());
  }
}
