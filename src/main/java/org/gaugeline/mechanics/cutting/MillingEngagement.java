package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * Arc over which a tooth cuts. The immersion angle φ starts at the normal to the feed on the side
 * where the tooth meets the work in up-milling and grows with rotation, so the chip is h = fz·sin
 * κ·sin φ (Altintas, <em>Manufacturing Automation</em>).
 *
 * @param entryRad angle at which the tooth enters, rad, 0 to below exit
 * @param exitRad angle at which it leaves, rad, above entry to π
 */
public record MillingEngagement(double entryRad, double exitRad) {
  private static final double SAME_ANGLE_RAD = 1e-9;

  public MillingEngagement {
    Require.within("entryRad", entryRad, 0, Math.PI);
    Require.within("exitRad", exitRad, 0, Math.PI);
    Require.positive("exitRad - entryRad", exitRad - entryRad);
  }

  /**
   * Up-milling: 0 to arccos(1 − 2ae/D).
   *
   * @param radialDepthM ae, m, above 0 to D
   * @param diameterM cutting diameter D at the depth looked at, m
   */
  public static MillingEngagement up(double radialDepthM, double diameterM) {
    return new MillingEngagement(0, sideArc(radialDepthM, diameterM));
  }

  /**
   * Down-milling: π − arccos(1 − 2ae/D) to π.
   *
   * @param radialDepthM ae, m, above 0 to D
   * @param diameterM cutting diameter D at the depth looked at, m
   */
  public static MillingEngagement down(double radialDepthM, double diameterM) {
    return new MillingEngagement(Math.PI - sideArc(radialDepthM, diameterM), Math.PI);
  }

  /** Full slot: 0 to π. */
  public static MillingEngagement slot() {
    return new MillingEngagement(0, Math.PI);
  }

  /**
   * Face cut with the cutter centred on the band of width ae: π/2 ± arcsin(ae/D).
   *
   * @param radialDepthM ae, m, above 0 to D
   * @param diameterM cutting diameter D, m
   */
  public static MillingEngagement centred(double radialDepthM, double diameterM) {
    Require.positive("radialDepthM", radialDepthM);
    Require.within("radialDepthM", radialDepthM, 0, diameterM);
    double half = Math.asin(radialDepthM / diameterM);
    return new MillingEngagement(Math.PI / 2 - half, Math.PI / 2 + half);
  }

  /**
   * Diameter on which a ball end cuts at its full axial depth: 2√(ap·(D − ap)) below the equator, D
   * above (geometry; tool axis normal to the surface).
   *
   * @param diameterM ball diameter D, m, &gt; 0
   * @param axialDepthM ap, m, &gt; 0
   * @return effective diameter, m
   */
  public static double ballEffectiveDiameterM(double diameterM, double axialDepthM) {
    Require.positive("diameterM", diameterM);
    Require.positive("axialDepthM", axialDepthM);
    return axialDepthM >= diameterM / 2
        ? diameterM
        : 2 * Math.sqrt(axialDepthM * (diameterM - axialDepthM));
  }

  /** Length of the arc, rad. */
  public double arcRad() {
    return exitRad - entryRad;
  }

  /** Largest sin φ in the arc. */
  public double largestSine() {
    boolean passesNinety = entryRad <= Math.PI / 2 && exitRad >= Math.PI / 2;
    return passesNinety ? 1 : Math.max(Math.sin(entryRad), Math.sin(exitRad));
  }

  /** Mean of sin φ over the arc: (cos φ1 − cos φ2)/(φ2 − φ1). */
  public double meanSine() {
    return (Math.cos(entryRad) - Math.cos(exitRad)) / arcRad();
  }

  /** Whether a wall is left where the tooth enters with no chip (up-milling side). */
  boolean leavesEntryWall() {
    return entryRad < SAME_ANGLE_RAD;
  }

  /** Whether a wall is left where the tooth exits with no chip (down-milling side). */
  boolean leavesExitWall() {
    return Math.PI - exitRad < SAME_ANGLE_RAD;
  }

  private static double sideArc(double radialDepthM, double diameterM) {
    Require.positive("radialDepthM", radialDepthM);
    Require.within("radialDepthM", radialDepthM, 0, diameterM);
    return Math.acos(1 - 2 * radialDepthM / diameterM);
  }
}
