package org.gaugeline.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.RandomIntents;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is left out is completed and listed; what is given is never changed. */
class CompletionTest {
  private static final Completion COMPLETION =
      new Completion(Bench.DATA, MaterialIndex.of(Bench.DATA.materials().values()));
  private static final double RAD_PER_S = 2 * Math.PI / 60;

  private static final Intents LEAST =
      Intents.of("side-milling", "end-mill", 12, "42CrMo4", "HSK-A63");

  static Stream<Arguments> members() {
    return Stream.of(
        member("/workpiece/hardnessHb", 310, 310, job -> job.workpiece().hardnessHb()),
        member("/operation/axialDepthMm", 7, 7e-3, job -> job.operation().axialDepthM()),
        member("/operation/radialDepthMm", 3, 3e-3, job -> job.operation().radialDepthM()),
        member("/operation/feedPerToothMm", 0.07, 7e-5, job -> job.operation().feedPerToothM()),
        member(
            "/operation/cuttingSpeedMPerMin", 90, 1.5, job -> job.operation().cuttingSpeedMPerS()),
        member("/operation/minutesPerPart", 2, 2, job -> job.operation().minutesPerPart()),
        member("/operation/partsPerYear", 77, 77, job -> job.operation().partsPerYear()),
        member("/feature/depthMm", 22, 22e-3, job -> job.feature().depthM()),
        member("/feature/wallClearanceMm", 0.7, 7e-4, job -> job.feature().wallClearanceM()),
        member("/feature/nominalSizeMm", 33, 33e-3, job -> job.feature().nominalSizeM()),
        member("/feature/toleranceBandUm", 41, 41e-6, job -> job.feature().toleranceBandM()),
        member("/tool/teeth", 3, 3, job -> job.tool().teeth()),
        member("/tool/helixDeg", 35, Math.toRadians(35), job -> job.tool().helixRad()),
        member("/tool/fluteLengthMm", 21, 21e-3, job -> job.tool().fluteLengthM()),
        member("/tool/overallLengthMm", 90, 90e-3, job -> job.tool().overallLengthM()),
        member("/tool/shank/diameterMm", 14, 14e-3, job -> job.tool().shankDiameterM()),
        member("/tool/price", 12.5, 12.5, job -> job.tool().price()),
        member("/tool/lifeMinutes", 33, 33, job -> job.tool().lifeMinutes()),
        member(
            "/machine/maxSpindleSpeedRpm",
            9000,
            9000 * RAD_PER_S,
            job -> job.machine().maxSpindleSpeedRadPerS()),
        member("/machine/powerKw", 9, 9000, job -> job.machine().powerW()),
        member("/machine/torqueNm", 44, 44, job -> job.machine().torqueNm()),
        member("/machine/axes", 5, 5, job -> job.machine().axes()),
        member(
            "/machine/clampingForceKn", 20, 20_000, job -> job.machine().clampingForceN().median()),
        member("/machine/toolChanger/maxMassKg", 5, 5, job -> job.machine().changer().maxMassKg()),
        member(
            "/machine/toolChanger/maxLengthMm",
            250,
            0.25,
            job -> job.machine().changer().maxLengthM()),
        member("/shop/hourlyRate", 51, 51, job -> job.shop().hourlyRate()));
  }

  @ParameterizedTest
  @MethodSource("members")
  void absentMemberIsAssumedAndAGivenOneKept(
      String pointer, double given, double expected, ToDoubleFunction<Job> member) {
    assertThat(pointers(complete(LEAST))).contains(pointer);
    Object value = given == Math.rint(given) ? (Object) (int) given : (Object) given;
    Job job = complete(LEAST.with(pointer, value));
    assertThat(pointers(job)).doesNotContain(pointer);
    assertThat(member.applyAsDouble(job)).isEqualTo(expected, within(1e-9 * expected));
  }

  @Test
  void aCompleteIntentLeavesOnlyTheMaterialsConstantsToAssume() {
    Intents demo = Intents.demo("01-impeller-hub-side-milling");
    Job job = complete(demo.with("/preferences/weights/grip", 1));
    assertThat(pointers(job))
        .containsOnly("/workpiece/kc11NPerMm2", "/workpiece/mc", "/feature/toleranceBandUm");
  }

