package org.gaugeline.mechanics.cutting;

import org.jspecify.annotations.Nullable;

/**
 * Force normal to the machined wall while an edge generates it: from the tip's passage at φ = 0
 * (up-milling) or φ = π (down-milling) until the upper end of the edge has followed.
 */
final class WallForce {
  private static final int SAMPLES = 24;

  private final RotationGrid grid;
  private final StraightEdgeTable straight;
  private final @Nullable RoundedEdgeTable rounded;
  private final MillingEngagement engagement;
  private final double roundingM;
  private final double sineOfLead;
  private final double lagStepsPerM;

  WallForce(
      MillingCut cut,
      RotationGrid grid,
      StraightEdgeTable straight,
      @Nullable RoundedEdgeTable rounded) {
    this.grid = grid;
    this.straight = straight;
    this.rounded = rounded;
    this.engagement = cut.engagement();
    this.roundingM = cut.cutter().roundingM();
    this.sineOfLead = Math.sin(cut.cutter().leadRad());
    this.lagStepsPerM = cut.cutter().lagRadPerM() / grid.stepRad();
  }

  /** Largest |force| on the walls that the arc leaves; 0 if it leaves none. */
  double peakN(double depthM) {
    if (!engagement.leavesEntryWall() && !engagement.leavesExitWall()) {
      return 0;
    }
    RoundedEdgeTable.Level round = rounded == null ? null : rounded.levelAt(depthM);
    double peak = engagement.leavesEntryWall() ? passageN(depthM, 0, round) : 0;
    return engagement.leavesExitWall() ? Math.max(peak, passageN(depthM, Math.PI, round)) : peak;
  }

  private double passageN(double depthM, double wallRad, RoundedEdgeTable.@Nullable Level round) {
    double passage = grid.stepsAt(wallRad);
    double span = Math.min(depthM * lagStepsPerM, grid.steps());
    double peak = Math.abs(normalAt(passage, depthM, round));
    for (int k = 1; k <= SAMPLES && span > 0; k++) {
      peak = Math.max(peak, Math.abs(normalAt(passage + span * k / SAMPLES, depthM, round)));
    }
    return peak;
  }

  private double normalAt(double position, double depthM, RoundedEdgeTable.@Nullable Level level) {
    double round = rounded == null || level == null ? 0 : rounded.normalAt(level, position);
    double above = depthM - roundingM;
    if (above <= 0) {
      return round;
    }
    if (lagStepsPerM == 0) {
      return round + above / sineOfLead * straight.normalNow(position);
    }
    double difference =
        straight.normal.at(position - roundingM * lagStepsPerM)
            - straight.normal.at(position - depthM * lagStepsPerM);
    return round + difference / (lagStepsPerM * grid.stepRad() * sineOfLead);
  }
}
