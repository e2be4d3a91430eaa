package org.gaugeline.bench;

import java.util.concurrent.TimeUnit;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.ReducedChain;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.gaugeline.mechanics.receptance.TunedResponse;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** One stack prepared, and one draw of its joints, with and without a seam and a tuned mass. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ReducedBenchmark {
  private static final BeamMaterial STEEL = new BeamMaterial(205e9, 0.3, 7800);
  private static final BeamMaterial CARBIDE = new BeamMaterial(600e9, 0.22, 14_500);
  private final BeamChain plain =
      BeamChain.of(
          new ElasticJoint(1e8, 1e6),
          BeamSegment.cylinder(30e-3, 63e-3, STEEL),
          BeamSegment.cylinder(20e-3, 50e-3, STEEL).withBore(12e-3),
          BeamSegment.cone(50e-3, 34e-3, 27e-3, STEEL).withCore(12e-3, CARBIDE),
          new ElasticJoint(5e7, 4.6e4),
          BeamSegment.cylinder(14e-3, 12e-3, CARBIDE),
          BeamSegment.fluted(26e-3, 12e-3, 0.8, 0.6, CARBIDE));
  private final BeamChain damped =
      BeamChain.of(
          new ElasticJoint(1e8, 1e6),
          BeamSegment.cylinder(200e-3, 63e-3, STEEL),
          new ElasticJoint(2e8, 8e5),
          BeamSegment.cone(75e-3, 50e-3, 34e-3, STEEL),
          new ElasticJoint(8e7, 2e5),
          BeamSegment.cylinder(100e-3, 20e-3, CARBIDE));
  private final TunedMass mass = new TunedMass(0.9, 2600, 0.18);
  private final ReducedChain plainReduced = ReducedChain.of(plain, 2);
  private final ReducedChain dampedReduced = ReducedChain.of(damped, 3, 0.15);
  private final double[] plainSprings = {8e7, 1.5e6, 4e7, 3e4};
  private final double[] dampedSprings = {8e7, 1.5e6, 1.8e8, 9e5, 1e8, 1.5e5};
  private final ReducedModes modes = new ReducedModes();

  @Benchmark
  public ReducedChain prepare() {
    return ReducedChain.of(plain, 2);
  }

  @Benchmark
  public ReducedChain prepareWithSeamAndPlace() {
    return ReducedChain.of(damped, 3, 0.15);
  }

  @Benchmark
  public ModalResponse draw() {
    modes.solve(plainReduced, plainSprings);
    return ModalResponse.of(modes, share -> 0.02 + 0.03 * share);
  }

  @Benchmark
  public TipResponse drawWithSeamAndTunedMass() {
    modes.solve(dampedReduced, dampedSprings);
    return TunedResponse.of(modes, share -> 0.02 + 0.03 * share, mass);
  }

  /** For comparison: the whole chain solved anew, its building left out. */
  @Benchmark
  public ModalResponse wholeChain() {
    return ModalResponse.of(plain, 3, 0.02);
  }
}
