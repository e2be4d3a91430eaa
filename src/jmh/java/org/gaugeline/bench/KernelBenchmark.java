package org.gaugeline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.FirstFrequencyBound;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.gaugeline.mechanics.cutting.DrilledHole;
import org.gaugeline.mechanics.cutting.Drilling;
import org.gaugeline.mechanics.cutting.HoleLoads;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.mechanics.cutting.ThinChipRoute;
import org.gaugeline.mechanics.grip.ColletGrip;
import org.gaugeline.mechanics.grip.ElasticMaterial;
import org.gaugeline.mechanics.grip.FrictionGrip;
import org.gaugeline.mechanics.grip.NutThread;
import org.gaugeline.mechanics.grip.ShrinkFit;
import org.gaugeline.mechanics.reach.Obstacle;
import org.gaugeline.mechanics.reach.RadialProfile;
import org.gaugeline.mechanics.reach.WallReach;
import org.gaugeline.mechanics.runout.RunoutJoint;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The kernels beside milling, each on one ordinary case. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class KernelBenchmark {
  private final SpecificForce force =
      new SpecificForce(
          2000e6,
          0.25,
          1.2,
          0.1e-3,
          new ThinChipRoute.Anchored(ThinChipRoute.HANDBOOK_FEED_EXPONENT));
  private final DrilledHole hole = new DrilledHole(8.5e-3, 0, 0.2e-3, Math.toRadians(140), 2);
  private final ElasticMaterial steel = new ElasticMaterial(205e9, 0.3, 7800, 12e-6);
  private final ElasticMaterial carbide = new ElasticMaterial(600e9, 0.22, 14_500, 5.5e-6);
  private final ShrinkFit fit = new ShrinkFit(12e-3, 24e-3, steel, carbide);
  private final ColletGrip collet =
      new ColletGrip(NutThread.metric(40e-3, 1.5e-3, 35e-3), Math.toRadians(8), 0.12, 0.1);
  private final List<RunoutJoint> joints =
      List.of(
          new RunoutJoint(2e-6, 0, 0.1),
          new RunoutJoint(3e-6, 20e-6, 0.05),
          new RunoutJoint(1e-6, 10e-6, 0.04));
  private final BeamMaterial body = new BeamMaterial(205e9, 0.3, 7800);
  private final BeamMaterial tool = new BeamMaterial(600e9, 0.22, 14_500);
  private final BeamChain chain = chain();
  private final BendingModes modes = new BendingModes();
  private final RadialProfile profile =
      RadialProfile.startingAt(0, 12e-3)
          .to(20e-3, 13.5e-3)
          .to(40e-3, 22e-3)
          .to(80e-3, 25e-3)
          .toProfile();
  private final Obstacle wall = Obstacle.wall(6e-3, 0.5e-3, 60e-3, Math.toRadians(1));
  private double stickOutM = 45e-3;
  private double angularVelocityRadPerS = 1000;

  private BeamChain chain() {
    return BeamChain.fromBase()
        .add(new ElasticJoint(1e9, 2e6))
        .add(BeamSegment.cylinder(30e-3, 50e-3, body))
        .add(BeamSegment.cone(40e-3, 32e-3, 24e-3, body))
        .add(new ElasticJoint(2e8, 2e4))
        .add(BeamSegment.cylinder(20e-3, 12e-3, tool))
        .add(BeamSegment.fluted(26e-3, 12e-3, 0.8, 0.6, tool))
        .toTip();
  }

  @Benchmark
  public HoleLoads drilling() {
    return Drilling.kienzle(hole, force);
  }

  @Benchmark
  public double shrinkFit() {
    double pressurePa = fit.pressurePa(15e-6, angularVelocityRadPerS);
    return pressurePa + fit.boreHoopStressPa(pressurePa);
  }

  @Benchmark
  public FrictionGrip collet() {
    return collet.grip(80, 12e-3, 0.12);
  }

  @Benchmark
  public double runout() {
    return RunoutStack.of(joints).quantileTirM(0.95);
  }

  @Benchmark
  public BeamChain composeChain() {
    return chain();
  }

  @Benchmark
  public double tipCompliance() {
    return TipCompliance.of(chain);
  }

  @Benchmark
  public double firstFrequencyBound() {
    return FirstFrequencyBound.frequencyHz(chain);
  }

  @Benchmark
  public double exactFirstFrequency() {
    return modes.firstFrequencyHz(chain);
  }

  @Benchmark
  public double threeFrequencies() {
    modes.solve(chain, 3);
    return modes.frequencyHz(2);
  }

  @Benchmark
  public double reachGap() {
    return WallReach.gapM(profile, stickOutM, wall);
  }
}
