package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said to admit a family admits it. */
class WouldFitIfTest {
  static Stream<Intents> jobs() {
    return Stream.concat(Intents.demoNames().stream().map(Intents::demo), RandomIntents.of(40))
        .flatMap(
            intents ->
                Stream.of(
                    intents,
                    intents.with("/shop/shrinkUnit", false),
                    intents.with("/shop/excludedFamilies", List.of("hydraulic", "er-collet"))));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyProposedChangeAdmitsTheFamily(Intents intents) {
    for (Recommendation.RuledOut out : Bench.ask(intents).ruledOut()) {
      for (Recommendation.Change change : out.wouldFitIf()) {
        Recommendation changed = Bench.ask(intents.with(change.pointer(), change.to()));
        assertThat(Bench.verdict(changed, out.family().id()).standing())
            .as("%s after %s for %s", out.family().id(), change, intents)
            .isNotEqualTo(Standing.UNAVAILABLE);
      }
    }
  }

  @Test
  void aLackingHeatUnitIsProposed() {
    Intents job =
        Intents.of("side-milling", "end-mill", 12, "C45", "BT40").with("/shop/shrinkUnit", false);
    assertThat(changes(job, "shrink-fit"))
        .containsExactly(new Recommendation.Change("/shop/shrinkUnit", false, true));
  }

  @Test
  void aMissingFlatIsProposedForTheSideLock() {
    Intents job = Intents.of("side-milling", "end-mill", 12, "C45", "BT40");
    assertThat(changes(job, "side-lock"))
        .containsExactly(new Recommendation.Change("/tool/shank/form", "cylindrical", "flat"));
  }

  @Test
  void buyingIsProposedWhereOnlyStockMayBeUsed() {
    Intents job =
        Intents.of("side-milling", "end-mill", 12, "C45", "BT40").with("/shop/stockOnly", true);
    assertThat(changes(job, "shrink-fit"))
        .containsExactly(new Recommendation.Change("/shop/stockOnly", true, false));
  }

  private static List<Recommendation.Change> changes(Intents job, String family) {
    return Bench.ask(job).ruledOut().stream()
        .filter(out -> out.family().id().equals(family))
        .flatMap(out -> out.wouldFitIf().stream())
        .toList();
  }
}
