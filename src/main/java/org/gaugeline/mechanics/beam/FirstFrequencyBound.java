package org.gaugeline.mechanics.beam;

/**
 * A frequency that the first bending mode of a clamped chain cannot fall below.
 *
 * <p>Dunkerley: 1/ω₁² &lt; Σ 1/ω_i², and the sum over all modes is the trace of the flexibility
 * weighted by the inertia, ∫(ρA·c_ww + ρI·c_θθ)dz, where c_ww(z) is the deflection at z per force
 * at z and c_θθ(z) the rotation at z per moment at z (Thomson, Theory of Vibration, "Dunkerley's
 * formula", here for a continuous Timoshenko beam with rotary inertia). The integral is exact over
 * cylinders. Over a cone that narrows towards the tip the mean inertia and evenly spread
 * flexibility are taken, which both err upwards because inertia falls and flexibility grows along
 * it; over one that widens, all its inertia is put at its tip end. So the result is a lower bound
 * for every chain.
 */
public final class FirstFrequencyBound {
  private FirstFrequencyBound() {}

  /**
   * Lower bound on the first bending frequency. Allocates nothing.
   *
   * @param chain the chain
   * @return angular frequency, rad/s; infinite for a chain without mass
   */
  public static double angularFrequencyRadPerS(BeamChain chain) {
    double[] t = chain.table;
    double ww = 0;
    double wt = 0;
    double tt = 0;
    double trace = 0;
    for (int at = 0, end = chain.rows * ChainRows.STRIDE; at < end; at += ChainRows.STRIDE) {
      double l = t[at + ChainRows.LENGTH];
      double f0 = t[at + ChainRows.FLEX_0];
      double f2 = t[at + ChainRows.FLEX_2];
      double shear = t[at + ChainRows.SHEAR];
      double mass = l * t[at + ChainRows.MASS];
      double rotary = l * t[at + ChainRows.ROTARY];
      double kind = t[at + ChainRows.KIND];
      if (kind == ChainRows.UNIFORM || kind == ChainRows.NARROWING) {
        trace += mass * (ww + l * (wt + l * tt / 3) + f2 / 4 + shear / 2);
        trace += rotary * (tt + f0 / 2);
      }
      ww += l * (2 * wt + l * tt) + f2 + shear;
      wt += l * tt + t[at + ChainRows.FLEX_1];
      tt += f0;
      if (kind == ChainRows.WIDENING) {
        trace += mass * ww + rotary * tt;
      }
    }
    return 1 / Math.sqrt(trace);
  }

  /**
   * The bound of {@link #angularFrequencyRadPerS} in hertz.
   *
   * @param chain the chain
   * @return frequency, Hz
   */
  public static double frequencyHz(BeamChain chain) {
    return angularFrequencyRadPerS(chain) / (2 * Math.PI);
  }

  /**
   * Lower bound from a few numbers of two parts in series, looser and cheaper than the exact trace:
   * every mass of a part deflects no more than the part's outer end, so 1/ω² ≤ Σ(m·C + J·P).
   *
   * @param innerMassKg mass of the part at the base, kg
   * @param innerRotaryKgM2 rotary inertia of its sections ∫ρI dx, kg·m²
   * @param innerComplianceMPerN deflection of its outer end by a force there, m/N
   * @param innerRotationRadPerNm rotation of its outer end by a moment there, rad/(N·m)
   * @param outerMassKg mass of the part at the tip, kg
   * @param outerRotaryKgM2 rotary inertia of its sections, kg·m²
   * @param outerComplianceMPerN deflection of the tip by a force there, m/N
   * @param outerRotationRadPerNm rotation of the tip by a moment there, rad/(N·m)
   * @return ω, rad/s, never above the first frequency
   */
  public static double ofPartsRadPerS(
      double innerMassKg,
      double innerRotaryKgM2,
      double innerComplianceMPerN,
      double innerRotationRadPerNm,
      double outerMassKg,
      double outerRotaryKgM2,
      double outerComplianceMPerN,
      double outerRotationRadPerNm) {
    return 1
        / Math.sqrt(
            innerMassKg * innerComplianceMPerN
                + innerRotaryKgM2 * innerRotationRadPerNm
                + outerMassKg * outerComplianceMPerN
                + outerRotaryKgM2 * outerRotationRadPerNm);
  }
}
