package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class BoringTest {
  private static final SpecificForce E335 = SampleCuts.powerLaw(2110, 0.17, 1.2);

  /**
   * Fine boring of 50 in E335 (constants: article "Spezifische Schnittkraft"), ap 0.25, f 0.1, κ
   * 90°, factor 1.2: Fc 94 N, M 2.34 N·m. Arithmetic on boring as internal turning (Tschätsch,
   * recalled); no published worked case could be read.
   */
  @Test
  void arithmeticOfInternalTurning() {
    Boring.BoringLoads loads = Boring.loads(bore(1, 0.1e-3), E335, 0.5, 0.35);
    assertThat(loads.cuttingForceN()).isCloseTo(94, within(0.5));
    assertThat(loads.torqueNm()).isCloseTo(2.34, within(0.01));
    assertThat(loads.radialForceN()).isCloseTo(0.5 * loads.cuttingForceN(), within(1e-9));
    assertThat(loads.feedForceN()).isCloseTo(0.35 * loads.cuttingForceN(), within(1e-9));
  }

  @Test
  void edgesThatShareTheFeedBalanceEachOtherAndCutThinner() {
    Boring.BoringLoads one = Boring.loads(bore(1, 0.2e-3), E335, 0.5, 0.35);
    Boring.BoringLoads two = Boring.loads(bore(2, 0.2e-3), E335, 0.5, 0.35);
    assertThat(two.radialForceN()).isZero();
    assertThat(two.chipThicknessM())
        .isCloseTo(one.chipThicknessM() / 2, Percentage.withPercentage(1e-9));
    assertThat(two.cuttingForceN())
        .isCloseTo(one.cuttingForceN() * Math.pow(2, 0.17), Percentage.withPercentage(1e-9));
  }

  /** A reamer's edges take the same area; only the arm differs: mean of both diameters. */
  @Test
  void takesTheChipAreaOfReaming() {
    Boring.Bore bore = new Boring.Bore(12e-3, 11.8e-3, 0.4e-3, 6, Math.toRadians(45));
    HoleLoads reamed =
        Reaming.loads(
            new Reaming.ReamedHole(12e-3, 11.8e-3, 0.4e-3, 6, Math.toRadians(45)), E335, 0);
    assertThat(Boring.loads(bore, E335, 0, 0).torqueNm())
        .isCloseTo(reamed.torqueNm() * 24 / 23.8, Percentage.withPercentage(1e-9));
  }

  /** Ra = f²/(31.2·rε): 0.1 mm and 0.4 mm leave 0.80 µm (textbook geometry of feed marks). */
  @Test
  void feedMarks() {
    assertThat(Boring.meanRoughnessM(0.1e-3, 0.4e-3) * 1e6).isCloseTo(0.801, within(1e-3));
  }

  @Test
  void refusesABoreThatLosesNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Boring.Bore(10e-3, 10e-3, 1e-4, 1, Math.PI / 2))
        .withMessageContaining("diameterM - preDrilledDiameterM");
  }

  private static Boring.Bore bore(int edges, double feedM) {
    return new Boring.Bore(50e-3, 49.5e-3, feedM, edges, Math.PI / 2);
  }
}
