package org.gaugeline.reference;

/**
 * Standard tolerances of ISO 286-1, IT3 to IT12, up to 500 mm.
 *
 * @param upperLimitM upper limit of each diameter step, m, ascending
 * @param bandM tolerance by step and grade − 3, m
 * @param sourceKey source of the table
 */
@SuppressWarnings("ArrayRecordComponent")
public record ToleranceTable(double[] upperLimitM, double[][] bandM, String sourceKey) {

  /**
   * Tolerance band of a grade.
   *
   * @param nominalM nominal size, m, &gt; 0 and ≤ 0.5
   * @param grade IT grade, 3 … 12
   * @return band, m
   * @throws IllegalArgumentException outside the table
   */
  public double bandM(double nominalM, int grade) {
    if (grade < 3 || grade > 12) {
      throw new IllegalArgumentException("IT grade must be 3 … 12, was " + grade);
    }
    for (int step = 0; step < upperLimitM.length; step++) {
      if (nominalM <= upperLimitM[step]) {
        return bandM[step][grade - 3];
      }
    }
    throw new IllegalArgumentException("nominal size must be ≤ 0.5 m, was " + nominalM);
  }
}
