package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How families hold, as every shop knows it. All facts here: common practice. */
class GripFactsTest {
  private static final List<String> FRICTION_FAMILIES =
      List.of("er-collet", "milling-chuck", "shrink-fit", "hydraulic", "high-torque-hydraulic");

  @ParameterizedTest
  @ValueSource(doubles = {12, 20})
  void sideLockHoldsBestAgainstPullOut(double diameterMm) {
    RankedAssembly sideLock = held("side-lock", diameterMm);
    for (String family : FRICTION_FAMILIES) {
      assertThat(held(family, diameterMm).predicted().axialHoldP05N())
          .as("hold of %s against pull-out at Ø%.0f", family, diameterMm)
          .isLessThan(sideLock.predicted().axialHoldP05N());
    }
    assertThat(Bench.margin(sideLock, Pair.PULL_OUT)).isPresent();
    assertThat(Bench.warns(sideLock, "pull-out-possible")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(doubles = {12, 20})
  void sideLockRunsOutWorst(double diameterMm) {
    double sideLock = held("side-lock", diameterMm).predicted().runoutMedianM();
    for (String family : FRICTION_FAMILIES) {
      assertThat(held(family, diameterMm).predicted().runoutMedianM())
          .as("runout of %s with a new collet at Ø%.0f", family, diameterMm)
          .isLessThan(sideLock);
    }
  }

  @Test
  void millingChuckTransmitsFarMoreThanEr32YetCanBePulledOutOf() {
    RankedAssembly chuck = held("milling-chuck", 20);
    RankedAssembly er32 = weigh(Bench.holder("HSK-A63", "er-collet", 20, 100, true), 20);
    assertThat(er32.assembly().holder().ref()).contains("er32");
    assertThat(chuck.predicted().gripTorqueMedianNm())
        .isGreaterThan(2 * er32.predicted().gripTorqueMedianNm());
    assertThat(Bench.margin(chuck, Pair.PULL_OUT)).as("a positive stop").isEmpty();
    assertThat(Bench.warns(chuck, "pull-out-possible")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 25})
  void highTorqueHydraulicTransmitsMostFromTwentyMillimetresUp(double diameterMm) {
    double most = torque("high-torque-hydraulic", diameterMm);
    double chuck = torque("milling-chuck", diameterMm);
    double shrink = torque("shrink-fit", diameterMm);
    double hydraulic = torque("hydraulic", diameterMm);
    double collet = torque("er-collet", diameterMm);
    assertThat(most).as("over milling chuck").isGreaterThan(chuck);
    assertThat(most).as("over shrink-fit").isGreaterThan(shrink);
    assertThat(chuck).as("milling chuck over hydraulic").isGreaterThan(hydraulic);
    assertThat(shrink).as("shrink-fit over hydraulic").isGreaterThan(hydraulic);
    assertThat(hydraulic).as("hydraulic over ER").isGreaterThan(collet);
  }

  @Test
  void erIsAdequateForModerateCutsAndOutOfItsDepthInHeavyRoughing() {
    Intents moderate =
        end("side-milling", 10, "semi-finishing")
            .with("/operation/axialDepthMm", 5)
            .with("/operation/radialDepthMm", 1)
            .with("/operation/feedPerToothMm", 0.08);
    Intents heavy =
        end("slotting", 16, "roughing")
            .with("/operation/axialDepthMm", 16)
            .with("/operation/feedPerToothMm", 0.1);
    assertThat(Bench.best(Bench.ask(moderate), "er-collet").scores().grip())
        .as("grip in a moderate cut")
        .isGreaterThanOrEqualTo(50);
    assertThat(Bench.best(Bench.ask(heavy), "er-collet").scores().grip())
        .as("grip in a full slot one diameter deep")
        .isLessThan(5);
    assertThat(Bench.verdict(Bench.ask(heavy), "er-collet").standing())
        .isEqualTo(Standing.UNSUITABLE);
  }

  @Test
  void dirtyColletRunsOutMoreAndGripsLess() {
    HolderBody er = Bench.holder("HSK-A63", "er-collet", 12, 100, true);
    Intents job = end("side-milling", 12, "roughing");
    RankedAssembly fresh = Bench.weigh(job.with("/shop/colletCondition", "new"), er);
    RankedAssembly used = Bench.weigh(job.with("/shop/colletCondition", "used"), er);
    assertThat(used.predicted().runoutMedianM()).isGreaterThan(fresh.predicted().runoutMedianM());
    assertThat(used.predicted().gripTorqueMedianNm())
        .isLessThan(fresh.predicted().gripTorqueMedianNm());
  }

  @ParameterizedTest
  @ValueSource(doubles = {6, 8, 10})
  void hydraulicsFailRoughingBelowTwelveMillimetres(double diameterMm) {
    Recommendation answer = Bench.ask(roughingSlot(diameterMm));
    assertThat(Bench.verdict(answer, "hydraulic").standing()).isEqualTo(Standing.UNSUITABLE);
    assertThat(Bench.best(answer, "hydraulic").scores().grip()).isLessThan(50);
  }

  @Test
  void highTorqueHydraulicRoughsAtTwentyWhereTheHydraulicSlips() {
    Recommendation answer = Bench.ask(roughingSlot(20).with("/operation/axialDepthMm", 6));
    assertThat(Bench.best(answer, "high-torque-hydraulic").scores().grip()).isGreaterThan(50);
    assertThat(Bench.best(answer, "hydraulic").scores().grip()).isLessThan(50);
  }

  @Test
  void rightHelixPullsOutAndLeftHelixPushesIn() {
    Intents right = end("side-milling", 12, "roughing").with("/tool/helixDeg", 40);
    Recommendation pulled = Bench.ask(right);
    Recommendation pushed = Bench.ask(right.with("/tool/helixHand", "left"));
    assertThat(pulled.loads().axialPullN()).isGreaterThan(pulled.loads().axialPushN());
    assertThat(pushed.loads().axialPushN()).isGreaterThan(pushed.loads().axialPullN());
  }

  @Test
  void highSpeedSteelInShrinkFitIsCautionedNotForbidden() {
    Recommendation answer =
        Bench.ask(end("side-milling", 12, "finishing").with("/tool/substrate", "hss"));
    assertThat(Bench.verdict(answer, "shrink-fit").standing()).isNotEqualTo(Standing.UNAVAILABLE);
    assertThat(Bench.warns(Bench.best(answer, "shrink-fit"), "hss-in-shrink")).isTrue();
  }

  private static double torque(String family, double diameterMm) {
    return held(family, diameterMm).predicted().gripTorqueMedianNm();
  }

  private static RankedAssembly held(String family, double diameterMm) {
    return weigh(Bench.holder("HSK-A63", family, diameterMm, 100, true), diameterMm);
  }

  private static RankedAssembly weigh(HolderBody holder, double diameterMm) {
    String form = holder.family().id().equals("side-lock") ? "flat" : "cylindrical";
    return Bench.weigh(
        end("side-milling", diameterMm, "roughing").with("/tool/shank/form", form), holder);
  }

  private static Intents roughingSlot(double diameterMm) {
    return end("slotting", diameterMm, "roughing")
        .with("/operation/axialDepthMm", diameterMm)
        .with("/operation/feedPerToothMm", diameterMm * 0.006);
  }

  private static Intents end(String operation, double diameterMm, String stage) {
    return Intents.of(operation, "end-mill", diameterMm, "42CrMo4", "HSK-A63")
        .with("/operation/stage", stage)
        .with("/tool/helixDeg", 40)
        .with("/shop/colletCondition", "new")
        .with("/shop/torqueWrench", true);
  }
}
