package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Profile of the cutting edge in the plane through the cutter's axis. */
public sealed interface EdgeShape {

  /** Edge parallel to the axis, κ = 90°. */
  record Cylindrical() implements EdgeShape {}

  /**
   * Straight edge inclined to the machined floor, as on a face mill.
   *
   * @param leadAngleRad κ between edge and floor, rad, above 0 to π/2
   */
  record Lead(double leadAngleRad) implements EdgeShape {
    public Lead {
      Require.within("leadAngleRad", leadAngleRad, 0.01, Math.PI / 2);
    }
  }

  /** Hemisphere of half the cutter's diameter, cylindrical above it. */
  record Ball() implements EdgeShape {}

  /**
   * Quarter circle at the corner, cylindrical above it.
   *
   * @param radiusM corner radius, m, above 0 to half the cutter's diameter
   */
  record CornerRadius(double radiusM) implements EdgeShape {
    public CornerRadius {
      Require.positive("radiusM", radiusM);
    }
  }
}
