package org.gaugeline.mechanics.reach;

import org.gaugeline.mechanics.Require;

/**
 * How a rotating profile leans in the plane of its axis and the wall's normal: by β about a pivot
 * that stays where it is, positive away from the wall (3+2 axes).
 *
 * <p>The pivot lies at radius a towards the wall and at height b above the tip; for a nose of
 * radius r_n on a cutter of radius R it is the nose's centre, a = R − r_n and b = r_n, so that the
 * nose goes on touching the wall. A point at radius r towards the wall (negative: on the far side)
 * and height z comes to the distance a + (r − a)·cos β − (z − b)·sin β from where the axis stood,
 * and to the height b + (z − b)·cos β + (r − a)·sin β. Obstacles run along normal to the plane, so
 * the silhouette in it decides: both meridians and the face between their lower ends. Rigid bodies.
 * Derived from plane geometry.
 *
 * @param pivotRadiusM a, m, any sign
 * @param pivotHeightM b, m
 * @param tiltRad β, rad, −π/2 to π/2
 */
public record Posture(double pivotRadiusM, double pivotHeightM, double tiltRad) {
  public Posture {
    Require.within("tiltRad", tiltRad, -Math.PI / 2, Math.PI / 2);
  }

  /** The same as seen from the wall on the other side. */
  public Posture mirrored() {
    return new Posture(-pivotRadiusM, pivotHeightM, -tiltRad);
  }

  /**
   * Smallest gap between a tilted profile and an obstacle whose distance and heights count from the
   * axis and the tip as they stood upright. Allocates nothing that lasts.
   *
   * <p>Of an obstacle that reaches inside the profile the overlap may be understated.
   *
   * @param profile the profile
   * @param shiftM height of the profile's z = 0 above the tip, m
   * @param obstacle what it must keep off
   * @return gap, m; negative = collision
   */
  public double gapM(RadialProfile profile, double shiftM, Obstacle obstacle) {
    Face face = Face.of(obstacle);
    double sin = Math.sin(tiltRad);
    double cos = Math.cos(tiltRad);
    double[] z = profile.zM;
    double[] r = profile.radiusM;
    double s = z[0] + shiftM - pivotHeightM;
    double height = pivotHeightM + s * cos - pivotRadiusM * sin;
    double out = pivotRadiusM - pivotRadiusM * cos - s * sin;
    double nearHeight = height + r[0] * sin;
    double nearOut = out + r[0] * cos;
    double farHeight = height - r[0] * sin;
    double farOut = out - r[0] * cos;
    double least = face.edgeGapM(farHeight, farOut, nearHeight, nearOut);
    for (int i = 1; i < z.length; i++) {
      double lastNearHeight = nearHeight;
      double lastNearOut = nearOut;
      double lastFarHeight = farHeight;
      double lastFarOut = farOut;
      s = z[i] + shiftM - pivotHeightM;
      height = pivotHeightM + s * cos - pivotRadiusM * sin;
      out = pivotRadiusM - pivotRadiusM * cos - s * sin;
      nearHeight = height + r[i] * sin;
      nearOut = out + r[i] * cos;
      farHeight = height - r[i] * sin;
      farOut = out - r[i] * cos;
      least = Math.min(least, face.edgeGapM(lastNearHeight, lastNearOut, nearHeight, nearOut));
      least = Math.min(least, face.edgeGapM(lastFarHeight, lastFarOut, farHeight, farOut));
    }
    return least;
  }
}
