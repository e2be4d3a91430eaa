package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.ElementMatrices;

/**
 * Receptances of the free end of what has been built so far, on a grid of frequencies: from the
 * wall outwards, component by component (receptance coupling, RCSA; Schmitz and Duncan, J. Manuf.
 * Sci. Eng. 127 (2005) 781; Timoshenko elements as in {@link ElementMatrices}). Immutable: a
 * holder's grid is prepared once and extended by one tool after another. Small harmonic motion,
 * stationary spindle.
 */
public final class ReceptanceGrid {
  /** Elements aimed at over the length of each chain. */
  public static final int ELEMENTS = 24;

  private static final int STRIDE = 6;

  private final double[] omega;
  private final double[] values;

  private ReceptanceGrid(double[] omega, double[] values) {
    this.omega = omega;
    this.values = values;
  }

  /**
   * The rigid wall: all receptances zero.
   *
   * @param angularFrequenciesRadPerS ω, rad/s, each 0 or more, ascending
   * @return the grid at the wall
   * @throws IllegalArgumentException if a frequency is negative or does not ascend
   */
  public static ReceptanceGrid wall(double[] angularFrequenciesRadPerS) {
    double[] omega = angularFrequenciesRadPerS.clone();
    Require.atLeastOne("number of frequencies", omega.length);
    for (int i = 0; i < omega.length; i++) {
      Require.notNegative("angularFrequencyRadPerS", omega[i]);
      if (i > 0) {
        Require.positive("step of angularFrequencyRadPerS", omega[i] - omega[i - 1]);
      }
    }
    return new ReceptanceGrid(omega, new double[STRIDE * omega.length]);
  }

  /**
   * Couples a chain rigidly to the free end; its base sits where the free end was.
   *
   * @param chain what is added, its joints included
   * @param loss its loss factors
   * @return the grid at the chain's tip
   */
  public ReceptanceGrid extend(BeamChain chain, LossFactors loss) {
    ElementMatrices elements = ElementMatrices.of(chain, ELEMENTS);
    return each(
        (step, w) -> {
          for (int e = 0; e < elements.count(); e++) {
            if (elements.isJoint(e)) {
              step.addSpring(false, elements.translationMPerN(e), loss.joints(), 0);
              step.addSpring(true, elements.rotationRadPerNm(e), loss.joints(), 0);
            } else {
              step.cross(elements, e, w * w, loss.segments());
            }
          }
        });
  }

  /**
   * Puts a joint on the free end: H grows by 1/(k_t(1 + iη) + iωc_t), P by 1/(k_θ(1 + iη) + iωc_θ).
   *
   * @param joint the joint
   * @return the grid on the joint's far side
   */
  public ReceptanceGrid through(ComplexJoint joint) {
    double translation = 1 / joint.spring().translationNPerM();
    double rotation = 1 / joint.spring().rotationNmPerRad();
    return each(
        (step, w) -> {
          double eta = joint.lossFactor();
          step.addSpring(false, translation, eta, w * joint.translationNsPerM());
          step.addSpring(true, rotation, eta, w * joint.rotationNmsPerRad());
        });
  }

  /**
   * Hangs a tuned mass on the free end; extend the result to have it inside a bar. R′ = R − R e Z
   * eᵀ R/(1 + ZH), Z as in {@link TunedMass}.
   *
   * @param mass the tuned mass; it acts on translation only
   * @return the grid with the mass
   */
  public ReceptanceGrid attach(TunedMass mass) {
    double[] z = new double[2];
    return each(
        (step, w) -> {
          mass.dynamicStiffness(w, z);
          step.hang(z[0], z[1]);
        });
  }

  /**
   * Number of frequencies.
   *
   * @return count
   */
  public int count() {
    return omega.length;
  }

  /**
   * The receptances at one frequency of the grid.
   *
   * @param index from 0
   * @return the receptances
   */
  public TipReceptance at(int index) {
    int i = STRIDE * index;
    return new TipReceptance(
        omega[index],
        values[i],
        values[i + 1],
        values[i + 2],
        values[i + 3],
        values[i + 4],
        values[i + 5]);
  }

  /**
   * The response H of the free end, for the stability of a cut.
   *
   * @return sampled response, straight between the frequencies
   */
  public SampledResponse toResponse() {
    double[] re = new double[omega.length];
    double[] im = new double[omega.length];
    for (int i = 0; i < omega.length; i++) {
      re[i] = values[STRIDE * i];
      im[i] = values[STRIDE * i + 1];
    }
    return new SampledResponse(omega, re, im);
  }

  private ReceptanceGrid each(Change change) {
    double[] next = new double[values.length];
    ElementStep step = new ElementStep();
    for (int i = 0; i < omega.length; i++) {
      step.read(values, STRIDE * i);
      change.apply(step, omega[i]);
      step.write(next, STRIDE * i);
    }
    return new ReceptanceGrid(omega, next);
  }

  private interface Change {
    void apply(ElementStep step, double omegaRadPerS);
  }
}
