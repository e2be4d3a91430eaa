package org.gaugeline.mechanics.reach;

import org.gaugeline.mechanics.Require;

/**
 * Standing material beside the tool: all that lies outside a plane face and below a level top.
 * Heights count from the tip of the tool, distances from its axis.
 *
 * <p>The face is at distance D + z·tan α from the axis at height z: α = 0 is upright, α > 0 leans
 * away from the tool.
 *
 * @param distanceM distance D of the face from the axis at the height of the tip, m; minus infinity
 *     = a floor everywhere under the profile
 * @param heightM height H of the top above the tip, m; infinite = no top
 * @param draftRad lean α of the face from upright, rad, 0 to below π/2
 */
public record Obstacle(double distanceM, double heightM, double draftRad) {
  public Obstacle {
    if (Double.isNaN(distanceM) || distanceM == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "distanceM is " + distanceM + " but must be a number below infinity");
    }
    if (Double.isNaN(heightM) || heightM == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException(
          "heightM is " + heightM + " but must be a number above minus infinity");
    }
    if (!(draftRad >= 0 && draftRad < Math.PI / 2)) {
      throw new IllegalArgumentException("draftRad is " + draftRad + " but must lie in [0, π/2)");
    }
  }

  /**
   * The wall that the cutter's side runs along.
   *
   * @param cutterRadiusM radius R of the cutter at the tip, m
   * @param stockM stock s left between cutter and wall, m, normally 0
   * @param heightM height H of the wall above the tip, m
   * @param draftRad lean of the wall from upright, rad; 0 = vertical
   * @return the wall at D = R + s
   */
  public static Obstacle wall(
      double cutterRadiusM, double stockM, double heightM, double draftRad) {
    Require.positive("cutterRadiusM", cutterRadiusM);
    Require.within("stockM", stockM, 0, Double.MAX_VALUE);
    return new Obstacle(cutterRadiusM + stockM, heightM, draftRad);
  }

  /**
   * An upright step or clamp at some distance from the axis.
   *
   * @param distanceM distance of its near face from the axis, m, 0 or more
   * @param heightM height of its top above the tip, m
   * @return the step
   */
  public static Obstacle step(double distanceM, double heightM) {
    Require.within("distanceM", distanceM, 0, Double.MAX_VALUE);
    return new Obstacle(distanceM, heightM, 0);
  }

  /**
   * A level surface under the whole profile, for parts that must stay above it.
   *
   * @param heightM its height above the tip, m
   * @return the floor
   */
  public static Obstacle floor(double heightM) {
    return new Obstacle(Double.NEGATIVE_INFINITY, heightM, 0);
  }

  /**
   * The narrower wall of a pocket or slot with the tool in its middle.
   *
   * @param widthM width of the slot, m
   * @param heightM depth of the slot above the tip, m
   * @return its wall at half the width
   */
  public static Obstacle slot(double widthM, double heightM) {
    Require.positive("widthM", widthM);
    return new Obstacle(widthM / 2, heightM, 0);
  }
}
