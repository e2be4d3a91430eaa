package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.mechanics.reach.Obstacle;
import org.gaugeline.mechanics.reach.Posture;
import org.gaugeline.mechanics.reach.RadialProfile;
import org.gaugeline.mechanics.reach.WallReach;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * What stands around the tool of one job, and how near a stack comes to it.
 *
 * <p>The wall being cut leans by its draft and touches the cutter's nose; the far wall of a pocket
 * stands upright across its width; an obstruction may stand on either side. Under tilt the floor at
 * the tip counts too. A hole goes along the tool, so its mouth is a level that leans with it.
 */
final class Reach {
  /** Parts that touch are told by a caution; deeper is an overlap. */
  static final double TOUCH_M = 2e-6;

  private static final int GAPS_KEPT = 6;
  private static final double UPRIGHT_RAD = 1e-9;

  private final Job.Tool tool;
  private final Posture near;
  private final Posture far;
  private final boolean upright;

  /** Cut walls and floor: the cutting part belongs there. */
  private final List<Obstacle> atNear = new ArrayList<>(2);

  private final List<Obstacle> atFar = new ArrayList<>(1);

  /** Obstructions, on either side: nothing of the tool belongs there. */
  private final List<Obstacle> besides = new ArrayList<>(1);

  /** Gaps of the body that was asked about last. */
  private @Nullable Body gapsOf;

  private int knownGaps;
  private final double[] gapStickOutsM = new double[GAPS_KEPT];
  private final double[] gapsM = new double[GAPS_KEPT];

  /** Whether the tool's own neck, shank or flutes could overlap anything at all. */
  private final boolean watchesTool;

  private Reach(Job job, double depthM, double tiltRad) {
    this.tool = job.tool();
    boolean hole = OperationCompletion.isHole(job.operation().kind());
    double radius = tool.diameterM() / 2;
    double nose = Math.min(tool.cornerRadiusM(), radius);
    this.near = hole ? new Posture(0, 0, tiltRad) : new Posture(radius - nose, nose, tiltRad);
    this.far = near.mirrored();
    this.upright = Math.abs(tiltRad) < UPRIGHT_RAD;
    stand(job, depthM, hole, nose);
    this.watchesTool = !upright || toolGapM(tool.overallLengthM()) < -TOUCH_M;
  }

  static Reach of(Job job) {
    return new Reach(job, job.feature().depthM(), job.feature().tiltRad());
  }

  static Reach atDepth(Job job, double depthM) {
    return new Reach(job, depthM, job.feature().tiltRad());
  }

  static Reach atTilt(Job job, double tiltRad) {
    return new Reach(job, job.feature().depthM(), tiltRad);
  }

  private void stand(Job job, double depthM, boolean hole, double noseM) {
    Job.Feature feature = job.feature();
    boolean level = job.operation().kind() == OperationKind.FACE_MILLING;
    if (level || (!upright && !hole)) {
      atNear.add(Obstacle.floor(0));
    }
    if (hole && !upright) {
      atNear.add(Obstacle.floor(depthM * Math.cos(near.tiltRad())));
    } else if (!level) {
      atNear.add(beside(job, depthM, noseM));
    }
    if (!Double.isNaN(feature.pocketWidthM())) {
      double across = feature.pocketWidthM() - tool.diameterM() / 2;
      atFar.add(new Obstacle(across, depthM, 0));
    }
    for (Intent.Obstruction obstruction : feature.obstructions()) {
      besides.add(Obstacle.step(obstruction.distanceM(), obstruction.heightM()));
    }
  }

  /** What stands beside the cutter: the wall that its rim runs along. */
  private Obstacle beside(Job job, double depthM, double noseM) {
    if (tool.kind() == ToolKind.DISC_CUTTER) {
      // the work stands over the slot, nearer to the axis than the rim by the slot's depth
      double distance = Math.max(0, tool.diameterM() / 2 - job.operation().radialDepthM());
      return Obstacle.step(distance, depthM);
    }
    double draft = job.feature().wallDraftRad();
    return Obstacle.wall(touchingRadiusM(noseM, draft), 0, depthM, draft);
  }

  /**
   * Distance at the tip's height of a leaning wall that touches the nose: R − r_n·(1 − tan(π/4 −
   * α/2)).
   */
  private double touchingRadiusM(double noseM, double draftRad) {
    double radius = tool.diameterM() / 2;
    return draftRad == 0 ? radius : radius - noseM * (1 - Math.tan(Math.PI / 4 - draftRad / 2));
  }

  /**
   * Smallest gap of a holder body to everything that stands, m; negative = collision. Choosing a
   * stick-out and judging it ask for the same few, one body after another.
   */
  @SuppressWarnings("ReferenceEquality") // an equal body would only be measured again
  double holderGapM(Body body, double stickOutM) {
    if (gapsOf != body) {
      gapsOf = body;
      knownGaps = 0;
    }
    for (int i = 0; i < knownGaps; i++) {
      if (gapStickOutsM[i] == stickOutM) {
        return gapsM[i];
      }
    }
    double gap = holderGapM(body.fromNose(), stickOutM);
    if (knownGaps < GAPS_KEPT) {
      gapStickOutsM[knownGaps] = stickOutM;
      gapsM[knownGaps++] = gap;
    }
    return gap;
  }

