package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Job;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.gaugeline.reference.MaterialIndex;
import org.junit.jupiter.api.Test;

/**
 * The response of a held tool: the modes that are used against the full coupling, and what a tuned
 * mass does.
 */
class StackDynamicsTest {
  private static final Models MODELS = new Models(Bench.DATA);

  private static JobContext context(Intents intents) {
    Job job =
        new Completion(Bench.DATA, MaterialIndex.of(Bench.DATA.materials().values()))
            .complete(intents.intent());
    return JobContext.of(job, MODELS);
  }

  private static StackDynamics dynamics(JobContext context, HolderBody holder, double stickOutM) {
    return new StackDynamics(context, Body.prepare(holder, MODELS), stickOutM);
  }

  private static ChatterCut cut(JobContext context) {
    return Objects.requireNonNull(ChatterCut.of(context));
  }

  private static StabilityLobes lobes(JobContext context, TipResponse response) {
    return StabilityLobes.milling(cut(context).process(), TipModel.symmetric(response));
  }

  /**
   * Three modes with a residual give the depth limits of the full receptance coupling (second
   * calculation: another mesh, hysteretic instead of modal damping, no modes at all).
   */
  @Test
  void threeModesGiveTheLimitsOfTheFullCoupling() {
    for (String demo : List.of("01-impeller-hub-side-milling", "16-volute-deep-wall")) {
      JobContext context = context(Intents.demo(demo));
      for (String family : List.of("shrink-fit", "milling-chuck", "er-collet")) {
        for (double projectionMm : new double[] {75, 160}) {
          HolderBody holder = Bench.holder("HSK-A63", family, 12, projectionMm, true);
          StackDynamics dynamics = dynamics(context, holder, 50e-3);
          StabilityLobes modal = lobes(context, dynamics.response(StackDraw.MEDIAN));
          StabilityLobes coupled = lobes(context, dynamics.coupled(StackDraw.MEDIAN));
          assertThat(modal.guaranteed().depthM() / coupled.guaranteed().depthM())
              .as("%s in %s: floor", demo, holder.ref())
              .isBetween(0.94, 1.06);
          List<Double> ratios = new ArrayList<>();
          for (double rpm = 2000; rpm <= 18_000; rpm += 250) {
            double omega = rpm * 2 * Math.PI / 60;
            ratios.add(modal.limitAt(omega).depthM() / coupled.limitAt(omega).depthM());
          }
          ratios.sort(Double::compare);
          assertThat(ratios.get(ratios.size() / 10))
              .as("%s in %s: limits, lowest tenth", demo, holder.ref())
              .isGreaterThan(0.9);
          assertThat(ratios.get(9 * ratios.size() / 10))
              .as("%s in %s: limits, highest tenth", demo, holder.ref())
              .isLessThan(1.1);
        }
      }
    }
  }

  @Test
  void softerJointsLowerTheFrequencyAndTheDepth() {
    JobContext context = context(Intents.demo("01-impeller-hub-side-milling"));
    HolderBody holder = Bench.holder("HSK-A63", "shrink-fit", 12, 100, true);
    StackDynamics dynamics = dynamics(context, holder, 40e-3);
    StackDraw soft = new StackDraw(-1.645, -1.645, 0, -1.645, -1.645, 0, 0, 0);
    StackDraw stiff = new StackDraw(1.645, 1.645, 0, 1.645, 1.645, 0, 0, 0);
    double first = dynamics.modal(StackDraw.MEDIAN).modes().get(0).angularFrequencyRadPerS();
    assertThat(dynamics.modal(soft).modes().get(0).angularFrequencyRadPerS()).isLessThan(first);
    assertThat(dynamics.modal(stiff).modes().get(0).angularFrequencyRadPerS()).isGreaterThan(first);
    assertThat(lobes(context, dynamics.modal(soft)).guaranteed().depthM())
        .isLessThan(lobes(context, dynamics.modal(stiff)).guaranteed().depthM());
  }

  /** The depth without tuned mass, with it, and with one that is 20 % off, on a long bar. */
  @Test
  void aDampedBodyCutsDeeperThanItsSolidTwinAndLosesByDetuning() {
    JobContext context = context(Intents.demo("27-column-pipe-far-down"));
    HolderBody damped = slimDamped(context);
    double stickOut = 90e-3;
    StackDynamics dynamics = dynamics(context, damped, stickOut);
    double solid = lobes(context, dynamics.coupled(StackDraw.MEDIAN)).guaranteed().depthM();
    double tuned = lobes(context, dynamics.response(StackDraw.MEDIAN)).guaranteed().depthM();
    assertThat(tuned / solid).as("gain of the tuned mass in %s", damped.ref()).isGreaterThan(1.5);
    Damper damper = Objects.requireNonNull(damped.damper());
    TunedMass mass = dynamics.tuned(damper);
    TunedMass off =
        new TunedMass(mass.massKg(), 1.2 * mass.angularFrequencyRadPerS(), mass.dampingRatio());
    double detuned = lobes(context, dynamics.damped(StackDraw.MEDIAN, off)).guaranteed().depthM();
    assertThat(detuned).as("20 % off").isLessThan(tuned);
  }

