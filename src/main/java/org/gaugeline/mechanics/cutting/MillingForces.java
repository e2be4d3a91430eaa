package org.gaugeline.mechanics.cutting;

import org.jspecify.annotations.Nullable;

/**
 * Forces of a milling cut integrated along the helical edges over a revolution.
 *
 * <p>Model: rigid tool without runout, chip fz·sin κ·sin φ, constant lead, tangential force kc·h
 * per width, force normal to the edge a fixed share of it (Altintas, <em>Manufacturing
 * Automation</em>, ch. 2). Axial force: Ft·tan β of the helix, an upper bound that neglects
 * friction along the edge, less the share of the normal force that an inclined or rounded edge
 * turns into push, Fr·cos κ.
 *
 * <p>{@link #prepare} tabulates once; {@link #at} then costs about a microsecond and may be called
 * from any thread. Mean torque is linear in the depth of a straight edge. Peak torque, tangential
 * force and, where no cone pushes, axial force never fall with depth. The peak lateral resultant,
 * the wall force and the axial force of rounded edges may: a longer helix spreads its forces around
 * the cutter. Where flutes are helical, peaks carry the table's error of below one per cent.
 */
public final class MillingForces {
  private static final double STRAIGHT_BELOW_RAD = 1e-6;
  private static final int WALL_SAMPLES = 24;

  private final MillingCut cut;
  private final RotationGrid grid;
  private final StraightEdgeTable straight;
  private final @Nullable RoundedEdgeTable rounded;
  private final double roundingM;
  private final double sineOfLead;
  private final double conePush;
  private final double lagStepsPerM;

  private MillingForces(MillingCut cut) {
    MillingCutter cutter = cut.cutter();
    ForceLaw law = cut.specificForce().law();
    this.cut = cut;
    this.grid = RotationGrid.over(cut.engagement(), cutter.pitchRad());
    this.straight = new StraightEdgeTable(cut, grid, law);
    this.roundingM = cutter.roundingM();
    this.rounded = roundingM > 0 ? new RoundedEdgeTable(cut, grid, law) : null;
    this.sineOfLead = Math.sin(cutter.leadRad());
    this.conePush = roundingM > 0 ? 0 : cut.radialRatio() * coneCosine(cutter);
    this.lagStepsPerM = cutter.lagRadPerM() / grid.stepRad();
  }

  /**
   * Tabulates a cut for any axial depth.
   *
   * @param cut the cut; a helix below 10⁻⁶ rad counts as straight
   * @return the tabulated cut, immutable
   */
  public static MillingForces prepare(MillingCut cut) {
    MillingCutter cutter = cut.cutter();
    if (cutter.helixRad() >= STRAIGHT_BELOW_RAD || cutter.helixRad() == 0) {
      return new MillingForces(cut);
    }
    MillingCutter fluted =
        new MillingCutter(
            cutter.diameterM(), cutter.teeth(), 0, cutter.edge(), cutter.axialSense());
    return new MillingForces(
        new MillingCut(
            fluted,
            cut.engagement(),
            cut.feedPerToothM(),
            cut.specificForce(),
            cut.radialRatio(),
            cut.gripDiameterM()));
  }

  /**
   * Loads at one axial depth.
   *
   * @param axialDepthM axial depth of cut ap, m, &gt; 0
   * @return the loads
   * @throws IllegalArgumentException if the depth is not finite and positive
   */
  public CutLoads at(double axialDepthM) {
    Require.positive("axialDepthM", axialDepthM);
    MillingCutter cutter = cut.cutter();
    double pullPerTorque = cutter.axialSense().sign() * cutter.lagRadPerM();
    LoadPeaks peaks = new LoadPeaks(pullPerTorque, cut.gripDiameterM());
    if (rounded == null) {
      if (cutter.helixRad() > 0) {
        turnHelical(axialDepthM, peaks);
      } else {
        turnFluted(axialDepthM / sineOfLead, peaks);
      }
    } else {
      turnRounded(rounded, axialDepthM, peaks);
    }
    return loads(axialDepthM, peaks);
  }

  /** Loops over the steps with the jump of the force on a step: the upper or the lower end. */
  private void turnHelical(double depthM, LoadPeaks peaks) {
    int n = grid.steps();
    double lag = depthM * lagStepsPerM;
    double lead = grid.entryAligned() ? lag : 0;
    double leadPitches = Math.floor(lead / n);
    double leadIn = lead - leadPitches * n;
    int leadStep = Math.min((int) leadIn, n - 1);
    double leadFraction = leadIn - leadStep;
    double trail = lead - lag;
    double trailPitches = Math.floor(trail / n);
    double trailIn = trail - trailPitches * n;
    int trailStep = Math.min((int) trailIn, n - 1);
    double trailFraction = trailIn - trailStep;
    double pitches = leadPitches - trailPitches;
    double scale = depthM / (lag * grid.stepRad() * sineOfLead);
    double arm = cut.cutter().radiusM();
    PeriodicIntegral t = straight.tangential;
    PeriodicIntegral x = straight.feed;
    PeriodicIntegral y = straight.normal;
    for (int i = 0; i < n; i++) {
      int l = i + leadStep;
      int b = i + trailStep;
      double ft = pitches * t.growth + t.at(l, leadFraction) - t.at(b, trailFraction);
      double fx = pitches * x.growth + x.at(l, leadFraction) - x.at(b, trailFraction);
      double fy = pitches * y.growth + y.at(l, leadFraction) - y.at(b, trailFraction);
      double tangential = scale * ft;
      peaks.take(arm * tangential, scale * fx, scale * fy, conePush * tangential);
    }
  }

