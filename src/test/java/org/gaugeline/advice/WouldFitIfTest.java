package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.gaugeline.assessment.Standing;
import org.gaugeline.quantity.UnitSuffix;
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
    List<String> inVain = new ArrayList<>();
    for (Recommendation.RuledOut out : Bench.ask(intents).ruledOut()) {
      for (Recommendation.Change change : out.wouldFitIf()) {
        Recommendation changed = Bench.ask(intents.with(change.pointer(), asSent(change)));
        Recommendation.FamilyVerdict after = Bench.verdict(changed, out.family().id());
        if (after.standing() == Standing.UNAVAILABLE) {
          inVain.add(out.family().id() + " by " + change + ": " + after.reasons().get(0).code());
        }
      }
    }
    assertThat(inVain).as("changes that admit nothing, for %s", intents).isEmpty();
  }

  /** Numbers of a change are in SI, those of a request in the unit that their name ends in. */
  private static Object asSent(Recommendation.Change change) {
    return change.to() instanceof Double value
        ? UnitSuffix.fromSi(change.pointer(), value)
        : change.to();
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
