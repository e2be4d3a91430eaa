package org.gaugeline.mechanics.fits;

import org.gaugeline.mechanics.Require;

/**
 * Standard tolerance grades IT5 to IT12 of ISO 286-1 as multiples of the tolerance unit i.
 *
 * <p>The standard's table rounds these values; a table row, where one is at hand, prevails.
 */
public enum ToleranceGrade {
  /** Grade 5, 7 i. */
  IT5(7),
  /** Grade 6, 10 i. */
  IT6(10),
  /** Grade 7, 16 i. */
  IT7(16),
  /** Grade 8, 25 i. */
  IT8(25),
  /** Grade 9, 40 i. */
  IT9(40),
  /** Grade 10, 64 i. */
  IT10(64),
  /** Grade 11, 100 i. */
  IT11(100),
  /** Grade 12, 160 i. */
  IT12(160);

  private static final double MM_PER_M = 1e3;
  private static final double M_PER_MICRON = 1e-6;

  private final double multiple;

  ToleranceGrade(double multiple) {
    this.multiple = multiple;
  }

  /**
   * Tolerance unit i = 0.45·∛D + 0.001·D in µm with D in mm (ISO 286-1, for nominal sizes up to 500
   * mm).
   *
   * @param meanDiameterM geometric mean D of the limits of the diameter step, m, above 0 to 0.5
   * @return tolerance unit, m
   * @throws IllegalArgumentException if the diameter is outside its range
   */
  public static double toleranceUnitM(double meanDiameterM) {
    Require.positive("meanDiameterM", meanDiameterM);
    Require.within("meanDiameterM", meanDiameterM, 0, 0.5);
    double meanDiameterMm = meanDiameterM * MM_PER_M;
    return (0.45 * Math.cbrt(meanDiameterMm) + 0.001 * meanDiameterMm) * M_PER_MICRON;
  }

  /**
   * Unrounded tolerance width of this grade in a diameter step: multiple · i at the geometric mean
   * of the step's limits.
   *
   * @param lowerLimitM lower limit of the step, m, above 0 (1 mm for the step up to 3 mm)
   * @param upperLimitM upper limit of the step, m, at least the lower limit, up to 0.5
   * @return tolerance width, m
   * @throws IllegalArgumentException if a limit is outside its range
   */
  public double widthM(double lowerLimitM, double upperLimitM) {
    Require.positive("lowerLimitM", lowerLimitM);
    Require.within("upperLimitM", upperLimitM, lowerLimitM, 0.5);
    return multiple * toleranceUnitM(Math.sqrt(lowerLimitM * upperLimitM));
  }
}
