package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Worked examples; those without a printed source are arithmetic on the cited formulas. */
class MillingWorkedExamplesTest {
  private static final double MM = 1e-3;
  private static final MillingEngagement SIDE_20_10 = MillingEngagement.up(10 * MM, 20 * MM);

  @Test
  void slotWithAFaceMill() {
    // El-Hofy, Fundamentals of Machining Processes, 2nd ed., p. 189: D 30, z 8, t 4, vf 120 mm/min,
    // N 150/min, ks 1000 N/mm²: v 14.13 m/min, mean force 1019 N, 0.24 kW; torque is P/ω.
    double omega = 2 * Math.PI * 150 / 60;
    double speed = CuttingSpeeds.cuttingSpeedMPerS(omega, 30 * MM);
    double feedRate = CuttingSpeeds.feedRateMPerS(0.1 * MM, 8, omega);
    double power =
        MillingFormulas.cuttingPowerW(
            1000e6, MillingFormulas.removalRateM3PerS(4 * MM, 30 * MM, feedRate));
    assertThat(speed * 60).isCloseTo(14.13, within(0.01));
    assertThat(feedRate * 60 / MM).isCloseTo(120, within(1e-9));
    assertThat(power).isCloseTo(240, within(0.5));
    assertThat(power / speed).isCloseTo(1019, Percentage.withPercentage(0.1));

    MillingCut cut =
        SampleCuts.cut(
            SampleCuts.cutter(30, 8, 0),
            MillingEngagement.slot(),
            0.1,
            SampleCuts.powerLaw(1000, 0, 1));
    CutLoads loads = MillingForces.prepare(cut).at(4 * MM);
    assertThat(loads.meanTorqueNm()).isCloseTo(15.28, within(0.01));
    assertThat(loads.meanTorqueNm() * omega).isCloseTo(power, Percentage.withPercentage(1e-3));
  }

  @Test
  void slabMillingOfMildSteel() {
    // Kalpakjian & Schmid, Manufacturing Engineering and Technology, example 24.1 (memory): D 50,
    // z 20, 100/min, fz 0.25, d 3, w 100, 3 W·s/mm³: 500 mm/min, 150 000 mm³/min, 7.5 kW, 716 N·m.
    double omega = 2 * Math.PI * 100 / 60;
    double feedRate = CuttingSpeeds.feedRateMPerS(0.25 * MM, 20, omega);
    double removal = MillingFormulas.removalRateM3PerS(100 * MM, 3 * MM, feedRate);
    assertThat(removal * 1e9 * 60).isCloseTo(150_000, within(0.01));
    assertThat(MillingFormulas.cuttingPowerW(3e9, removal)).isCloseTo(7500, within(0.01));

    MillingCut cut =
        SampleCuts.cut(
            SampleCuts.cutter(50, 20, 0),
            MillingEngagement.up(3 * MM, 50 * MM),
            0.25,
            SampleCuts.powerLaw(3000, 0, 1));
    assertThat(MillingForces.prepare(cut).at(100 * MM).meanTorqueNm()).isCloseTo(716, within(0.5));
  }

  @Test
  void shoulderCutInAlloySteel() {
    // Formulas of Tschätsch; constants of Wikipedia "Spezifische Schnittkraft" (42CrMo4), K 1.2.
    SpecificForce force = SampleCuts.alloySteel();
    double hm = MillingFormulas.meanChipThicknessM(0.08 * MM, Math.PI / 2, SIDE_20_10);
    double kc = force.specificForcePa(hm);
    double omega = CuttingSpeeds.angularVelocityRadPerS(120.0 / 60, 20 * MM);
    double feedRate = CuttingSpeeds.feedRateMPerS(0.08 * MM, 4, omega);
    double power =
        MillingFormulas.cuttingPowerW(
            kc, MillingFormulas.removalRateM3PerS(20 * MM, 10 * MM, feedRate));
    double hMax = MillingFormulas.maxChipThicknessM(0.08 * MM, Math.PI / 2, SIDE_20_10);
    assertThat(Math.toDegrees(SIDE_20_10.arcRad())).isCloseTo(90, within(1e-9));
    assertThat(hm / MM).isCloseTo(0.0509, within(1e-4));
    assertThat(kc / 1e6).isCloseTo(6506, within(5.0));
    assertThat(omega * 60 / (2 * Math.PI)).isCloseTo(1910, within(0.5));
    assertThat(power / 1000).isCloseTo(13.25, within(0.01));
    assertThat(power / omega).isCloseTo(66.3, within(0.1));
    assertThat(MillingFormulas.toothForceN(force, 20 * MM, hMax)).isCloseTo(9256, within(5.0));
  }

