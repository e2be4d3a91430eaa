package org.gaugeline.mechanics.chatter;

/**
 * The map of states and delayed displacements over one tooth period, for one speed and depth:
 * vector [z, x₋ₖ, y₋ₖ, …, x₋₁, y₋₁].
 */
final class PeriodMap implements KrylovSpectrum.LinearMap {
  private static final int DIRECTIONS = 2;

  /** Mean directional factors of each step, xx, xy, yx, yy in turn: of the chip, of the flanks. */
  static final class Factors {
    final double[] chip;
    final double[] rubbing;

    /** 2ℓ/v, by which a velocity counts beside a displacement, s. */
    final double velocityS;

    Factors(double[] chip, double[] rubbing, double velocityS) {
      this.chip = chip;
      this.rubbing = rubbing;
      this.velocityS = velocityS;
    }
  }

  private final ModalStates states;
  private final int steps;
  private final int n;

  /** Per step: [P | R], rows of n + 4 entries; R acts on the older and the newer delayed place. */
  private final double[][] step;

  private double[] now;
  private double[] then;

  /**
   * Prepares the map.
   *
   * @param states modal states
   * @param factors mean directional factors
   * @param forcePerLengthNPerM2 ½·a·K_t, N/m
   * @param durationS length of a step, s
   */
  PeriodMap(ModalStates states, Factors factors, double forcePerLengthNPerM2, double durationS) {
    this.states = states;
    this.steps = factors.chip.length / 4;
    this.n = states.count;
    this.now = new double[n];
    this.then = new double[n];
    step = new double[steps][];
    double[] free = null;
    for (int i = 0; i < steps; i++) {
      boolean cuts =
          factors.chip[4 * i] != 0
              || factors.chip[4 * i + 1] != 0
              || factors.chip[4 * i + 2] != 0
              || factors.chip[4 * i + 3] != 0;
      if (cuts) {
        step[i] = transition(factors, 4 * i, forcePerLengthNPerM2, durationS);
      } else {
        free = free == null ? transition(factors, 4 * i, forcePerLengthNPerM2, durationS) : free;
        step[i] = free;
      }
    }
  }

  int length() {
    return n + DIRECTIONS * steps;
  }

  /*
   * The exponential of Δt·[[A + BHC, −BH, 0], [0, 0, I/Δt], [0, 0, 0]] carries z together with a
   * delayed place that moves straight from u0 to u0 + du in one step.
   */
  private double[] transition(Factors factors, int at, double force, double durationS) {
    int size = n + 2 * DIRECTIONS;
    double[] m = new double[size * size];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int pair = at + 2 * states.direction[i] + states.direction[j];
        double moved =
            factors.chip[pair] * states.output[j]
                + factors.velocityS * factors.rubbing[pair] * states.velocity[j];
        double coupled = states.a[i * n + j] + states.input[i] * force * moved;
        m[i * size + j] = durationS * coupled;
      }
      for (int j = 0; j < DIRECTIONS; j++) {
        double h = force * factors.chip[at + 2 * states.direction[i] + j];
        m[i * size + n + j] = -durationS * states.input[i] * h;
      }
    }
    for (int j = 0; j < DIRECTIONS; j++) {
      m[(n + j) * size + n + DIRECTIONS + j] = 1;
    }
    double[] e = MatrixExponential.of(m, size);
    // With du = u1 − u0 the weights of the two delayed places are E_u − E_du and E_du.
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < DIRECTIONS; j++) {
        e[i * size + n + j] -= e[i * size + n + DIRECTIONS + j];
      }
    }
    return e;
  }

  @Override
  public void apply(double[] from, double[] to) {
    System.arraycopy(from, 0, now, 0, n);
    int size = n + 2 * DIRECTIONS;
    for (int i = 0; i < steps; i++) {
      int place = n + DIRECTIONS * i;
      writePlace(now, to, place);
      boolean last = i == steps - 1;
      double[] source = last ? to : from;
      int newer = last ? n : place + DIRECTIONS;
      double[] e = step[i];
      for (int row = 0; row < n; row++) {
        int at = row * size;
        double sum =
            e[at + n] * from[place]
                + e[at + n + 1] * from[place + 1]
                + e[at + n + 2] * source[newer]
                + e[at + n + 3] * source[newer + 1];
        for (int j = 0; j < n; j++) {
          sum += e[at + j] * now[j];
        }
        then[row] = sum;
      }
      double[] other = now;
      now = then;
      then = other;
    }
    System.arraycopy(now, 0, to, 0, n);
  }

  private void writePlace(double[] z, double[] to, int at) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < n; i++) {
      double moved = states.output[i] * z[i];
      if (states.direction[i] == 0) {
        x += moved;
      } else {
        y += moved;
      }
    }
    to[at] = x;
    to[at + 1] = y;
  }
}
