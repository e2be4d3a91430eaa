package org.gaugeline.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.RankedAssembly;
import org.gaugeline.job.Completion;
import org.gaugeline.reference.MaterialIndex;
import org.junit.jupiter.api.Test;

/** Few draws must say what many would. */
class StackDrawTest {
  private static final Models MODELS = new Models(Bench.DATA);
  private static final Completion COMPLETION =
      new Completion(Bench.DATA, MaterialIndex.of(Bench.DATA.materials().values()));

  /** Depths beyond it are all the same to a cutter. */
  private static final double DEEP_M = 0.3;

  /**
   * Second calculation: 2048 draws of another hypercube, for the best two assemblies of every
   * demonstration job that can chatter. As ratios, root mean square.
   */
  @Test
  void fewDrawsTellTheQuantilesOfMany() {
    List<StackDraw> many = StackDraw.latinHypercube(2048, 16, 77);
    double[] probabilities = {0.05, 0.2, 0.5, 0.95};
    double[] allowed = {0.2, 0.18, 0.13, 0.22};
    double[] square = new double[probabilities.length];
    int cases = 0;
    for (String demo : Intents.demoNames()) {
      Intents intents = Intents.demo(demo);
      for (RankedAssembly one : Bench.ask(intents).assemblies().stream().limit(2).toList()) {
        JobContext context = JobContext.of(COMPLETION.complete(intents.intent()), MODELS);
        if (context.preparedCuts() == null || one.assembly().measured().hasDynamics()) {
          continue;
        }
        StackDynamics dynamics =
            new StackDynamics(
                context, Body.prepare(one.assembly().holder(), MODELS), one.assembly().stickOutM());
        DepthSpread few = spread(context, dynamics, StackDraw.FEW);
        DepthSpread all = spread(context, dynamics, many);
        for (int i = 0; i < probabilities.length; i++) {
          double ratio =
              Math.min(DEEP_M, few.quantileM(probabilities[i]))
                  / Math.min(DEEP_M, all.quantileM(probabilities[i]));
          assertThat(ratio)
              .as("%s point of %s in %s", probabilities[i], demo, one.assembly().holder().ref())
              .isBetween(0.5, 2.0);
          square[i] += Math.log(ratio) * Math.log(ratio);
        }
        cases++;
      }
    }
    assertThat(cases).isGreaterThan(20);
    for (int i = 0; i < probabilities.length; i++) {
      assertThat(Math.sqrt(square[i] / cases))
          .as("%s point over %d cases", probabilities[i], cases)
          .isLessThan(allowed[i]);
    }
  }

  private static DepthSpread spread(
      JobContext context, StackDynamics dynamics, List<StackDraw> draws) {
    PreparedCuts cuts = Objects.requireNonNull(context.preparedCuts());
    double speed = context.job.operation().spindleSpeedRadPerS();
    double[] limits =
        draws.stream()
            .mapToDouble(
                draw ->
                    cuts.rubbing(draw.rubbing()).limit(dynamics.response(draw), speed, 1).depthM())
            .toArray();
    return DepthSpread.of(limits, cuts.cut().ktOverMedian());
  }
}
