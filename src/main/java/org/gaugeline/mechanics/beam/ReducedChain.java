package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * A chain reduced to a few freedoms, for other stiffness of its joints. Immutable.
 *
 * <p>Rayleigh–Ritz: v = V q with VᵀMV = I and K(k) = VᵀK₀V + Σ(k_j − k_j0)·d_j·d_jᵀ, where d_j is
 * the row of the relative motion at spring j in the basis (Meirovitch, Analytical Methods in
 * Vibrations, ch. 6; memory). A spring of another stiffness is a change of rank one.
 *
 * <p>V holds the deflection under a force at the tip, for every spring that may change the motion
 * of all that lies in front of it (in a clamped chain K⁻¹d_j is that motion over k_j), where a
 * place is named the deflection under a force there, and vectors (K⁻¹M)ⁿ from the tip's. The
 * statics of the tip, and of the place, are therefore exact for any stiffness of the springs;
 * frequencies are upper bounds. {@link ReducedModes} solves it.
 */
public final class ReducedChain {
  /**
   * Vectors (K⁻¹M)ⁿ beyond the statics. With three the third frequency errs up to 2.6 % where
   * joints are drawn, with four up to 0.5 % (computed).
   */
  private static final int INERTIA = 4;

  /** Row vectors: tip, place, then the two springs of the base. */
  static final int ROWS = 4;

  static final int TIP = 0;
  static final int PLACE = 1;
  static final int BASE_TRANSLATION = 2;
  static final int BASE_ROTATION = 3;

  final int size;
  final double[] stiffness;

  /** ROWS row vectors, entry i of row r at {@code i * ROWS + r}. */
  final double[] rows;

  /** Springs, two a joint, at which the chain was reduced; infinite for a rigid one. */
  final double[] springs;

  /** A row of {@link #size} numbers for each spring. */
  final double[] motion;

  private ReducedChain(RitzBasis basis, int[] node, double[] springs, double[] place) {
    this.size = basis.size;
    this.stiffness = basis.stiffness();
    this.springs = springs;
    this.motion = new double[springs.length * size];
    this.rows = new double[ROWS * size];
    for (int i = 0; i < size; i++) {
      double[] deflection = basis.deflection[i];
      for (int s = 0; s < springs.length; s++) {
        int near = 2 * node[s / 2] + s % 2;
        motion[s * size + i] =
            Double.isInfinite(springs[s]) ? 0 : deflection[near + 2] - deflection[near];
      }
      rows[ROWS * i + TIP] = deflection[basis.stride - 2];
      rows[ROWS * i + PLACE] = Products.dot(basis.stride, place, 0, deflection, 0);
      rows[ROWS * i + BASE_TRANSLATION] = springs.length == 0 ? 0 : motion[i];
      rows[ROWS * i + BASE_ROTATION] = springs.length == 0 ? 0 : motion[size + i];
    }
  }

  /**
   * Reduces a chain.
   *
   * @param chain the chain, its joints at their median
   * @param joints how many of its joints, counted from the base, may change; springs of infinite
   *     stiffness stay so
   * @return the reduced chain
   * @throws IllegalArgumentException if it has no mass or fewer joints
   */
  public static ReducedChain of(BeamChain chain, int joints) {
    return of(chain, joints, Double.NaN);
  }

  /**
   * Reduces a chain of which a place besides the tip is watched.
   *
   * @param chain the chain, its joints at their median
   * @param joints how many of its joints, counted from the base, may change; springs of infinite
   *     stiffness stay so
   * @param placeM distance of the place from the base, m, 0 to the chain's length; NaN for none
   * @return the reduced chain
   * @throws IllegalArgumentException if it has no mass or fewer joints, or the place is outside
   */
  public static ReducedChain of(BeamChain chain, int joints, double placeM) {
    Require.positive("massKg of the chain", chain.massKg());
    Require.notNegative("joints", joints);
    LanczosBasis lanczos = new LanczosBasis();
    lanczos.start(chain, BendingModes.DEFAULT_ELEMENTS, INERTIA);
    FlexureModel model = lanczos.model;
    int[] node = new int[joints];
    double[] springs = new double[2 * joints];
    int found = 0;
    for (int e = 0; e < model.elements && found < joints; e++) {
      if (model.length[e] == 0) {
        node[found] = e;
        springs[2 * found] = 1 / model.tipFlexibility(e, 2);
        springs[2 * found + 1] = 1 / model.tipFlexibility(e, 0);
        found++;
      }
    }
    Require.within("joints", joints, 0, found);
    double[] place = new double[model.vectorLength()];
    if (!Double.isNaN(placeM)) {
      Require.within("placeM", placeM, 0, chain.lengthM());
      model.addShapeAt(placeM, place);
    }
    RitzBasis basis = new RitzBasis(model, 2 + 2 * joints + INERTIA);
    double[] load = new double[basis.stride];
    for (int s = 0; s < springs.length; s++) {
      if (!Double.isInfinite(springs[s])) {
        int near = 2 * node[s / 2] + s % 2;
        load[near] = -1;
        load[near + 2] = 1;
        basis.addUnder(load);
        load[near] = 0;
        load[near + 2] = 0;
      }
    }
    if (!Double.isNaN(placeM)) {
      basis.addUnder(place);
    }
    load[basis.stride - 2] = 1;
    basis.addUnder(load);
    int steps = lanczos.extend(0, INERTIA);
    for (int i = 0; i < steps; i++) {
      lanczos.copyInertia(i, load);
      basis.addUnder(load);
    }
    return new ReducedChain(basis, node, springs, place);
  }

  /**
   * Number of freedoms.
   *
   * @return count
   */
  public int size() {
    return size;
  }
}