  /** The same of a part of a holder, its outline measured from the nose. */
  double holderGapM(RadialProfile part, double stickOutM) {
    return Math.min(gapM(part, stickOutM, atNear, atFar), gapM(part, stickOutM, besides, besides));
  }

  /**
   * Smallest gap of the tool's own neck and shank, and of its flutes to obstructions, m; +∞ where
   * they cannot overlap anything.
   */
  double ownGapM(double stickOutM) {
    return watchesTool ? toolGapM(stickOutM) : Double.POSITIVE_INFINITY;
  }

  private double toolGapM(double stickOutM) {
    double flutes = Math.min(tool.fluteLengthM(), stickOutM);
    double neck = Math.min(Math.max(tool.neckLengthM(), flutes), stickOutM);
    RadialProfile.Builder behind = RadialProfile.startingAt(flutes, behindRadiusM(flutes));
    behind.to(neck, behindRadiusM(flutes)).to(neck, shankRadiusM(neck, stickOutM));
    RadialProfile relieved = behind.to(stickOutM, shankRadiusM(neck, stickOutM)).toProfile();
    double least = gapM(relieved, 0, atNear, atFar);
    if (!besides.isEmpty()) {
      RadialProfile cutting =
          RadialProfile.startingAt(0, 0)
              .to(0, upright ? tool.diameterM() / 2 : 0)
              .to(Math.min(flutes, tool.cornerRadiusM()), tool.diameterM() / 2)
              .to(flutes, tool.diameterM() / 2)
              .toProfile();
      least = Math.min(least, gapM(relieved, 0, besides, besides));
      least = Math.min(least, gapM(cutting, 0, besides, besides));
    }
    return least;
  }

  /** Behind the flutes: the neck where there is one, else the shank. */
  private double behindRadiusM(double flutesM) {
    boolean necked = tool.neckLengthM() > flutesM;
    return (necked ? tool.neckDiameterM() : tool.shankDiameterM()) / 2;
  }

  /** A neck that ends in the holder has no shank before it. */
  private double shankRadiusM(double neckM, double stickOutM) {
    return neckM < stickOutM ? tool.shankDiameterM() / 2 : behindRadiusM(tool.fluteLengthM());
  }

  private double gapM(
      RadialProfile profile, double shiftM, List<Obstacle> onNear, List<Obstacle> onFar) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < onNear.size(); i++) {
      Obstacle obstacle = onNear.get(i);
      least =
          Math.min(
              least,
              upright
                  ? WallReach.gapM(profile, shiftM, obstacle)
                  : near.gapM(profile, shiftM, obstacle));
    }
    boolean same = upright && onNear == onFar;
    for (int i = 0; i < onFar.size() && !same; i++) {
      Obstacle obstacle = onFar.get(i);
      least =
          Math.min(
              least,
              upright
                  ? WallReach.gapM(profile, shiftM, obstacle)
                  : far.gapM(profile, shiftM, obstacle));
    }
    return least;
  }

  /**
   * Shortest stick-out of a range at which a holder keeps a gap. Where none does: upright beyond
   * the range, under tilt the one that comes nearest of those tried.
   *
   * <p>Upright it is solved. Under tilt a longer tool moves the holder away from one wall and
   * nearer to the other, by no more than itself: so the search may step as far as the gap falls
   * short.
   */
  double clearingStickOutM(
      Body body, double shortestM, double longestM, double wantedM, double stepM) {
    if (!upright) {
      return march(body, shortestM, longestM, wantedM, stepM / 4);
    }
    double need = shortestM;
    for (List<Obstacle> standing : List.of(atNear, atFar, besides)) {
      for (int i = 0; i < standing.size(); i++) {
        need =
            Math.max(need, WallReach.requiredStickOutM(body.fromNose(), standing.get(i), wantedM));
      }
    }
    return need;
  }

  private double march(
      Body body, double shortestM, double longestM, double wantedM, double leastStepM) {
    double best = shortestM;
    double most = Double.NEGATIVE_INFINITY;
    double at = shortestM;
    boolean last = false;
    while (!last && most < wantedM) {
      last = at >= longestM;
      double gap = holderGapM(body, at);
      if (gap > most) {
        most = gap;
        best = at;
      }
      double step = Math.max(leastStepM, wantedM - gap);
      at = Math.min(at + step, Math.max(shortestM, longestM));
    }
    return best;
  }

  /** Whether letting the tool stand out further costs gap. */
  boolean isCostlier(Body body, double stickOutM, double shorterM) {
    return !upright && holderGapM(body, stickOutM) < holderGapM(body, shorterM);
  }
}
