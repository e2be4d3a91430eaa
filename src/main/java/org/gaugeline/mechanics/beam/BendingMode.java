package org.gaugeline.mechanics.beam;

/**
 * One bending mode as seen from the tip, for lateral motion of the tip.
 *
 * @param angularFrequencyRadPerS undamped natural angular frequency ω, rad/s
 * @param tipModalMassKg modal mass m = 1/φ_tip², φ the mass-normalised shape, kg
 */
public record BendingMode(double angularFrequencyRadPerS, double tipModalMassKg) {
  /**
   * Natural frequency f = ω/2π.
   *
   * @return frequency, Hz
   */
  public double frequencyHz() {
    return angularFrequencyRadPerS / (2 * Math.PI);
  }

  /**
   * Modal stiffness k = mω².
   *
   * @return stiffness at the tip, N/m
   */
  public double tipModalStiffnessNPerM() {
    return tipModalMassKg * angularFrequencyRadPerS * angularFrequencyRadPerS;
  }
}
