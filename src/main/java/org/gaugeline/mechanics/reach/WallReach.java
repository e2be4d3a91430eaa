package org.gaugeline.mechanics.reach;

import java.util.List;
import org.gaugeline.mechanics.Require;

/**
 * Gap between a profile and standing material, and the stick-out that gives a wanted gap.
 *
 * <p>A point (z, r) has the gap max{(D + z·tan α − r)·cos α, z − H}: it must stay off the face or
 * above the top. So a clearance c is kept where r + c/cos α ≤ D + z·tan α or z ≥ H + c. Along a
 * straight edge both terms are linear, so the smallest value is at an end or where they cross, and
 * the gap is exact for every frustum. Round a corner it is never more than the true distance. It is
 * signed, continuous, and never falls as the profile is shifted upwards. Rigid bodies; tool axis
 * parallel to the heights; deflection is not in it. Derived from plane geometry.
 */
public final class WallReach {
  private WallReach() {}

  /**
   * Smallest gap between a shifted profile and an obstacle. Allocates nothing.
   *
   * @param profile the profile
   * @param shiftM height of the profile's z = 0 above the tip (the stick-out, for a holder measured
   *     from its nose; 0 for a profile measured from the tip), m
   * @param obstacle what it must keep off
   * @return gap, m; negative = collision
   */
  public static double gapM(RadialProfile profile, double shiftM, Obstacle obstacle) {
    Face face = Face.of(obstacle);
    double least = Double.POSITIVE_INFINITY;
    double[] z = profile.zM;
    double[] r = profile.radiusM;
    for (int i = 1; i < z.length; i++) {
      double gap = face.edgeGapM(z[i - 1] + shiftM, r[i - 1], z[i] + shiftM, r[i]);
      least = Math.min(least, gap);
    }
    return least;
  }

  /**
   * Smallest gap to any of several obstacles, and where.
   *
   * @param profile the profile
   * @param shiftM as in {@link #gapM}, m
   * @param obstacles one or more obstacles
   * @return the gap; of equal ones the lowest of the first obstacle
   */
  public static Gap smallest(RadialProfile profile, double shiftM, List<Obstacle> obstacles) {
    if (obstacles.isEmpty()) {
      throw new IllegalArgumentException("there are 0 obstacles but must be 1 or more");
    }
    double least = Double.POSITIVE_INFINITY;
    int edge = 1;
    int nearest = 0;
    double[] z = profile.zM;
    double[] r = profile.radiusM;
    for (int o = 0; o < obstacles.size(); o++) {
      Face face = Face.of(obstacles.get(o));
      for (int i = 1; i < z.length; i++) {
        double gap = face.edgeGapM(z[i - 1] + shiftM, r[i - 1], z[i] + shiftM, r[i]);
        if (gap < least) {
          least = gap;
          edge = i;
          nearest = o;
        }
      }
    }
    double low = z[edge - 1] + shiftM;
    double high = z[edge] + shiftM;
    Face face = Face.of(obstacles.get(nearest));
    double share = face.nearestShare(low, r[edge - 1], high, r[edge]);
    double at = low + share * (high - low);
    double radius = r[edge - 1] + share * (r[edge] - r[edge - 1]);
    return new Gap(least, at, radius, nearest);
  }

  /**
   * Shortest stick-out at which a holder keeps a clearance from an obstacle. Allocates nothing.
   *
   * <p>Each point needs the lesser of H + c − z (above the top) and (r + c/cos α − D)/tan α − z
   * (off the leaning face); the profile needs the most of its points.
   *
   * @param holder profile of the parts that move with the stick-out, z from the holder's nose
   * @param obstacle what it must keep off
   * @param clearanceM wanted gap c, m, 0 or more
   * @return stick-out, m, 0 or more; infinite if no stick-out does it
   */
  public static double requiredStickOutM(
      RadialProfile holder, Obstacle obstacle, double clearanceM) {
    Require.within("clearanceM", clearanceM, 0, Double.MAX_VALUE);
    double[] z = holder.zM;
    double[] r = holder.radiusM;
    double need = 0;
    double top = obstacle.heightM() + clearanceM;
    double tan = Math.tan(obstacle.draftRad());
    double reserve = clearanceM / Math.cos(obstacle.draftRad()) - obstacle.distanceM();
    for (int i = 1; i < z.length; i++) {
      double edge =
          tan == 0
              ? uprightNeed(z[i - 1], r[i - 1] + reserve, z[i], r[i] + reserve, top)
              : leaningNeed(
                  top - z[i - 1],
                  (r[i - 1] + reserve) / tan - z[i - 1],
                  top - z[i],
                  (r[i] + reserve) / tan - z[i]);
      need = Math.max(need, edge);
    }
    return need;
  }

  /** Need of an edge at an upright face: what its lowest point beyond the face needs. */
  private static double uprightNeed(double z0, double over0, double z1, double over1, double top) {
    if (over0 > 0) {
      return top - z0;
    }
    if (over1 <= 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return top - (z0 + (z1 - z0) * over0 / (over0 - over1));
  }

  /** Largest of the lesser of two needs that are linear along an edge. */
  private static double leaningNeed(double above0, double off0, double above1, double off1) {
    double ends = Math.max(Math.min(above0, off0), Math.min(above1, off1));
    double d0 = above0 - off0;
    double d1 = above1 - off1;
    if (d0 * d1 >= 0 || Double.isInfinite(d0)) {
      return ends;
    }
    return Math.max(ends, above0 + (above1 - above0) * d0 / (d0 - d1));
  }
}
