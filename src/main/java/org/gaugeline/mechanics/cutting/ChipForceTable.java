package org.gaugeline.mechanics.cutting;

/**
 * Force per width over chip thickness as straight lines between nodes that part each octave of
 * thickness into sixteen, so that the innermost loops need neither power nor logarithm.
 *
 * <p>Thickness counts in units of the calibrated thickness: the two bends of the law then fall on
 * nodes, and the upper bits of a double are the number of its line. Between nodes a power law is
 * met within 1.3·10⁻⁴; below a thousandth of the largest chip the force runs straight to zero.
 */
final class ChipForceTable {
  private static final int OCTAVES = 11;
  private static final int PER_OCTAVE = 16;
  private static final int LINES = OCTAVES * PER_OCTAVE;
  private static final int SHIFT = 48;
  private static final int BIAS = 1023;
  private static final int RAMP_OCTAVE = -1;

  private final double perCalibrated;
  private final double lowest;
  private final int firstBits;
  private final double[] intercept = new double[LINES + 1];
  private final double[] slope = new double[LINES + 1];

  /**
   * Tabulates a law up to the largest chip.
   *
   * @param law the law
   * @param largestChipM largest chip thickness that will be asked for, m
   */
  ChipForceTable(ForceLaw law, double largestChipM) {
    perCalibrated = 1 / law.calibratedM();
    int top = Math.getExponent(largestChipM * perCalibrated);
    int bottom = top - OCTAVES + 1;
    lowest = Math.scalb(1.0, bottom);
    firstBits = (BIAS + bottom) * PER_OCTAVE;
    double[] force = new double[LINES + 1];
    force[LINES] = law.forcePerWidth(Math.scalb(law.calibratedM(), top + 1));
    for (int octave = top; octave >= bottom; octave--) {
      fillOctave(law, force, octave, (octave - bottom) * PER_OCTAVE, octave == top);
    }
    drawLines(force);
  }

  /** Within one power law an octave is a copy of the one above, times a constant. */
  private static void fillOctave(
      ForceLaw law, double[] force, int octave, int first, boolean isTop) {
    boolean bends = law.bends() && (octave == RAMP_OCTAVE || octave == RAMP_OCTAVE - 1);
    double half = octave >= 0 || !law.bends() ? law.halfOfThick() : law.halfOfThin();
    for (int k = first; k < first + PER_OCTAVE; k++) {
      if (isTop || bends) {
        double mantissa = 1 + (double) (k - first) / PER_OCTAVE;
        force[k] = law.forcePerWidth(Math.scalb(law.calibratedM(), octave) * mantissa);
      } else {
        force[k] = half * force[k + PER_OCTAVE];
      }
    }
  }

  private void drawLines(double[] force) {
    for (int k = 0; k < LINES; k++) {
      double width = Math.scalb(lowest, k / PER_OCTAVE) / PER_OCTAVE;
      double node = width * (PER_OCTAVE + k % PER_OCTAVE);
      slope[k] = (force[k + 1] - force[k]) / width;
      intercept[k] = force[k] - slope[k] * node;
    }
    // One line more, for a largest chip that rounding lifts past the last node.
    slope[LINES] = slope[LINES - 1];
    intercept[LINES] = intercept[LINES - 1];
  }

  /** kc·h in N/m; 0 for h &le; 0, which rounding at the ends of an arc can produce. */
  double forcePerWidth(double chipThicknessM) {
    double thickness = chipThicknessM * perCalibrated;
    if (thickness < lowest) {
      return thickness > 0 ? thickness / lowest * (intercept[0] + slope[0] * lowest) : 0;
    }
    int line = (int) (Double.doubleToRawLongBits(thickness) >>> SHIFT) - firstBits;
    return intercept[line] + slope[line] * thickness;
  }
}
