package org.gaugeline.mechanics.reach;

import org.gaugeline.mechanics.Require;

/**
 * Tilt of a ball-nose tool about the centre of its ball, away from a vertical wall that the ball
 * touches (3+2 axes).
 *
 * <p>A corner at radius r and height s above the ball's centre comes to the distance R_b + s·sin β
 * − r·cos β from the wall, at height s·cos β + r·sin β. Derived from plane geometry.
 */
public final class Tilt {
  private static final int HALVINGS = 48;

  private Tilt() {}

  /**
   * Tilt at which one corner keeps its clearance from an endless wall: β = atan(r/s) − asin[(R_b −
   * c)/√(s² + r²)], at least 0.
   *
   * @param ballRadiusM radius R_b of the ball, m
   * @param cornerRadiusM radius r of the corner, m
   * @param cornerHeightM height s of the corner above the ball's centre, m
   * @param clearanceM wanted gap c, m, 0 to R_b
   * @return tilt β, rad, 0 to π/2
   */
  public static double cornerTiltRad(
      double ballRadiusM, double cornerRadiusM, double cornerHeightM, double clearanceM) {
    Require.positive("ballRadiusM", ballRadiusM);
    Require.positive("cornerRadiusM", cornerRadiusM);
    Require.positive("cornerHeightM", cornerHeightM);
    Require.within("clearanceM", clearanceM, 0, ballRadiusM);
    double reach = Math.hypot(cornerHeightM, cornerRadiusM);
    double sine = Math.min(1, (ballRadiusM - clearanceM) / reach);
    return Math.max(0, Math.atan2(cornerRadiusM, cornerHeightM) - Math.asin(sine));
  }

  /**
   * Least tilt at which every point of a holder keeps its clearance from a wall of some height,
   * beside it or above it. More tilt never costs clearance at this wall, so halving finds it; the
   * answer errs upwards by less than 1e-14 rad.
   *
   * @param holder profile of the holder, z from its nose
   * @param stickOutM height of the nose above the tip, m, at least the ball's radius
   * @param ballRadiusM radius R_b of the ball, m
   * @param wallHeightM height H of the wall above the tip, m; infinite = endless
   * @param clearanceM wanted gap c, m, 0 to R_b
   * @return tilt β, rad, 0 to π/2
   */
  public static double requiredTiltRad(
      RadialProfile holder,
      double stickOutM,
      double ballRadiusM,
      double wallHeightM,
      double clearanceM) {
    Require.positive("ballRadiusM", ballRadiusM);
    Require.within("stickOutM", stickOutM, ballRadiusM, Double.MAX_VALUE);
    Require.within("clearanceM", clearanceM, 0, ballRadiusM);
    Face wall = new Face(ballRadiusM, wallHeightM - ballRadiusM, 0, 1);
    double above = stickOutM - ballRadiusM;
    if (gapM(holder, above, wall, 0) >= clearanceM) {
      return 0;
    }
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (gapM(holder, above, wall, middle) >= clearanceM) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * Height of the far corner above the ball's centre under tilt, s·cos β − r·sin β: what comes down
   * to the floor on the other side.
   *
   * @param cornerRadiusM radius r of the corner, m
   * @param cornerHeightM height s of the corner above the ball's centre, m
   * @param tiltRad tilt β, rad
   * @return height, m; negative = below the ball's centre
   */
  public static double farCornerHeightM(
      double cornerRadiusM, double cornerHeightM, double tiltRad) {
    return cornerHeightM * Math.cos(tiltRad) - cornerRadiusM * Math.sin(tiltRad);
  }

  private static double gapM(RadialProfile holder, double above, Face wall, double tiltRad) {
    double sin = Math.sin(tiltRad);
    double cos = Math.cos(tiltRad);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < holder.zM.length; i++) {
      double s0 = holder.zM[i - 1] + above;
      double r0 = holder.radiusM[i - 1];
      double s1 = holder.zM[i] + above;
      double r1 = holder.radiusM[i];
      double gap =
          wall.edgeGapM(
              s0 * cos + r0 * sin, r0 * cos - s0 * sin, s1 * cos + r1 * sin, r1 * cos - s1 * sin);
      least = Math.min(least, gap);
    }
    return least;
  }
}
