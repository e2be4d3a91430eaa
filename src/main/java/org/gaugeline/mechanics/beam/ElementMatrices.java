package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * Stiffness and consistent mass of a chain's Timoshenko elements in order from base to tip, for
 * dynamics at a frequency. Immutable.
 *
 * <p>The freedoms of an element are [w1, θ1, w2, θ2], 1 at its base end, θ = w′ without shear. Its
 * stiffness follows from the exact flexibility F of its tip end with the base end held: K22 = F⁻¹,
 * K21 = −K22·S, K11 = Sᵀ·K22·S with S = [[1, l], [0, 1]]; mass as in {@link BendingModes}. A joint
 * is an element without length or mass, and has flexibilities instead of a stiffness.
 */
public final class ElementMatrices {
  /**
   * Entries kept of a symmetric 4×4 matrix: its upper triangle row by row, 11, 12, 13, 14, 22, 23,
   * 24, 33, 34, 44.
   */
  public static final int ENTRIES = 10;

  private final int count;
  private final double[] stiffness;
  private final double[] mass;
  private final boolean[] joint;
  private final double[] translation;
  private final double[] rotation;

  private ElementMatrices(FlexureModel model) {
    count = model.elements;
    stiffness = new double[ENTRIES * count];
    mass = new double[ENTRIES * count];
    joint = new boolean[count];
    translation = new double[count];
    rotation = new double[count];
    for (int e = 0; e < count; e++) {
      joint[e] = model.length[e] == 0;
      translation[e] = model.tipFlexibility(e, 2);
      rotation[e] = model.tipFlexibility(e, 0);
      if (!joint[e]) {
        fillStiffness(model, e);
        model.copyMass(e, mass, ENTRIES * e);
      }
    }
  }

  /**
   * Meshes a chain.
   *
   * @param chain the chain
   * @param targetElements elements aimed at over the whole length, 1 to 1000; every segment gets at
   *     least one beyond that
   * @return the matrices
   * @throws IllegalArgumentException if the target is out of range
   */
  public static ElementMatrices of(BeamChain chain, int targetElements) {
    Require.within("targetElements", targetElements, 1, 1000);
    FlexureModel model = new FlexureModel();
    model.mesh(chain, targetElements);
    return new ElementMatrices(model);
  }

  /**
   * Number of elements, joints counted.
   *
   * @return count
   */
  public int count() {
    return count;
  }

  /**
   * Whether an element is a joint.
   *
   * @param element index from the base, from 0
   * @return true for a joint
   */
  public boolean isJoint(int element) {
    return joint[element];
  }

  /**
   * Lateral flexibility 1/k_t of a joint; for a segment that of its tip end with its base end held.
   *
   * @param element index from the base, from 0
   * @return flexibility, m/N
   */
  public double translationMPerN(int element) {
    return translation[element];
  }

  /**
   * Rotational flexibility 1/k_θ of a joint; for a segment that of its tip end with its base end
   * held.
   *
   * @param element index from the base, from 0
   * @return flexibility, rad/(N·m)
   */
  public double rotationRadPerNm(int element) {
    return rotation[element];
  }

  /**
   * Writes the dynamic stiffness K − ω²M of a segment's element and its K.
   *
   * @param element index from the base, from 0; no joint
   * @param omegaSquared ω², rad²/s²
   * @param dynamic receives K − ω²M, {@link #ENTRIES} numbers
   * @param statics receives K, {@link #ENTRIES} numbers
   */
  public void stiffnessAt(int element, double omegaSquared, double[] dynamic, double[] statics) {
    int at = ENTRIES * element;
    for (int i = 0; i < ENTRIES; i++) {
      double k = stiffness[at + i];
      statics[i] = k;
      dynamic[i] = k - omegaSquared * mass[at + i];
    }
  }

  private void fillStiffness(FlexureModel model, int e) {
    double l = model.length[e];
    double f0 = model.tipFlexibility(e, 0);
    double f1 = model.tipFlexibility(e, 1);
    double f2 = model.tipFlexibility(e, 2);
    double scale = 1 / (f0 * f2 - f1 * f1);
    double a = f0 * scale;
    double b = -f1 * scale;
    double c = f2 * scale;
    int at = ENTRIES * e;
    stiffness[at] = a;
    stiffness[at + 1] = a * l + b;
    stiffness[at + 2] = -a;
    stiffness[at + 3] = -b;
    stiffness[at + 4] = a * l * l + 2 * b * l + c;
    stiffness[at + 5] = -(a * l + b);
    stiffness[at + 6] = -(b * l + c);
    stiffness[at + 7] = a;
    stiffness[at + 8] = b;
    stiffness[at + 9] = c;
  }
}