  @Test
  void meanTorqueFromTheMeanChipAgreesWithTheIntegral() {
    // The mean-chip formula overstates slightly: h^(1−mc) is concave (Jensen).
    MillingCut cut =
        SampleCuts.cut(SampleCuts.cutter(20, 4, 38), SIDE_20_10, 0.08, SampleCuts.alloySteel());
    assertThat(MillingForces.prepare(cut).at(20 * MM).meanTorqueNm()).isBetween(66.3 * 0.95, 66.3);
  }

  @Test
  void lightSideCutInAlloySteel() {
    // As above: D 12, z 4, fz 0.05, ap 24, ae 1.2, power law kept below its calibration.
    MillingEngagement arc = MillingEngagement.up(1.2 * MM, 12 * MM);
    SpecificForce force = SampleCuts.alloySteel();
    double hm = MillingFormulas.meanChipThicknessM(0.05 * MM, Math.PI / 2, arc);
    double meanForce = MillingFormulas.toothForceN(force, 24 * MM, hm);
    double torque = meanForce * MillingFormulas.teethEngaged(4, arc) * 6 * MM;
    double hMax = MillingFormulas.maxChipThicknessM(0.05 * MM, Math.PI / 2, arc);
    assertThat(hm / MM).isCloseTo(0.0155, within(1e-4));
    assertThat(torque).isCloseTo(8.12, within(0.01));
    assertThat(MillingFormulas.toothForceN(force, 24 * MM, hMax)).isCloseTo(5375, within(5.0));
  }

  @Test
  void straightFlutesTakeTheLargestChipOverTheWholeDepth() {
    // Same cut: with one straight tooth in the arc the peak is b·kc1.1·K·hmax^(1−mc), both ways.
    double expected = 5375;
    assertThat(lightCutPeakN(MillingEngagement.up(1.2 * MM, 12 * MM)))
        .isCloseTo(expected, within(5.0));
    assertThat(lightCutPeakN(MillingEngagement.down(1.2 * MM, 12 * MM)))
        .isCloseTo(expected, within(5.0));
  }

  @Test
  void faceCutInStructuralSteel() {
    // Formulas of Tschätsch; S275: 1780, 0.17 (Wikipedia "Spezifische Schnittkraft"), K 1.2.
    MillingEngagement arc = MillingEngagement.up(45 * MM, 63 * MM);
    SpecificForce force = SampleCuts.powerLaw(1780, 0.17, 1.2);
    double hm = MillingFormulas.meanChipThicknessM(0.15 * MM, Math.PI / 2, arc);
    double omega = CuttingSpeeds.angularVelocityRadPerS(220.0 / 60, 63 * MM);
    double feedRate = CuttingSpeeds.feedRateMPerS(0.15 * MM, 5, omega);
    double power =
        MillingFormulas.cuttingPowerW(
            force.specificForcePa(hm),
            MillingFormulas.removalRateM3PerS(3 * MM, 45 * MM, feedRate));
    assertThat(Math.toDegrees(arc.arcRad())).isCloseTo(115.4, within(0.05));
    assertThat(hm / MM).isCloseTo(0.106, within(5e-4));
    assertThat(power / 1000).isCloseTo(5.86, within(0.01));
    assertThat(power / omega).isCloseTo(50.4, within(0.1));
    assertThat(MillingFormulas.teethEngaged(5, arc)).isCloseTo(1.60, within(0.005));

    MillingCut cut = SampleCuts.cut(SampleCuts.cutter(63, 5, 0), arc, 0.15, force);
    assertThat(MillingForces.prepare(cut).at(3 * MM).meanTorqueNm())
        .isCloseTo(50.4, Percentage.withPercentage(4));
  }

  private static double lightCutPeakN(MillingEngagement arc) {
    MillingCut cut =
        SampleCuts.cut(SampleCuts.cutter(12, 4, 0), arc, 0.05, SampleCuts.alloySteel());
    return MillingForces.prepare(cut).at(24 * MM).peakTangentialForceN();
  }
}
