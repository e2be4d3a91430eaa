package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * Lowest modes of reduced chains for given stiffness of their joints: a workspace that keeps the
 * modes of the last solution. It allocates only while it grows; not for use by two threads at once.
 *
 * <p>Solves K(k) q = ω² q as in {@link ReducedChain} by reduction to tridiagonal form and the
 * implicit QL method, carrying along only the rows that are asked for.
 */
public final class ReducedModes {
  /** Modes that are told; the others enter as residual compliance. */
  public static final int MODES = 3;

  private double[] a = new double[0];
  private double[] d = a;
  private double[] e = a;
  private double[] rows = a;
  private double[] work = a;
  private final double[] square = new double[MODES];
  private final double[] tip = new double[MODES];
  private final double[] place = new double[MODES];
  private final double[] share = new double[MODES];
  private final double[] residual = new double[3];
  private int found;

  /**
   * Solves for the lowest modes; read them from this object until the next call.
   *
   * @param chain the reduced chain
   * @param springs stiffness of its joints from the base, lateral (N/m) and rotational (N·m/rad) in
   *     turns, each greater than 0; ignored where the chain was reduced with a rigid spring
   * @throws IllegalArgumentException if there are more or fewer springs than the chain may change
   */
  public void solve(ReducedChain chain, double[] springs) {
    if (springs.length != chain.springs.length) {
      throw new IllegalArgumentException(
          "the chain has "
              + chain.springs.length
              + " springs but "
              + springs.length
              + " are given");
    }
    int n = chain.size;
    reserve(n);
    System.arraycopy(chain.stiffness, 0, a, 0, n * n);
    System.arraycopy(chain.rows, 0, rows, 0, ReducedChain.ROWS * n);
    for (int s = 0; s < springs.length; s++) {
      Require.positive("stiffness of a spring", springs[s]);
      if (!Double.isInfinite(chain.springs[s])) {
        addSpring(springs[s] - chain.springs[s], chain.motion, s * n, n);
      }
    }
    HouseholderReduction.reduce(n, a, d, e, rows, ReducedChain.ROWS, work);
    TridiagonalEigen.solve(n, d, e, rows, ReducedChain.ROWS);
    boolean rigid = springs.length == 0;
    choose(
        n,
        rigid || Double.isInfinite(chain.springs[0]) ? 0 : springs[0],
        rigid || Double.isInfinite(chain.springs[1]) ? 0 : springs[1]);
  }

  private void addSpring(double change, double[] motion, int at, int n) {
    if (change == 0) {
      return;
    }
    for (int i = 0; i < n; i++) {
      double c = change * motion[at + i];
      for (int j = 0; j < n; j++) {
        a[i * n + j] += c * motion[at + j];
      }
    }
  }

  /** Takes the lowest modes out, lowest first, and sums up what the others give way. */
  private void choose(int n, double baseNPerM, double baseNmPerRad) {
    found = Math.min(MODES, n);
    for (int i = 0; i < found; i++) {
      int best = 0;
      for (int k = 1; k < n; k++) {
        best = d[k] < d[best] ? k : best;
      }
      int at = ReducedChain.ROWS * best;
      double slide = rows[at + ReducedChain.BASE_TRANSLATION];
      double turn = rows[at + ReducedChain.BASE_ROTATION];
      square[i] = d[best];
      tip[i] = rows[at + ReducedChain.TIP];
      place[i] = rows[at + ReducedChain.PLACE];
      share[i] = (baseNPerM * slide * slide + baseNmPerRad * turn * turn) / d[best];
      d[best] = Double.POSITIVE_INFINITY;
    }
    residual[0] = 0;
    residual[1] = 0;
    residual[2] = 0;
    for (int k = 0; k < n; k++) {
      double flexibility = 1 / d[k];
      double atTip = rows[ReducedChain.ROWS * k + ReducedChain.TIP];
      double atPlace = rows[ReducedChain.ROWS * k + ReducedChain.PLACE];
      residual[0] += atTip * atTip * flexibility;
      residual[1] += atTip * atPlace * flexibility;
      residual[2] += atPlace * atPlace * flexibility;
    }
  }

  private void reserve(int n) {
    if (d.length < n) {
      a = new double[n * n];
      d = new double[n];
      e = new double[n];
      rows = new double[ReducedChain.ROWS * n];
      work = new double[2 * n];
    }
  }

  /**
   * Number of modes of the last solution.
   *
   * @return 1 to {@link #MODES}
   */
  public int count() {
    return found;
  }

  /**
   * Angular frequency of a mode of the last solution.
   *
   * @param mode index from 0, lowest first
   * @return ω, rad/s
   */
  public double angularFrequencyRadPerS(int mode) {
    return Math.sqrt(square[mode]);
  }

  /**
   * Mass-normalised deflection of the tip in a mode; its sign is that of the place's.
   *
   * @param mode index from 0
   * @return φ_tip, 1/√kg
   */
  public double tipShape(int mode) {
    return tip[mode];
  }

  /**
   * Mass-normalised deflection of the watched place in a mode.
   *
   * @param mode index from 0
   * @return φ_place, 1/√kg; 0 if no place was named
   */
  public double placeShape(int mode) {
    return place[mode];
  }

  /**
   * Share of a mode's strain energy that the joint at the base holds, (k_t·d_t² + k_θ·d_θ²)/ω² with
   * its motion d in the mass-normalised mode.
   *
   * @param mode index from 0
   * @return share, 0 to 1
   */
  public double baseEnergyShare(int mode) {
    return share[mode];
  }

  /**
   * Compliance of the tip by the modes that are not told.
   *
   * @return Σφ_tip²/ω², m/N
   */
  public double tipResidualMPerN() {
    return residual[0];
  }

  /**
   * Compliance between tip and place by the modes that are not told.
   *
   * @return Σφ_tip·φ_place/ω², m/N
   */
  public double crossResidualMPerN() {
    return residual[1];
  }

  /**
   * Compliance of the place by the modes that are not told.
   *
   * @return Σφ_place²/ω², m/N
   */
  public double placeResidualMPerN() {
    return residual[2];
  }
}
