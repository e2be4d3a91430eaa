package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;

/**
 * Size of the sum of plane vectors of fixed sizes in independent, uniformly random directions.
 *
 * <p>For joints whose eccentricity is known by size, such as marked parts, but not by angle.
 */
public final class RandomDirections {
  private static final int POINTS = 8192;

  private RandomDirections() {}

  /**
   * Probability that the sum of two vectors is at most r: acos((a² + b² − r²)/(2ab))/π.
   *
   * @param firstM size a, m, at least 0
   * @param secondM size b, m, at least 0
   * @param limitM limit r on the size of the sum, m
   * @return probability within 0 and 1
   * @throws IllegalArgumentException if a size is negative
   */
  public static double probabilityAtMost(double firstM, double secondM, double limitM) {
    Require.notNegative("firstM", firstM);
    Require.notNegative("secondM", secondM);
    return two(firstM, secondM, limitM);
  }

  /**
   * Probability that the sum of any number of vectors is at most r. Closed form in one relative
   * angle, the other n − 2 angles by midpoints (three vectors, error about 1e-5) or by an evenly
   * spread deterministic point set of 8192 points (more vectors, error about 1e-3). Costs some 0.5
   * ms: not meant for inner loops.
   *
   * @param sizesM sizes of the vectors, m, at least one, each at least 0
   * @param limitM limit r on the size of the sum, m
   * @return probability within 0 and 1
   * @throws IllegalArgumentException if there is no vector or a size is negative
   */
  public static double probabilityAtMost(double[] sizesM, double limitM) {
    Require.within("number of vectors", sizesM.length, 1, Integer.MAX_VALUE);
    for (double sizeM : sizesM) {
      Require.notNegative("sizesM", sizeM);
    }
    return switch (sizesM.length) {
      case 1 -> sizesM[0] <= limitM ? 1 : 0;
      case 2 -> two(sizesM[0], sizesM[1], limitM);
      default -> many(sizesM, limitM);
    };
  }

  /**
   * Root mean square of the size of the sum: √Σr².
   *
   * @param sizesM sizes of the vectors, m
   * @return root mean square, m
   */
  public static double rootMeanSquareM(double[] sizesM) {
    double sumM2 = 0;
    for (double sizeM : sizesM) {
      sumM2 += sizeM * sizeM;
    }
    return Math.sqrt(sumM2);
  }

  private static double two(double first, double second, double limit) {
    if (limit < Math.abs(first - second)) {
      return 0;
    }
    if (limit >= first + second) {
      return 1;
    }
    double cosine = (first * first + second * second - limit * limit) / (2 * first * second);
    return Math.acos(Math.max(-1, Math.min(1, cosine))) / Math.PI;
  }

  private static double many(double[] sizes, double limit) {
    int angles = sizes.length - 2;
    double base = spreadBase(angles);
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double x = sizes[0];
      double y = 0;
      double step = 1;
      for (int j = 1; j <= angles; j++) {
        step /= base;
        double turn = angles == 1 ? (i + 0.5) / (2 * POINTS) : (i + 0.5) * step % 1;
        x += sizes[j] * Math.cos(2 * Math.PI * turn);
        y += sizes[j] * Math.sin(2 * Math.PI * turn);
      }
      sum += two(Math.sqrt(x * x + y * y), sizes[angles + 1], limit);
    }
    return sum / POINTS;
  }

  /**
   * Root of b^(n+1) = b + 1: multiples of its inverse powers, taken modulo 1, fill n dimensions
   * evenly (Roberts' generalised golden ratio).
   */
  private static double spreadBase(int dimensions) {
    double base = 2;
    for (int i = 0; i < 40; i++) {
      base = Math.pow(1 + base, 1.0 / (dimensions + 1));
    }
    return base;
  }
}
