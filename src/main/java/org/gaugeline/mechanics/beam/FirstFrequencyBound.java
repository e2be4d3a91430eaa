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
}
