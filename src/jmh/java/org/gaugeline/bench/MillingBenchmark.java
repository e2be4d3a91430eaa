package org.gaugeline.bench;

import java.util.concurrent.TimeUnit;
import org.gaugeline.mechanics.cutting.AxialSense;
import org.gaugeline.mechanics.cutting.CutLoads;
import org.gaugeline.mechanics.cutting.EdgeShape;
import org.gaugeline.mechanics.cutting.MillingCut;
import org.gaugeline.mechanics.cutting.MillingCutter;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.cutting.MillingForces;
import org.gaugeline.mechanics.cutting.SpecificForce;
import org.gaugeline.mechanics.cutting.ThinChipRoute;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Forces of a 12 mm cutter with four teeth: tabulating a cut, and one depth of it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class MillingBenchmark {
  private static final double DIAMETER_M = 12e-3;

  @Param({"CYLINDRICAL", "LEAD", "CORNER_RADIUS", "BALL"})
  public Shape shape;

  @Param({"SLOT", "SIDE"})
  public Arc arc;

  private MillingCut cut;
  private MillingForces forces;
  private double depthM;

  /** Profiles of the edge. */
  public enum Shape {
    CYLINDRICAL,
    LEAD,
    CORNER_RADIUS,
    BALL
  }

  /** Arcs of contact. */
  public enum Arc {
    SLOT,
    SIDE
  }

  @Setup
  public void prepare() {
    EdgeShape edge =
        switch (shape) {
          case CYLINDRICAL -> new EdgeShape.Cylindrical();
          case LEAD -> new EdgeShape.Lead(Math.toRadians(45));
          case CORNER_RADIUS -> new EdgeShape.CornerRadius(1e-3);
          case BALL -> new EdgeShape.Ball();
        };
    MillingEngagement engagement =
        switch (arc) {
          case SLOT -> MillingEngagement.slot();
          case SIDE -> MillingEngagement.down(1e-3, DIAMETER_M);
        };
    MillingCutter cutter =
        new MillingCutter(DIAMETER_M, 4, Math.toRadians(35), edge, AxialSense.PULLS_OUT);
    SpecificForce force =
        new SpecificForce(
            2000e6,
            0.25,
            1.2,
            0.1e-3,
            new ThinChipRoute.Anchored(ThinChipRoute.HANDBOOK_FEED_EXPONENT));
    cut = new MillingCut(cutter, engagement, 0.08e-3, force, 0.3, DIAMETER_M);
    forces = MillingForces.prepare(cut);
    depthM = 5e-3;
  }

  @Benchmark
  public MillingForces tabulate() {
    return MillingForces.prepare(cut);
  }

  @Benchmark
  public CutLoads oneDepth() {
    return forces.at(depthM);
  }
}
