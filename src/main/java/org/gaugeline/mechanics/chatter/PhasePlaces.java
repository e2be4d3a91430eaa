package org.gaugeline.mechanics.chatter;

/**
 * Phases ωT at which a prepared cut is looked at, the same for every cut and speed: 0.8 % apart,
 * and no more than a sixteenth of a turn. With them 1 − e^{−iωT}, which costs more than the rest.
 */
final class PhasePlaces {
  private static final double FIRST_RAD = 1e-4;
  private static final double GROWTH = Math.log1p(0.008);
  private static final double TURN_PART = 2 * Math.PI / 16;

  /** From here on a sixteenth of a turn is less than 0.8 %. */
  private static final int EVEN_FROM =
      (int) Math.ceil(Math.log(TURN_PART / 0.008 / FIRST_RAD) / GROWTH);

  private static final double EVEN_FROM_RAD = FIRST_RAD * Math.exp(EVEN_FROM * GROWTH);

  /** Places that are computed beforehand, up to some sixty turns. */
  private static final int STORED = EVEN_FROM + 1000;

  private static final double[] RAD = new double[STORED];
  private static final double[] SIGMA = new double[2 * STORED];

  static {
    for (int i = 0; i < STORED; i++) {
      RAD[i] = i < EVEN_FROM ? FIRST_RAD * Math.exp(i * GROWTH) : even(i);
      putSigma(i, SIGMA, 2 * i);
    }
  }

  private PhasePlaces() {}

  static double rad(int place) {
    return place < STORED ? RAD[place] : even(place);
  }

  private static double even(int place) {
    return EVEN_FROM_RAD + (place - EVEN_FROM) * TURN_PART;
  }

  /** Writes real and imaginary part of 1 − e^{−iωT} for places in a row. */
  static void sigma(int first, double[] target) {
    int count = target.length / 2;
    if (first + count <= STORED) {
      System.arraycopy(SIGMA, 2 * first, target, 0, 2 * count);
      return;
    }
    for (int i = 0; i < count; i++) {
      putSigma(first + i, target, 2 * i);
    }
  }

  private static void putSigma(int place, double[] target, int at) {
    double phase = rad(place);
    target[at] = 1 - Math.cos(phase);
    target[at + 1] = Math.sin(phase);
  }

  /** The last place not above a phase; the first of all below it. */
  static int notAbove(double phaseRad) {
    double place =
        phaseRad < EVEN_FROM_RAD
            ? Math.log(phaseRad / FIRST_RAD) / GROWTH
            : EVEN_FROM + (phaseRad - EVEN_FROM_RAD) / TURN_PART;
    return (int) Math.max(0, Math.floor(place));
  }
}
