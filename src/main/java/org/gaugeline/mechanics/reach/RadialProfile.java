package org.gaugeline.mechanics.reach;

import java.util.Arrays;
import org.gaugeline.mechanics.Require;

/**
 * Outline of a body of revolution: points (z, r) joined by straight lines, z counted along the axis
 * from the tip or from the nose of the body, upwards. It may be waisted; equal z make a step.
 * Immutable.
 */
public final class RadialProfile {
  final double[] zM;
  final double[] radiusM;

  private RadialProfile(double[] zM, double[] radiusM) {
    this.zM = zM;
    this.radiusM = radiusM;
  }

  /**
   * A profile of two or more points.
   *
   * @param zM heights, m, never falling
   * @param radiusM radii, m, 0 or more, as many
   * @return the profile, with copies of both
   * @throws IllegalArgumentException if the points are too few, uneven in number or out of order
   */
  public static RadialProfile of(double[] zM, double[] radiusM) {
    return checked(zM.clone(), radiusM.clone());
  }

  private static RadialProfile checked(double[] zM, double[] radiusM) {
    if (zM.length < 2 || zM.length != radiusM.length) {
      throw new IllegalArgumentException(
          "a profile takes two or more points, but has "
              + zM.length
              + " heights and "
              + radiusM.length
              + " radii");
    }
    for (int i = 0; i < zM.length; i++) {
      Require.within("zM", zM[i], i == 0 ? -Double.MAX_VALUE : zM[i - 1], Double.MAX_VALUE);
      Require.within("radiusM", radiusM[i], 0, Double.MAX_VALUE);
    }
    return new RadialProfile(zM, radiusM);
  }

  /**
   * Starts a profile at its lowest point.
   *
   * @param zM height, m
   * @param radiusM radius, m
   * @return a builder
   */
  public static Builder startingAt(double zM, double radiusM) {
    return new Builder().to(zM, radiusM);
  }

  /**
   * Number of points.
   *
   * @return count, 2 or more
   */
  public int points() {
    return zM.length;
  }

  /**
   * Height of a point.
   *
   * @param point index from 0
   * @return z, m
   */
  public double zM(int point) {
    return zM[point];
  }

  /**
   * Radius at a point.
   *
   * @param point index from 0
   * @return r, m
   */
  public double radiusM(int point) {
    return radiusM[point];
  }

  /** Collects the points of one profile from below. */
  public static final class Builder {
    private static final int USUAL_POINTS = 6;

    private double[] z = new double[USUAL_POINTS];
    private double[] r = new double[USUAL_POINTS];
    private int size;

    private Builder() {}

    /**
     * Draws a straight line to a point.
     *
     * @param zM height, m, not below the last
     * @param radiusM radius, m
     * @return this
     */
    public Builder to(double zM, double radiusM) {
      if (size == z.length) {
        z = Arrays.copyOf(z, 2 * size);
        r = Arrays.copyOf(r, 2 * size);
      }
      z[size] = zM;
      r[size++] = radiusM;
      return this;
    }

    /**
     * Continues from the last point with a cylinder, stepping to its radius.
     *
     * @param lengthM length, m, 0 or more
     * @param radiusM radius, m
     * @return this
     */
    public Builder cylinder(double lengthM, double radiusM) {
      double at = z[size - 1];
      return to(at, radiusM).to(at + lengthM, radiusM);
    }

    /**
     * Ends the profile.
     *
     * @return the profile
     */
    public RadialProfile toProfile() {
      return checked(Arrays.copyOf(z, size), Arrays.copyOf(r, size));
    }
  }
}
