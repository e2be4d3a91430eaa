package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Objects;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Measured;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Job;
import org.gaugeline.reference.MaterialIndex;
import org.junit.jupiter.api.Test;

/** What a tuned mass is worth in a stack, and where the stack is slender. */
class DamperTuningsTest {
  private static final Models MODELS = new Models(Bench.DATA);
  private static final double STICK_OUT_M = 90e-3;

  private static JobContext context(double radialMm) {
    Job job =
        new Completion(Bench.DATA, MaterialIndex.of(Bench.DATA.materials().values()))
            .complete(
                Intents.demo("27-column-pipe-far-down")
                    .with("/operation/radialDepthMm", radialMm)
                    .intent());
    return JobContext.of(job, MODELS);
  }

  private static HolderBody damped(JobContext context, String ref) {
    return Bench.dampedBodies(context.job).stream()
        .filter(body -> body.ref().startsWith(ref))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no damped body " + ref));
  }

  private static Assembly assembly(HolderBody holder) {
    return new Assembly(holder, STICK_OUT_M, 50e-3);
  }

  private static DamperTunings tunings(JobContext context, HolderBody holder) {
    return Objects.requireNonNull(
        DamperTunings.of(
            context,
            Objects.requireNonNull(ChatterCut.of(context)),
            Body.prepare(holder, MODELS),
            assembly(holder)));
  }

  /** A slim bar 300 mm long, whose lowest mode rules, in a thin cut. */
  @Test
  void onASlimBarAMassGainsAndTheWorseDetuningLoses() {
    JobContext context = context(0.4);
    DamperTunings told =
        tunings(context, damped(context, "d-bt50-psc-c5-p300+g-psc-c5-shrink-fit-20"));
    double chatter = told.with(DamperTuning.CHATTER_TUNED).guaranteedM();
    assertThat(told.tunings())
        .extracting(DamperTunings.Tuned::tuning)
        .containsExactly(DamperTuning.values());
    assertThat(told.with(DamperTuning.AS_USED).guaranteedM())
        .as("nothing was told of it, so that it is tuned against chatter")
        .isCloseTo(chatter, withinPercentage(1e-9));
    assertThat(told.with(DamperTuning.CLASSICAL).guaranteedM()).isLessThan(chatter);
    double low = told.with(DamperTuning.DETUNED_LOW).guaranteedM();
    double high = told.with(DamperTuning.DETUNED_HIGH).guaranteedM();
    assertThat(Math.min(low, high)).isLessThan(chatter);
    assertThat(Math.max(low, high))
        .as("the closed tuning is for an undamped host, and this one has a damped spindle")
        .isLessThan(1.15 * chatter);
    assertThat(chatter / told.with(DamperTuning.WITHOUT).guaranteedM())
        .as("gain of a mass of ratio %s", told.massRatio())
        .isBetween(1.3, 20.0);
    assertThat(told.detuningLoss()).isBetween(0.02, 0.5);
    assertThat(told.with(DamperTuning.DETUNED_LOW).frequencyHz())
        .isCloseTo(0.95 * told.frequencyHz(), withinPercentage(1e-6));
    for (DamperTunings.Tuned one : told.tunings()) {
      assertThat(one.depthM()).as(one.tuning().id()).isGreaterThanOrEqualTo(one.guaranteedM());
    }
  }

  /** A thick bar with a slim head in front: what the mass leaves is the head's own mode. */
  @Test
  void whereAnotherModeRulesDetuningCostsLittle() {
    JobContext context = context(0.4);
    HolderBody thick = damped(context, "d-bt50-psc-c6-p300+g-psc-c6-shrink-fit-20");
    DamperTunings told = tunings(context, thick);
    assertThat(told.with(DamperTuning.CHATTER_TUNED).guaranteedM())
        .isGreaterThan(told.with(DamperTuning.WITHOUT).guaranteedM());
    assertThat(told.detuningLoss()).as("the head rules, not the bar").isBetween(-0.05, 0.1);
    assertThat(told.massRatio()).isBetween(0.02, 0.5);
  }

  @Test
  void aStackWithoutAMassAndAMeasuredTipHaveNoTunings() {
    JobContext context = context(0.4);
    ChatterCut cut = Objects.requireNonNull(ChatterCut.of(context));
    HolderBody solid = Bench.holder("BT50", "shrink-fit", 20, 160, true);
    assertThat(DamperTunings.of(context, cut, Body.prepare(solid, MODELS), assembly(solid)))
        .isNull();
    HolderBody holder = damped(context, "d-bt50-psc-c5-p300");
    Measured tapped =
        new Measured(
            Double.NaN,
            Double.NaN,
            Double.NaN,
            List.of(new Measured.Mode(true, 2000, 0.03, 1e7)),
            List.of());
    assertThat(
            DamperTunings.of(
                context,
                cut,
                Body.prepare(holder, MODELS),
                new Assembly(holder, STICK_OUT_M, 50e-3, tapped)))
        .isNull();
  }

  /** By hand: 390 mm from the gauge plane over the bar there against 90 over 20 of the shank. */
  @Test
  void theSlenderPlaceOfALongBodyIsNotItsToolAndOfALongToolNotItsBody() {
    JobContext context = context(0.4);
    HolderBody holder = damped(context, "d-bt50-psc-c5-p300+g-psc-c5-shrink-fit-20");
    SlenderPart ofBody = SlenderPart.of(context.job.tool(), holder, STICK_OUT_M);
    assertThat(ofBody.ofTool()).isFalse();
    assertThat(ofBody.diameterM()).as("the bar, not the nose at its end").isGreaterThan(45e-3);
    HolderBody stub = Bench.holder("BT50", "shrink-fit", 20, 60, true);
    SlenderPart ofTool = SlenderPart.of(context.job.tool(), stub, STICK_OUT_M);
    assertThat(ofTool.ofTool()).isTrue();
    assertThat(ofTool.diameterM()).isCloseTo(20e-3, within(1.1e-3));
  }
}