  /**
   * Henkin and Datsko, Trans. ASME J. Eng. Ind. 85 (1963), recalled: speed for the same life goes
   * with 1/HB. 42CrMo4 stands in the table with 290 HB.
   */
  @ParameterizedTest
  @CsvSource({
    "200, 120, starting-value",
    "290, 120, starting-value",
    "348, 100, lowered-for-hardness",
    "400, 87, lowered-for-hardness"
  })
  void startingSpeedFallsWithHardnessAboveTheReferenceState(
      double hardnessHb, double metresPerMinute, String reason) {
    Job job = complete(LEAST.with("/workpiece/hardnessHb", hardnessHb));
    assertThat(job.operation().cuttingSpeedMPerS() * 60)
        .isCloseTo(metresPerMinute, within(1e-9 * metresPerMinute));
    assertThat(job.assumptions())
        .filteredOn(a -> a.pointer().equals("/operation/cuttingSpeedMPerMin"))
        .extracting(Assumption::reason)
        .containsExactly(reason);
  }

  @Test
  void aGivenSpeedStandsWhateverTheHardness() {
    Job job =
        complete(
            LEAST.with("/workpiece/hardnessHb", 400).with("/operation/cuttingSpeedMPerMin", 150));
    assertThat(job.operation().cuttingSpeedMPerS()).isCloseTo(2.5, within(1e-9));
  }

  @Test
  void ownConstantsReplaceTheTables() {
    Job job = complete(LEAST.with("/workpiece/kc11NPerMm2", 2500).with("/workpiece/mc", 0.26));
    assertThat(job.workpiece().kc11Pa().median()).isEqualTo(2.5e9, within(1.0));
    assertThat(job.workpiece().mc()).isEqualTo(0.26);
    assertThat(pointers(job)).doesNotContain("/workpiece/kc11NPerMm2", "/workpiece/mc");
  }

  @ParameterizedTest
  @CsvSource({
    "side-milling, end-mill, ROUGHING",
    "slotting, end-mill, ROUGHING",
    "drilling, drill, ROUGHING",
    "profiling, ball-end-mill, FINISHING",
    "reaming, reamer, FINISHING",
  })
  void usualStageOfAnOperation(String operation, String tool, Stage stage) {
    Job job = complete(Intents.of(operation, tool, 12, "C45", "BT40"));
    assertThat(job.operation().stage()).isEqualTo(stage);
  }

  @ParameterizedTest
  @CsvSource({"IT7, FINISHING", "IT8, FINISHING", "IT11, ROUGHING"})
  void aFineToleranceMeansFinishing(String grade, Stage stage) {
    Job job = complete(LEAST.with("/feature/toleranceGrade", grade));
    assertThat(job.operation().stage()).isEqualTo(stage);
  }

  @Test
  void shankIsTheNextStandardOne() {
    assertThat(
            complete(Intents.of("drilling", "drill", 8.5, "C45", "BT40")).tool().shankDiameterM())
        .isEqualTo(10e-3, within(1e-9));
  }

  @Test
  void everyAssumptionSaysWhereWhatAndWhy() {
    jobs()
        .forEach(
            intents ->
                assertThat(complete(intents).assumptions())
                    .as("%s", intents)
                    .allSatisfy(
                        assumption -> {
                          assertThat(assumption.pointer()).matches("(/[a-zA-Z0-9]+)+");
                          assertThat(assumption.reason()).matches("[a-z]+(-[a-z]+)*");
                          assertThat(assumption.value()).isNotNull();
                          if (assumption.value() instanceof Double number) {
                            assertThat(number).as(assumption.pointer()).isFinite();
                          }
                        }));
  }

  @Test
  void noMemberIsAssumedTwice() {
    jobs()
        .forEach(
            intents ->
                assertThat(pointers(complete(intents))).as("%s", intents).doesNotHaveDuplicates());
  }

  @Test
  void noMemberThatWasGivenIsAssumed() {
    jobs()
        .forEach(
            intents ->
                assertThat(pointers(complete(intents)).stream().filter(intents::has))
                    .as("%s", intents)
                    .isEmpty());
  }

  @Test
  void everyAssumptionNamesAKnownSourceOrIsGeometry() {
    Set<String> unknown = new TreeSet<>();
    jobs()
        .forEach(
            intents -> complete(intents).assumptions().forEach(a -> unknown.add(a.sourceKey())));
    unknown.removeAll(Bench.DATA.sources().keySet());
    unknown.remove("");
    assertThat(unknown).as("sources of assumptions that sources.csv lacks").isEmpty();
  }

  private static Stream<Intents> jobs() {
    return Stream.concat(Intents.demoNames().stream().map(Intents::demo), RandomIntents.of(60));
  }

  private static Arguments member(
      String pointer, double given, double expected, ToDoubleFunction<Job> member) {
    return Arguments.of(pointer, given, expected, member);
  }

  private static Job complete(Intents intents) {
    return COMPLETION.complete(intents.intent());
  }

  private static List<String> pointers(Job job) {
    return job.assumptions().stream().map(Assumption::pointer).toList();
  }
}
