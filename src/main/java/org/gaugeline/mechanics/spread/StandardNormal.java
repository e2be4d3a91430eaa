package org.gaugeline.mechanics.spread;

import org.gaugeline.mechanics.Require;

/**
 * The normal distribution of mean 0 and standard deviation 1.
 *
 * <p>Rational approximations of double precision that need one exponential or one logarithm a call.
 */
public final class StandardNormal {
  /** The 95 % point of the standard normal distribution. */
  public static final double Z95 = 1.6448536269514722;

  private static final double ROOT_TWO_PI = 2.5066282746310002;
  private static final double SERIES_LIMIT = 7.07106781186547;
  private static final double UNDERFLOW_LIMIT = 38.0;

  private static final double[] TAIL_NUMERATOR = {
    0.0352624965998911,
    0.700383064443688,
    6.37396220353165,
    33.912866078383,
    112.079291497871,
    221.213596169931,
    220.206867912376
  };
  private static final double[] TAIL_DENOMINATOR = {
    0.0883883476483184,
    1.75566716318264,
    16.064177579207,
    86.7807322029461,
    296.564248779674,
    637.333633378831,
    793.826512519948,
    440.413735824752
  };

  private static final double[] CENTRE_NUMERATOR = {
    2509.0809287301227,
    33430.57558358813,
    67265.7709270087,
    45921.95393154987,
    13731.69376550946,
    1971.5909503065513,
    133.14166789178438,
    3.3871328727963665
  };
  private static final double[] CENTRE_DENOMINATOR = {
    5226.495278852854,
    28729.085735721943,
    39307.89580009271,
    21213.794301586597,
    5394.196021424751,
    687.1870074920579,
    42.31333070160091,
    1.0
  };
  private static final double[] FLANK_NUMERATOR = {
    0.0007745450142783414,
    0.022723844989269184,
    0.2417807251774506,
    1.2704582524523684,
    3.6478483247632045,
    5.769497221460691,
    4.630337846156546,
    1.4234371107496835
  };
  private static final double[] FLANK_DENOMINATOR = {
    1.0507500716444169e-09,
    0.0005475938084995345,
    0.015198666563616457,
    0.14810397642748008,
    0.6897673349851,
    1.6763848301838038,
    2.053191626637759,
    1.0
  };
  private static final double[] FAR_NUMERATOR = {
    2.0103343992922881e-07,
    2.7115555687434876e-05,
    0.0012426609473880784,
    0.026532189526576124,
    0.29656057182850487,
    1.7848265399172913,
    5.463784911164114,
    6.657904643501103
  };
  private static final double[] FAR_DENOMINATOR = {
    2.0442631033899397e-15,
    1.421511758316446e-07,
    1.8463183175100548e-05,
    0.0007868691311456133,
    0.014875361290850615,
    0.1369298809227358,
    0.599832206555888,
    1.0
  };

  private StandardNormal() {}

  /**
   * Probability that the variable is at most z. Hart's rational approximation no. 5666 (Hart et
   * al., Computer Approximations, 1968, in the form of West, Wilmott magazine 2005); absolute error
   * below 1e-14.
   *
   * @param z any number, the infinities allowed
   * @return probability within 0 and 1; NaN for NaN
   */
  public static double probabilityAtMost(double z) {
    if (Double.isNaN(z)) {
      return Double.NaN;
    }
    double tail = upperTail(Math.abs(z));
    return z > 0 ? 1 - tail : tail;
  }

  /**
   * Value that the variable stays at or below with the given probability. Wichura's algorithm AS
   * 241 (Applied Statistics 37, 1988), routine PPND16; relative error about 1e-16.
   *
   * @param probability within 0 and 1; the ends give the infinities
   * @return the quantile
   * @throws IllegalArgumentException if the probability lies outside 0 to 1
   */
  public static double quantile(double probability) {
    Require.within("probability", probability, 0, 1);
    double q = probability - 0.5;
    if (Math.abs(q) <= 0.425) {
      double r = 0.180625 - q * q;
      return q * ratio(CENTRE_NUMERATOR, CENTRE_DENOMINATOR, r);
    }
    double outer = Math.min(probability, 1 - probability);
    if (outer == 0) {
      return q < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    double r = Math.sqrt(-Math.log(outer));
    double size =
        r <= 5
            ? ratio(FLANK_NUMERATOR, FLANK_DENOMINATOR, r - 1.6)
            : ratio(FAR_NUMERATOR, FAR_DENOMINATOR, r - 5);
    return q < 0 ? -size : size;
  }

  private static double upperTail(double size) {
    if (size > UNDERFLOW_LIMIT) {
      return 0;
    }
    double exponential = Math.exp(-size * size / 2);
    if (size < SERIES_LIMIT) {
      return exponential * ratio(TAIL_NUMERATOR, TAIL_DENOMINATOR, size);
    }
    double fraction = size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))));
    return exponential / fraction / ROOT_TWO_PI;
  }

  private static double ratio(double[] numerator, double[] denominator, double x) {
    return polynomial(numerator, x) / polynomial(denominator, x);
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (double coefficient : coefficients) {
      sum = sum * x + coefficient;
    }
    return sum;
  }
}
