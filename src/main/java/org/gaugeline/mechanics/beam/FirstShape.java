package org.gaugeline.mechanics.beam;

import java.util.Arrays;
import org.gaugeline.mechanics.Require;

/**
 * Shape of the first bending mode of a clamped chain, scaled to 1 at the tip. Immutable.
 *
 * <p>Found by inverse iteration v ← K⁻¹M v from the deflection under a tip force; each step shrinks
 * the share of the second mode by (ω1/ω2)², about 1/39 for a uniform bar (Parlett, The Symmetric
 * Eigenvalue Problem, ch. 4).
 */
public final class FirstShape {
  private static final int ELEMENTS = 60;
  private static final int STEPS = 12;

  private final double[] placeM;
  private final double[] shape;
  private final double angularFrequencyRadPerS;

  private FirstShape(double[] placeM, double[] shape, double angularFrequencyRadPerS) {
    this.placeM = placeM;
    this.shape = shape;
    this.angularFrequencyRadPerS = angularFrequencyRadPerS;
  }

  /**
   * Solves a chain.
   *
   * @param chain the chain, with mass
   * @return its first shape
   * @throws IllegalArgumentException if the chain has no mass
   */
  public static FirstShape of(BeamChain chain) {
    Require.positive("massKg of the chain", chain.massKg());
    FlexureModel model = new FlexureModel();
    model.mesh(chain, ELEMENTS);
    int n = model.vectorLength();
    double[] image = new double[n];
    double[] v = new double[n];
    image[n - 2] = 1;
    model.applyFlexibility(image, 0, v, 0);
    double growth = 1;
    for (int step = 0; step < STEPS; step++) {
      scaleToTip(v, v[n - 2]);
      model.multiplyMass(v, 0, image, 0);
      model.applyFlexibility(image, 0, v, 0);
      growth = v[n - 2];
    }
    scaleToTip(v, growth);
    double[] place = new double[model.elements + 1];
    double[] deflection = new double[model.elements + 1];
    for (int e = 0; e < model.elements; e++) {
      place[e + 1] = place[e] + model.length[e];
      deflection[e + 1] = v[2 * e + 2];
    }
    return new FirstShape(place, deflection, 1 / Math.sqrt(growth));
  }

  private static void scaleToTip(double[] v, double tip) {
    for (int i = 0; i < v.length; i++) {
      v[i] /= tip;
    }
  }

  /**
   * Angular frequency of the mode.
   *
   * @return ω, rad/s
   */
  public double angularFrequencyRadPerS() {
    return angularFrequencyRadPerS;
  }

  /**
   * Deflection at a place over the deflection of the tip, straight between nodes; at a joint the
   * side towards the base.
   *
   * @param fromBaseM distance from the base, m, 0 to the chain's length
   * @return φ(z)/φ_tip
   * @throws IllegalArgumentException if the place is outside the chain
   */
  public double ratioToTip(double fromBaseM) {
    Require.within("fromBaseM", fromBaseM, 0, placeM[placeM.length - 1]);
    int found = Arrays.binarySearch(placeM, fromBaseM);
    if (found >= 0) {
      while (found > 0 && placeM[found - 1] == placeM[found]) {
        found--;
      }
      return shape[found];
    }
    int right = -found - 1;
    double share = (fromBaseM - placeM[right - 1]) / (placeM[right] - placeM[right - 1]);
    return shape[right - 1] + share * (shape[right] - shape[right - 1]);
  }
}
