package org.gaugeline.mechanics.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class MillingForcesTest {
  private static final double MM = 1e-3;
  private static final Percentage EXACT = Percentage.withPercentage(1e-9);
  private static final SpecificForce STEEL = SampleCuts.alloySteel();

  @Test
  void meanForceTimesTeethEngagedIsMeanTorque() {
    // Identity Fcz,mean·ze·D/2 = Mc (Tschätsch), with chips of constant specific force so that the
    // force at the mean chip is the mean force.
    SpecificForce constant = SampleCuts.powerLaw(2000, 0, 1);
    MillingEngagement arc = MillingEngagement.down(7 * MM, 20 * MM);
    MillingCut cut = SampleCuts.cut(SampleCuts.cutter(20, 4, 38), arc, 0.1, constant);
    CutLoads loads = MillingForces.prepare(cut).at(12 * MM);
    double meanForce = MillingFormulas.toothForceN(constant, 12 * MM, loads.meanChipThicknessM());
    assertThat(meanForce * loads.toothEngagement() * 10 * MM)
        .isCloseTo(loads.meanTorqueNm(), Percentage.withPercentage(1e-5));
  }

  @Test
  void meanTorqueIsLinearInDepth() {
    MillingForces forces = MillingForces.prepare(slot(38));
    assertThat(forces.at(14 * MM).meanTorqueNm())
        .isCloseTo(7 * forces.at(2 * MM).meanTorqueNm(), EXACT);
  }

  @Test
  void torqueIsConstantWhenTheHelixSpansAPitch() {
    // Four flutes: the lag over the depth equals the 90° pitch, so every φ of the arc is always
    // occupied (Altintas, Manufacturing Automation, ch. 2).
    double depth = Math.PI / 2 * 10 * MM / Math.tan(Math.toRadians(38));
    for (int pitches = 1; pitches <= 2; pitches++) {
      CutLoads loads = MillingForces.prepare(slot(38)).at(pitches * depth);
      assertThat(loads.peakTorqueNm()).isCloseTo(loads.meanTorqueNm(), EXACT);
    }
  }

  @Test
  void lateralForceOfFourFlutesInASlotIsConstantWhenTheHelixSpansAPitch() {
    double depth = Math.PI / 2 * 10 * MM / Math.tan(Math.toRadians(38));
    CutLoads loads = MillingForces.prepare(slot(38)).at(depth);
    assertThat(loads.peakRadialForceN())
        .isCloseTo(Math.hypot(loads.meanFeedForceN(), loads.peakWallNormalForceN()), EXACT);
  }

  @Test
  void straightSingleToothPeaksAtItsLargestChip() {
    MillingCut cut =
        SampleCuts.cut(SampleCuts.cutter(10, 1, 0), MillingEngagement.slot(), 0.2, STEEL);
    CutLoads loads = MillingForces.prepare(cut).at(5 * MM);
    double ft = MillingFormulas.toothForceN(STEEL, 5 * MM, 0.2 * MM);
    assertThat(loads.peakTorqueNm()).isCloseTo(ft * 5 * MM, Percentage.withPercentage(1e-3));
    assertThat(loads.peakRadialForceN())
        .isCloseTo(ft * Math.hypot(1, 0.3), Percentage.withPercentage(1e-3));
    assertThat(loads.peakAxialPullN()).isZero();
    assertThat(loads.peakAxialPushN()).isZero();
  }

  @Test
  void smallHelixApproachesStraightFlutes() {
    MillingEngagement arc = MillingEngagement.down(2 * MM, 20 * MM);
    CutLoads straight = loads(SampleCuts.cutter(20, 4, 0), arc);
    CutLoads nearly = loads(SampleCuts.cutter(20, 4, 0.01), arc);
    assertThat(nearly.peakTorqueNm())
        .isCloseTo(straight.peakTorqueNm(), Percentage.withPercentage(1));
    assertThat(nearly.peakRadialForceN())
        .isCloseTo(straight.peakRadialForceN(), Percentage.withPercentage(1));
    assertThat(nearly.meanTorqueNm()).isCloseTo(straight.meanTorqueNm(), EXACT);
    assertThat(loads(SampleCuts.cutter(20, 4, 1e-6), arc)).isEqualTo(straight);
  }

  @Test
  void aToothThatLeavesAsTheNextEntersIsNotCountedTwice() {
    // Centred arc of exactly one pitch: one straight tooth cuts at any instant.
    MillingCutter cutter = SampleCuts.cutter(20, 6, 0);
    MillingEngagement arc = MillingEngagement.centred(10 * MM, 20 * MM);
    assertThat(arc.arcRad()).isCloseTo(cutter.pitchRad(), within(1e-12));
    assertThat(loads(cutter, arc).peakTangentialForceN())
        .isCloseTo(
            MillingFormulas.toothForceN(STEEL, 10 * MM, 0.1 * MM), Percentage.withPercentage(0.1));
  }

  @Test
  void mirroredHelixTurnsPullIntoPush() {
    MillingCutter pulling = SampleCuts.cutter(20, 4, 38);
    MillingCutter pushing =
        new MillingCutter(20 * MM, 4, pulling.helixRad(), pulling.edge(), AxialSense.PUSHES_IN);
    CutLoads out = loads(pulling, MillingEngagement.slot());
    CutLoads in = loads(pushing, MillingEngagement.slot());
    assertThat(out.peakAxialPullN()).isPositive().isEqualTo(in.peakAxialPushN());
    assertThat(out.peakAxialPushN()).isZero();
    assertThat(in.peakAxialPullN()).isZero();
    assertThat(out.peakSlipForcePulledN()).isEqualTo(in.peakSlipForcePushedN());
    assertThat(out.peakTorqueNm()).isEqualTo(in.peakTorqueNm());
  }

  @Test
  void axialPullIsTheTangentOfTheHelix() {
    // Upper bound Fa = Ft·tan β without friction along the edge; slip force is the vector sum
    // as in DIN 7190-1. Shank diameter equals cutter diameter here.
    CutLoads loads = loads(SampleCuts.cutter(20, 4, 30), MillingEngagement.slot());
    double ft = loads.peakTangentialForceN();
    assertThat(loads.peakAxialPullN()).isCloseTo(ft * Math.tan(Math.toRadians(30)), EXACT);
    assertThat(loads.peakSlipForcePulledN()).isCloseTo(ft / Math.cos(Math.toRadians(30)), EXACT);
    assertThat(loads.peakSlipForcePushedN()).isCloseTo(ft, EXACT);
  }

  @Test
  void countingEveryToothAtItsLargestChipOverstatesByMoreThanHalf() {
    // Four flutes at 38°, shoulder and slot one diameter deep: teeth in contact somewhere along the
    // edge, each at the largest chip over the whole depth, against the integral.
    for (MillingEngagement arc :
        new MillingEngagement[] {
          MillingEngagement.up(10 * MM, 20 * MM), MillingEngagement.slot()
        }) {
      double depth = 20 * MM;
      MillingCutter cutter = SampleCuts.cutter(20, 4, 38);
      CutLoads loads = MillingForces.prepare(SampleCuts.cut(cutter, arc, 0.08, STEEL)).at(depth);
      double lag = depth * Math.tan(Math.toRadians(38)) / (10 * MM);
      double teeth = Math.ceil((arc.arcRad() + lag) / (Math.PI / 2) - 0.02);
      double naive = teeth * MillingFormulas.toothForceN(STEEL, depth, 0.08 * MM) * 10 * MM;
      assertThat(naive / loads.peakTorqueNm()).isGreaterThan(1.5);
    }
  }

  @Test
  void leadAngleThinsTheChipAndPushes() {
    // Chip fz·sin κ, edge ap/sin κ: with constant kc the torque is that of κ = 90°.
    SpecificForce constant = SampleCuts.powerLaw(2000, 0, 1);
    EdgeShape lead = new EdgeShape.Lead(Math.toRadians(45));
    MillingEngagement arc = MillingEngagement.centred(40 * MM, 63 * MM);
    CutLoads square = at(SampleCuts.cut(SampleCuts.cutter(63, 5, 0), arc, 0.2, constant));
    CutLoads inclined = at(SampleCuts.cut(SampleCuts.cutter(63, 5, 0, lead), arc, 0.2, constant));
    assertThat(inclined.meanTorqueNm()).isCloseTo(square.meanTorqueNm(), EXACT);
    assertThat(inclined.maxChipThicknessM()).isCloseTo(0.2 * MM * Math.sqrt(0.5), within(1e-12));
    assertThat(inclined.meanChipThicknessM())
        .isCloseTo(square.meanChipThicknessM() * Math.sqrt(0.5), EXACT);
    assertThat(inclined.peakAxialPushN())
        .isCloseTo(0.3 * Math.sqrt(0.5) * inclined.peakTangentialForceN(), EXACT);
  }

  @Test
  void feedForceResistsUpMillingAndDragsDownMilling() {
    MillingCutter cutter = SampleCuts.cutter(20, 4, 30);
    assertThat(loads(cutter, MillingEngagement.up(2 * MM, 20 * MM)).meanFeedForceN()).isPositive();
    assertThat(loads(cutter, MillingEngagement.down(2 * MM, 20 * MM)).meanFeedForceN())
        .isNegative();
  }

  @Test
  void straightTeethLeaveTheWallUnloadedWhenOneAtMostCuts() {
    // Straight flutes in a light cut generate the wall at h = 0: no force at that instant.
    CutLoads straight = loads(SampleCuts.cutter(20, 4, 0), MillingEngagement.down(2 * MM, 20 * MM));
    CutLoads helical = loads(SampleCuts.cutter(20, 4, 30), MillingEngagement.down(2 * MM, 20 * MM));
    assertThat(straight.peakWallNormalForceN()).isLessThan(0.01 * straight.peakRadialForceN());
    assertThat(helical.peakWallNormalForceN())
        .isBetween(0.1 * helical.peakRadialForceN(), helical.peakRadialForceN());
    assertThat(
            loads(SampleCuts.cutter(20, 4, 30), MillingEngagement.centred(9 * MM, 20 * MM))
                .peakWallNormalForceN())
        .isZero();
  }

  @Test
  void refusesImpossibleInput() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MillingForces.prepare(slot(30)).at(0))
        .withMessageContaining("axialDepthM is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SampleCuts.cutter(10, 2, 30, new EdgeShape.CornerRadius(6 * MM)))
        .withMessageContaining("radiusM");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SampleCuts.cutter(10, 0, 30))
        .withMessageContaining("teeth is 0");
  }

  private static MillingCut slot(double helixDeg) {
    return SampleCuts.cut(
        SampleCuts.cutter(20, 4, helixDeg), MillingEngagement.slot(), 0.08, STEEL);
  }

  private static CutLoads loads(MillingCutter cutter, MillingEngagement arc) {
    return MillingForces.prepare(SampleCuts.cut(cutter, arc, 0.1, STEEL)).at(10 * MM);
  }

  private static CutLoads at(MillingCut cut) {
    return MillingForces.prepare(cut).at(3 * MM);
  }
}
