package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Loads;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.Standing;
import org.gaugeline.reference.ToolKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must not change an answer, and what must mirror it. */
class InvarianceTest {
  static Stream<Intents> jobs() {
    return RandomIntents.of(60);
  }

  static Stream<Intents> millingJobs() {
    return RandomIntents.milling(60);
  }

  /** Without ball ends: the round of a ball pushes along the axis whatever the helix does. */
  static Stream<Intents> straightMillingJobs() {
    return millingJobs()
        .filter(intents -> intents.intent().tool().kind() != ToolKind.BALL_END_MILL);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void sameIntentTwiceGivesTheSameAnswer(Intents intents) {
    assertThat(Bench.ask(intents)).as("%s", intents).isEqualTo(Bench.ask(intents));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void textUnitsChangeNoNumber(Intents intents) {
    assertSame(intents, Bench.ask(intents), Bench.ask(intents.with("/textUnits", "inch")));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void orderOfStockAndOfExclusionsShowsNowhere(Intents intents) {
    List<Object> stock = new ArrayList<>();
    for (HolderBody holder : Bench.CATALOGUE.byRef().values()) {
      if (holder.spindleInterface().id().equals(intents.intent().machine().interfaceId())
          && holder.ref().hashCode() % 9 == 0) {
        stock.add(Map.of("ref", holder.ref(), "count", 1 + stock.size() % 2));
      }
    }
    List<String> excluded = new ArrayList<>(List.of("drill-chuck", "milling-chuck", "er-collet"));
    Intents sorted = intents.with("/shop/stock", stock).with("/shop/excludedFamilies", excluded);
    Collections.shuffle(stock, new Random(1));
    Collections.reverse(excluded);
    Intents shuffled = intents.with("/shop/stock", stock).with("/shop/excludedFamilies", excluded);
    assertSame(intents, Bench.ask(sorted), Bench.ask(shuffled));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void withoutOneFamilyTheOthersScoreAndOrderAsBefore(Intents intents) {
    Intents all = intents.with("/preferences/limit", 50);
    Recommendation with = Bench.ask(all);
    for (Recommendation.FamilyVerdict left : with.families()) {
      if (left.standing() == Standing.UNAVAILABLE) {
        continue;
      }
      String family = left.family().id();
      Recommendation without = Bench.ask(all.with("/shop/excludedFamilies", List.of(family)));
      assertThat(order(without, family))
          .as("without %s: %s", family, intents)
          .isEqualTo(order(with, family));
      assertThat(verdicts(without, family)).isEqualTo(verdicts(with, family));
    }
  }

  @ParameterizedTest
  @MethodSource("straightMillingJobs")
  void mirroredHelixFlipsPullIntoPush(Intents intents) {
    Loads right = Bench.ask(intents).loads();
    Loads left = Bench.ask(intents.with("/tool/helixHand", "left")).loads();
    assertThat(left.axialPushN())
        .as("push: %s", intents)
        .isEqualTo(right.axialPullN(), near(right));
    assertThat(left.axialPullN())
        .as("pull: %s", intents)
        .isEqualTo(right.axialPushN(), near(right));
    assertThat(left.peakTorqueNm()).isEqualTo(right.peakTorqueNm(), within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("millingJobs")
  void wholeToolMirroredPullsAsBefore(Intents intents) {
    Loads right = Bench.ask(intents).loads();
    Loads left =
        Bench.ask(intents.with("/tool/helixHand", "left").with("/tool/hand", "left")).loads();
    assertThat(left.axialPullN())
        .as("pull: %s", intents)
        .isEqualTo(right.axialPullN(), near(right));
  }

  private static org.assertj.core.data.Offset<Double> near(Loads loads) {
    return within(1e-6 * loads.peakTangentialForceN());
  }

  private static void assertSame(Intents intents, Recommendation one, Recommendation other) {
    assertThat(other.assemblies()).as("%s", intents).isEqualTo(one.assemblies());
    assertThat(other.flagged()).as("%s", intents).isEqualTo(one.flagged());
    assertThat(other.families()).as("%s", intents).isEqualTo(one.families());
    assertThat(other.ruledOut()).as("%s", intents).isEqualTo(one.ruledOut());
    assertThat(other.weighed()).isEqualTo(one.weighed());
    assertThat(other.cautions()).isEqualTo(one.cautions());
    assertThat(other.loads()).isEqualTo(one.loads());
  }

  private record Placed(String ref, Standing standing, Scores scores) {}

  private static List<Placed> order(Recommendation answer, String except) {
    return answer.assemblies().stream()
        .filter(a -> !a.assembly().holder().family().id().equals(except))
        .map(a -> new Placed(a.assembly().holder().ref(), a.standing(), a.scores()))
        .toList();
  }

  private static List<Placed> verdicts(Recommendation answer, String except) {
    return answer.families().stream()
        .filter(v -> !v.family().id().equals(except))
        .map(v -> new Placed(v.family().id(), v.standing(), v.scores()))
        .toList();
  }
}
