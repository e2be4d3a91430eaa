package org.gaugeline.bench;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.chatter.ChatterLimit;
import org.gaugeline.mechanics.chatter.FloquetMultiplier;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.ProcessDamping;
import org.gaugeline.mechanics.chatter.SemiDiscretization;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.LossFactors;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.ReceptanceGrid;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Stability of a tip with two modes, the same in both directions, and receptances of a tool. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ChatterBenchmark {
  private final ModalResponse response =
      ModalResponse.of(
          TipMode.ofStiffness(2 * Math.PI * 700, 2e7, 0.03),
          TipMode.ofStiffness(2 * Math.PI * 1900, 1.5e7, 0.02));
  private final TipModel tip = TipModel.symmetric(response);
  private final MillingProcess cut =
      new MillingProcess(4, 1.8e9, 0.3, MillingEngagement.down(0.5, 1));
  private final StabilityLobes prepared = StabilityLobes.milling(cut, tip);
  private final MillingProcess rubbing = cut.with(new ProcessDamping(1.6e-4, 6e-3));
  private final StabilityLobes rubbed = StabilityLobes.milling(rubbing, tip);
  private final SemiDiscretization exact =
      new SemiDiscretization(cut, response, response, SemiDiscretization.DEFAULT_STEPS);
  private final double[] speed = IntStream.range(0, 400).mapToDouble(i -> 200 + 5.0 * i).toArray();
  private final double[] depth = new double[400];
  private final double[] chatter = new double[400];
  private final BeamMaterial steel = new BeamMaterial(205e9, 0.3, 7800);
  private final BeamMaterial carbide = new BeamMaterial(600e9, 0.22, 14_500);
  private final ReceptanceGrid holder =
      ReceptanceGrid.wall(IntStream.range(1, 501).mapToDouble(i -> 40.0 * i).toArray())
          .extend(
              BeamChain.of(new ElasticJoint(1e9, 2e6), BeamSegment.cylinder(70e-3, 40e-3, steel)),
              LossFactors.uniform(0.02));
  private final BeamChain tool =
      BeamChain.of(new ElasticJoint(2e8, 2e4), BeamSegment.cylinder(45e-3, 12e-3, carbide));
  private double spindleRadPerS = 900;

  @Benchmark
  public ChatterLimit limitFromScratch() {
    return StabilityLobes.milling(cut, tip).limitAt(spindleRadPerS);
  }

  @Benchmark
  public ChatterLimit limitPrepared() {
    return prepared.limitAt(spindleRadPerS);
  }

  @Benchmark
  public double[] chartOf400Speeds() {
    StabilityLobes.milling(cut, tip).limits(speed, depth, chatter);
    return depth;
  }

  @Benchmark
  public ChatterLimit rubbedLimitFromScratch() {
    return StabilityLobes.milling(rubbing, tip).limitAt(spindleRadPerS);
  }

  @Benchmark
  public ChatterLimit rubbedLimitPrepared() {
    return rubbed.limitAt(spindleRadPerS);
  }

  @Benchmark
  public double[] rubbedChartOf400Speeds() {
    StabilityLobes.milling(rubbing, tip).limits(speed, depth, chatter);
    return depth;
  }

  @Benchmark
  public FloquetMultiplier multiplier() {
    return exact.multiplier(spindleRadPerS, 1e-3);
  }

  @Benchmark
  public ReceptanceGrid toolOnHolderAt500Frequencies() {
    return holder.extend(tool, LossFactors.uniform(0.02));
  }
}
