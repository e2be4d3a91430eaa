package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.advice.Scene;
import org.gaugeline.advice.WouldFitTest;
import org.gaugeline.assembly.Role;
import org.gaugeline.assessment.Limit;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.StockEntry;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the engine says over many seeded jobs is what the templates word. */
class EmittedCodesTest {
  private static final long SEED = 20_251;
  private static final int ROUNDS = 1500;

  private static final Set<String> REASONS = new TreeSet<>();
  private static final Set<String> CAUTIONS = new TreeSet<>();
  private static final Set<String> STEPS = new TreeSet<>();
  private static final Set<String> ASSUMPTIONS = new TreeSet<>();
  private static final Set<String> MEMBERS = new TreeSet<>();
  private static final Set<String> LIMITS = new TreeSet<>();
  private static final Set<String> CHANGES = new TreeSet<>();

  @BeforeAll
  static void listen() {
    int answered = Answers.forEach(SEED, ROUNDS, (intent, answer) -> collect(answer));
    for (String demo : Intents.demoNames()) {
      collect(Answers.ADVISOR.recommend(Intents.demo(demo).intent()));
    }
    assertThat(answered).as("seed %d: jobs computed", SEED).isGreaterThan(ROUNDS / 4);
    ownStacks().forEach(EmittedCodesTest::collect);
    for (int i = 0; i < 40; i++) {
      WouldFitTest.scene(i).assessed().wouldFitIf().stream()
          .map(change -> change.pointer().replaceAll("components/\\d+/", "components/"))
          .filter(Codes.CHANGES::contains)
          .forEach(CHANGES::add);
    }
  }

  /** Stacks in the caller's own words, of which next to nothing is said. */
  private static List<Scene> ownStacks() {
    Scene mill = Scene.of(Intents.of("side-milling", "end-mill", 12, "C45", "HSK-A63"));
    Scene shell = Scene.of(Intents.of("face-milling", "shell-mill", 50, "C45", "HSK-A63"));
    Scene hydraulic = own(mill, Role.HOLDER, Map.of("family", "hydraulic", "boreMm", 20));
    Map<String, Object> section = Map.of("lengthMm", 80, "diameterMm", 50);
    return List.of(
        own(mill, Role.HOLDER, Map.of()),
        own(mill, Role.HOLDER, Map.of("family", "shrink-fit")),
        own(shell, Role.ARBOR, Map.of("profile", List.of(section))),
        own(own(mill, Role.ADAPTER, Map.of()), Role.HOLDER, Map.of("interface", "PSC-C5")),
        own(own(mill, Role.DAMPED_BODY, Map.of()), Role.HOLDER, Map.of("interface", "PSC-C5")),
        own(hydraulic, Role.EXTENSION, Map.of("family", "shrink-fit")),
        own(hydraulic, Role.SLEEVE, Map.of()));
  }

  private static Scene own(Scene scene, Role role, Map<String, Object> said) {
    return scene.plus(role, null, StockEntry.InlineHolder.NONE).knowing(said);
  }

  private static void collect(Scene scene) {
    for (Assumption assumption : scene.judged().inspection().assumptions()) {
      ASSUMPTIONS.add(assumption.reason());
      MEMBERS.add(assumption.pointer().replaceAll("components/\\d+/", "components/"));
    }
  }

  private static void collect(Recommendation answer) {
    answer
        .job()
        .assumptions()
        .forEach(
            assumption -> {
              ASSUMPTIONS.add(assumption.reason());
              MEMBERS.add(assumption.pointer());
            });
    Answers.reasons(answer).forEach(reason -> REASONS.add(reason.code()));
    Answers.cautions(answer).forEach(caution -> CAUTIONS.add(caution.code()));
    answer
        .ruledOut()
        .forEach(out -> out.wouldFitIf().forEach(change -> CHANGES.add(change.pointer())));
    for (RankedAssembly assembly : Answers.assemblies(answer)) {
      assembly.setUp().forEach(step -> STEPS.add(step.code()));
      for (Limit limit : Answers.limits(assembly)) {
        if (!limit.governedBy().isEmpty()) {
          LIMITS.add(limit.governedBy());
        }
      }
    }
  }

  @Test
  void everyReasonThatWasGivenIsWorded() {
    assertThat(Codes.reasons()).as("seed %d", SEED).containsAll(REASONS);
  }

  @Test
  void everyLimitThatWasGivenIsWorded() {
    assertThat(Codes.limits()).as("seed %d", SEED).containsAll(LIMITS);
  }

  @Test
  void everyOtherCodeIsWordedAndInUse() {
    assertThat(CAUTIONS).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(Codes.CAUTIONS);
    assertThat(ASSUMPTIONS)
        .as("seed %d", SEED)
        .containsExactlyInAnyOrderElementsOf(Codes.ASSUMPTIONS);
    assertThat(CHANGES).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(Codes.CHANGES);
  }

  @Test
  void everyAssumedMemberHasANameAndEveryNameIsAssumed() {
    assertThat(Templates.load().members().keySet())
        .as("seed %d", SEED)
        .containsExactlyInAnyOrderElementsOf(MEMBERS);
  }

  /** The generic series has no arbors, and a predicted chatter is not judged unless asked for. */
  @Test
  void everyReasonAndStepThatTheGenericSeriesCanRaiseIsInUse() {
    assertThat(STEPS).as("seed %d", SEED).containsExactlyInAnyOrderElementsOf(Codes.STEPS);
    assertThat(without(Codes.reasons(), REASONS))
        .as("seed %d", SEED)
        .isSubsetOf("stable-depth-margin", "coupling-bending", "mouth-expansion");
  }

  private static List<String> without(List<String> all, Set<String> some) {
    List<String> left = new ArrayList<>(all);
    left.removeAll(some);
    return left;
  }
}