  /** A finishing job 300 mm down is offered a damped body, stable deeper than its solid twin. */
  @Test
  void aDeepFinishingJobIsOfferedADampedBodyThatCutsDeeperThanItsSolidTwin() {
    Intents deep =
        Intents.demo("27-column-pipe-far-down")
            .with("/operation/stage", "finishing")
            .with("/operation/radialDepthMm", 0.2)
            .with("/feature/toleranceBandUm", 120)
            .with("/operation/axialDepthMm", 3)
            .with("/feature/obstructions", List.of(Map.of("heightMm", 300, "distanceMm", 45)));
    JobContext context = context(deep);
    List<RankedAssembly> offered =
        Bench.ask(deep).assemblies().stream()
            .filter(one -> one.assembly().holder().damper() != null)
            .toList();
    assertThat(offered).as("damped bodies among what is shown").isNotEmpty();
    double mostGain = 0;
    for (RankedAssembly one : offered) {
      StackDynamics dynamics =
          dynamics(context, one.assembly().holder(), one.assembly().stickOutM());
      double solid = lobes(context, dynamics.coupled(StackDraw.MEDIAN)).guaranteed().depthM();
      double damped = lobes(context, dynamics.response(StackDraw.MEDIAN)).guaranteed().depthM();
      assertThat(damped).as(one.assembly().holder().ref()).isGreaterThan(solid);
      mostGain = Math.max(mostGain, damped / solid);
    }
    assertThat(mostGain).as("gain where the bar rules, not the tool").isGreaterThan(1.3);
  }

  /** A slim bar, of which the lowest mode rules the depth. */
  private static HolderBody slimDamped(JobContext context) {
    return Bench.dampedBodies(context.job).stream()
        .filter(body -> body.ref().startsWith("d-bt50-psc-c5-p300+g-psc-c5-shrink-fit-20"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no slim damped body"));
  }

  /** Kienzle's slope by hand: K_t = (1 − mc)·kc1.1·h^−mc with the caller's own constants. */
  @Test
  void theCoefficientIsTheSlopeOfTheForceLaw() {
    JobContext context =
        context(
            Intents.demo("01-impeller-hub-side-milling")
                .with("/workpiece/kc11NPerMm2", 2000)
                .with("/workpiece/mc", 0.25));
    double h = context.cut.meanChipThicknessM();
    double kc = 2000e6 * Math.pow(h / 1e-3, -0.25);
    assertThat(cut(context).process().tangentialPa() / (0.75 * kc)).isBetween(0.999, 1.001);
    JobContext own =
        context(
            Intents.demo("01-impeller-hub-side-milling")
                .with("/workpiece/ktNPerMm2", 1800)
                .with("/workpiece/krRatio", 0.4));
    assertThat(cut(own).process().tangentialPa()).isEqualTo(1800e6);
    assertThat(cut(own).ktOverMedian().p95()).isEqualTo(1);
  }

  @Test
  void drawsMeetEveryMarginInEqualStrataAndAreAlwaysTheSame() {
    List<StackDraw> draws = StackDraw.latinHypercube(64);
    assertThat(draws).isEqualTo(StackDraw.latinHypercube(64));
    assertThat(draws.stream().mapToDouble(StackDraw::damping).sorted().toArray())
        .isEqualTo(draws.stream().mapToDouble(StackDraw::toolTurn).sorted().toArray());
    double correlation =
        draws.stream().mapToDouble(d -> d.damping() * d.toolTurn()).sum() / draws.size();
    assertThat(correlation).isBetween(-0.35, 0.35);
  }

  @Test
  void percentilesLieInTheMiddleOfTheirStrata() {
    double[] ten = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    assertThat(StableDepth.percentile(ten, 0.05)).isEqualTo(1);
    assertThat(StableDepth.percentile(ten, 0.5)).isEqualTo(5.5);
    assertThat(StableDepth.percentile(ten, 0.95)).isEqualTo(10);
    double[] open = {1, 2, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    assertThat(StableDepth.percentile(open, 0.9)).isInfinite();
  }
}
