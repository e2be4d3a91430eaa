package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.assessment.Probability;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every answer keeps to, whatever was asked. */
class AnswerShapeTest {
  private static final List<String> FAMILIES =
      List.of(
          "side-lock",
          "inclined-side-lock",
          "er-collet",
          "precision-collet",
          "milling-chuck",
          "shrink-fit",
          "hydraulic",
          "high-torque-hydraulic",
          "shell-mill-arbor",
          "disc-arbor",
          "tapping-chuck",
          "floating-reamer-holder",
          "drill-chuck");

  static Stream<Intents> jobs() {
    return Stream.concat(RandomIntents.of(80), Intents.demoNames().stream().map(Intents::demo));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyFamilyIsListedInTheContractsOrderAndPointsToAnAssembly(Intents intents) {
    Recommendation answer = Bench.ask(intents);
    assertThat(answer.families().stream().map(v -> v.family().id())).isEqualTo(FAMILIES);
    List<String> ids = Bench.told(answer).stream().map(RankedAssembly::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
    for (Recommendation.FamilyVerdict verdict : answer.families()) {
      if (verdict.standing() == Standing.UNAVAILABLE) {
        assertThat(verdict.bestAssembly()).as(verdict.family().id()).isNull();
        assertThat(answer.ruledOut().stream().map(Recommendation.RuledOut::family))
            .contains(verdict.family());
      } else {
        assertThat(verdict.bestAssembly()).as(verdict.family().id()).isIn(ids);
        assertThat(Bench.best(answer, verdict.family().id()).scores()).isEqualTo(verdict.scores());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void assembliesAreOrderedByStandingFirst(Intents intents) {
    Recommendation answer = Bench.ask(intents);
    assertThat(answer.assemblies().stream().map(RankedAssembly::standing)).isSorted();
    assertThat(answer.assemblies().stream().map(RankedAssembly::rank)).isSorted();
    assertThat(answer.assemblies())
        .allSatisfy(a -> assertThat(a.standing()).isLessThanOrEqualTo(Standing.MARGINAL));
    assertThat(answer.assemblies().size() + answer.flagged().size())
        .isLessThanOrEqualTo(answer.weighed().candidates());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void numbersAreNumbers(Intents intents) {
    Recommendation answer = Bench.ask(intents);
    var loads = answer.loads();
    var demands = answer.demands();
    assertNumbers(
        intents,
        loads.spindleSpeedRadPerS(),
        loads.feedRateMPerS(),
        loads.meanChipThicknessM(),
        loads.specificForcePa(),
        loads.removalRateM3PerS(),
        loads.torqueNm(),
        loads.powerW(),
        loads.peakTorqueNm(),
        loads.peakTangentialForceN(),
        loads.peakRadialForceN(),
        loads.axialPullN(),
        loads.axialPushN(),
        loads.peakWallNormalForceN(),
        loads.peakSlipForceN(),
        demands.runoutAtTipM(),
        demands.deflectionM(),
        demands.gripTorqueNm(),
        demands.axialHoldN(),
        demands.reachM());
    assertThat(loads.feedForceN()).as("signed feed force for %s", intents).isFinite();
    for (RankedAssembly assembly : Bench.told(answer)) {
      predicted(intents, assembly.predicted());
      limits(intents, assembly.limits());
      var at = assembly.geometry();
      assertNumbers(
          intents,
          at.gaugeLengthM(),
          at.stickOutM(),
          at.insertionDepthM(),
          at.noseDiameterM(),
          at.massKg());
      assertThat(at.momentNm()).as("signed moment for %s", intents).isFinite();
      probability(intents, assembly.probability());
      assertThat(assembly.scores().overall()).as("%s", intents).isBetween(0.0, 100.0);
    }
  }

  @Test
  void everyBasisIsAKnownSourceOrGiven() {
    Set<String> unknown = new TreeSet<>();
    jobs().forEach(intents -> basis(Bench.ask(intents), unknown));
    unknown.removeAll(Bench.DATA.sources().keySet());
    unknown.remove("given");
    assertThat(unknown).as("basis keys that sources.csv lacks").isEmpty();
  }

  private static void basis(Recommendation answer, Set<String> keys) {
    keys.addAll(answer.loads().basis());
    List<Reason> reasons = new ArrayList<>();
    answer.families().forEach(verdict -> reasons.addAll(verdict.reasons()));
    answer.ruledOut().forEach(out -> reasons.add(out.reason()));
    Bench.told(answer).forEach(assembly -> reasons.addAll(assembly.reasons()));
    reasons.forEach(reason -> keys.addAll(reason.basis()));
  }

  private static void predicted(Intents intents, Predicted p) {
    assertNumbers(
        intents,
        p.runoutMedianM(),
        p.runoutP95M() - p.runoutMedianM(),
        p.runoutWorstM() - p.runoutP95M(),
        p.gripTorqueP05Nm(),
        p.gripTorqueMedianNm() - p.gripTorqueP05Nm(),
        p.axialHoldP05N(),
        p.axialHoldMedianN() - p.axialHoldP05N(),
        p.tipComplianceMPerN(),
        p.deflectionM(),
        p.dampingRatio(),
        p.bendingMomentUse(),
        p.balanceGradeReachedMPerS(),
        p.toolLifeFactor());
    assertThat(p.naturalFrequenciesHz()).as("%s", intents).isNotEmpty().isSorted();
    assertThat(p.naturalFrequenciesHz()).allSatisfy(f -> assertThat(f).isFinite().isPositive());
  }

  private static void limits(Intents intents, Limits limits) {
    for (var limit :
        List.of(
            limits.spindleSpeedRadPerS(),
            limits.torqueNm(),
            limits.axialForceN(),
            limits.axialDepthM(),
            limits.feedPerToothM(),
            limits.stickOutM(),
            limits.featureDepthM())) {
      assertThat(limit.value()).as("%s of %s", limit, intents).isNotNegative();
      assertThat(limit.governedBy().isEmpty()).isEqualTo(Double.isInfinite(limit.value()));
    }
  }

  private static void probability(Intents intents, Probability p) {
    assertThat(List.of(p.accuracy(), p.grip(), p.reach(), p.speed(), p.all()))
        .as("probabilities for %s", intents)
        .allSatisfy(one -> assertThat(one).isBetween(0.0, 1.0));
    assertThat(p.all())
        .isLessThanOrEqualTo(
            Math.min(Math.min(p.accuracy(), p.grip()), Math.min(p.reach(), p.speed())));
  }

  private static void assertNumbers(Intents intents, double... values) {
    for (int i = 0; i < values.length; i++) {
      assertThat(values[i]).as("number %d for %s", i, intents).isFinite().isNotNegative();
    }
  }
}
