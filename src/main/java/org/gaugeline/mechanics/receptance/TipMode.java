package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.beam.BendingMode;

/**
 * One mode of a tip in one direction, G = (α + iωβ)/(ω_n² − ω² + 2iζω_nω). For proportional damping
 * β = 0 and α = ω_n²/k = 1/m.
 *
 * @param angularFrequencyRadPerS ω_n, rad/s, greater than 0
 * @param dampingRatio ζ, above 0 to below 1
 * @param inverseMassPerKg α, 1/kg
 * @param velocityShareSPerKg β, s/kg
 */
public record TipMode(
    double angularFrequencyRadPerS,
    double dampingRatio,
    double inverseMassPerKg,
    double velocityShareSPerKg) {
  public TipMode {
    Require.positive("angularFrequencyRadPerS", angularFrequencyRadPerS);
    Require.between("dampingRatio", dampingRatio, 0, 1);
    if (!Double.isFinite(inverseMassPerKg) || !Double.isFinite(velocityShareSPerKg)) {
      throw new IllegalArgumentException(
          "inverseMassPerKg is "
              + inverseMassPerKg
              + " and velocityShareSPerKg "
              + velocityShareSPerKg
              + " but both must be finite");
    }
  }

  /**
   * A proportionally damped mode.
   *
   * @param angularFrequencyRadPerS ω_n, rad/s, greater than 0
   * @param stiffnessNPerM modal stiffness k, N/m, greater than 0
   * @param dampingRatio ζ, above 0 to below 1
   * @return the mode
   */
  public static TipMode ofStiffness(
      double angularFrequencyRadPerS, double stiffnessNPerM, double dampingRatio) {
    Require.positive("stiffnessNPerM", stiffnessNPerM);
    double square = angularFrequencyRadPerS * angularFrequencyRadPerS;
    return new TipMode(angularFrequencyRadPerS, dampingRatio, square / stiffnessNPerM, 0);
  }

  /**
   * A computed mode with a damping ratio of its own: damping cannot be predicted.
   *
   * @param mode frequency and modal mass at the tip
   * @param dampingRatio ζ, above 0 to below 1
   * @return the mode
   */
  public static TipMode of(BendingMode mode, double dampingRatio) {
    return ofStiffness(mode.angularFrequencyRadPerS(), mode.tipModalStiffnessNPerM(), dampingRatio);
  }

  /**
   * A mode measured as a complex residue r = σ + iν: α = 2(ζω_nσ − ω_dν), β = 2σ, ω_d = ω_n√(1 −
   * ζ²) (Altintas, Manufacturing Automation, 2nd ed. (2012); as coded in a public script).
   *
   * @param angularFrequencyRadPerS ω_n, rad/s, greater than 0
   * @param dampingRatio ζ, above 0 to below 1
   * @param residueRe σ, m/(N·s)
   * @param residueIm ν, m/(N·s)
   * @return the mode
   */
  public static TipMode ofResidue(
      double angularFrequencyRadPerS, double dampingRatio, double residueRe, double residueIm) {
    double damped = angularFrequencyRadPerS * Math.sqrt(1 - dampingRatio * dampingRatio);
    double alpha = 2 * (dampingRatio * angularFrequencyRadPerS * residueRe - damped * residueIm);
    return new TipMode(angularFrequencyRadPerS, dampingRatio, alpha, 2 * residueRe);
  }

  /**
   * Modal stiffness k = ω_n²/α, as seen statically.
   *
   * @return k, N/m
   */
  public double stiffnessNPerM() {
    return angularFrequencyRadPerS * angularFrequencyRadPerS / inverseMassPerKg;
  }
}