  private void turnFluted(double widthM, LoadPeaks peaks) {
    double arm = cut.cutter().radiusM();
    for (int i = 0; i < grid.steps(); i++) {
      double tangential = widthM * straight.tangentialNow[i];
      peaks.take(
          arm * tangential,
          widthM * straight.feedNow[i],
          widthM * straight.normalNow[i],
          conePush * tangential);
    }
  }

  private void turnRounded(RoundedEdgeTable round, double depthM, LoadPeaks peaks) {
    double level = round.levelAt(depthM);
    double above = Math.max(0, depthM - roundingM);
    double arm = cut.cutter().radiusM();
    for (int i = 0; i < grid.steps(); i++) {
      double torque = RoundedEdgeTable.between(round.torque, level, i);
      double x = RoundedEdgeTable.between(round.feed, level, i);
      double y = RoundedEdgeTable.between(round.normal, level, i);
      double push = RoundedEdgeTable.between(round.push, level, i);
      if (above > 0) {
        torque += arm * above(straight.tangential, straight.tangentialNow, i, depthM);
        x += above(straight.feed, straight.feedNow, i, depthM);
        y += above(straight.normal, straight.normalNow, i, depthM);
      }
      peaks.take(torque, x, y, push);
    }
  }

  /** Force on the straight edge above the rounding at a step of the grid. */
  private double above(PeriodicIntegral integral, double[] now, int step, double depthM) {
    double length = depthM - roundingM;
    if (lagStepsPerM == 0) {
      return length * now[step];
    }
    double scale = 1 / (lagStepsPerM * grid.stepRad());
    return scale
        * (integral.at(step - roundingM * lagStepsPerM)
            - integral.at(step - depthM * lagStepsPerM));
  }

  private double peakWallNormalN(double depthM) {
    double peak = 0;
    if (cut.engagement().leavesEntryWall()) {
      peak = wallNormalN(depthM, 0);
    }
    if (cut.engagement().leavesExitWall()) {
      peak = Math.max(peak, wallNormalN(depthM, Math.PI));
    }
    return peak;
  }

  /** The edge generates the wall from its tip's passage until its upper end has followed. */
  private double wallNormalN(double depthM, double wallRad) {
    double passage = grid.stepsAt(wallRad);
    double span = Math.min(depthM * lagStepsPerM, grid.steps());
    double peak = Math.abs(normalAt(passage, depthM));
    for (int k = 1; k <= WALL_SAMPLES && span > 0; k++) {
      peak = Math.max(peak, Math.abs(normalAt(passage + span * k / WALL_SAMPLES, depthM)));
    }
    return peak;
  }

  private double normalAt(double position, double depthM) {
    double round = rounded == null ? 0 : rounded.normalAt(rounded.levelAt(depthM), position);
    double above = depthM - roundingM;
    if (above <= 0) {
      return round;
    }
    if (lagStepsPerM == 0) {
      return round + above / sineOfLead * straight.normalNow(position);
    }
    PeriodicIntegral integral = straight.normal;
    double difference =
        integral.at(position - roundingM * lagStepsPerM)
            - integral.at(position - depthM * lagStepsPerM);
    return round + difference / (lagStepsPerM * grid.stepRad() * sineOfLead);
  }

  private CutLoads loads(double depthM, LoadPeaks peaks) {
    MillingCutter cutter = cut.cutter();
    double perPitch = Math.max(0, depthM - roundingM) / sineOfLead / cutter.pitchRad();
    double torque = cutter.radiusM() * perPitch * straight.tangential.growth;
    double feed = perPitch * straight.feed.growth;
    if (rounded != null) {
      double level = rounded.levelAt(depthM);
      torque += rounded.torqueMean(level);
      feed += rounded.feedMean(level);
    }
    double meanSine = depthM / cutter.edgeLengthM(depthM) * cut.engagement().meanSine();
    double largestSine = largestSineOfLead(depthM) * cut.engagement().largestSine();
    return new CutLoads(
        torque,
        peaks.torque,
        peaks.torque / cutter.radiusM(),
        peaks.radial(),
        peaks.pull,
        peaks.push,
        -feed,
        peakWallNormalN(depthM),
        peaks.slipPulled(),
        peaks.slipPushed(),
        cut.feedPerToothM() * meanSine,
        cut.feedPerToothM() * largestSine,
        MillingFormulas.teethEngaged(cutter.teeth(), cut.engagement()));
  }

  private double largestSineOfLead(double depthM) {
    if (depthM >= roundingM) {
      return sineOfLead;
    }
    double cosine = 1 - depthM / roundingM;
    return Math.sqrt(1 - cosine * cosine);
  }

  private static double coneCosine(MillingCutter cutter) {
    return cutter.edge() instanceof EdgeShape.Lead lead ? Math.cos(lead.leadAngleRad()) : 0;
  }
}
