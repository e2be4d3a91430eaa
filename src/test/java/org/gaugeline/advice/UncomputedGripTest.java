package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.gaugeline.assessment.Standing;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.junit.jupiter.api.Test;

/** A family that has bodies but no grip model yet is said to be so, and stops nothing. */
class UncomputedGripTest {
  @Test
  void anArborInTheShopIsNotJudged() {
    ReferenceData data = ReferenceTables.load();
    Advisor advisor = new Advisor(data, CatalogueTables.load(data, Path.of("demo-data/shop")));
    Intents shellMill =
        Intents.of("face-milling", "shell-mill", 50, "GG25", "BT40")
            .with("/tool/shank/form", "pilot-bore")
            .with("/tool/shank/diameterMm", 22);
    Recommendation answer = advisor.recommend(shellMill.intent());
    assertThat(answer.assemblies()).isEmpty();
    assertThat(answer.families())
        .filteredOn(verdict -> verdict.family().id().equals("shell-mill-arbor"))
        .singleElement()
        .satisfies(
            verdict -> {
              assertThat(verdict.standing()).isEqualTo(Standing.UNAVAILABLE);
              assertThat(verdict.reasons().get(0).code()).isEqualTo("grip-not-computed");
            });
  }
}
