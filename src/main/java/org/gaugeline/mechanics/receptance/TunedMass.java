package org.gaugeline.mechanics.receptance;

import org.gaugeline.mechanics.Require;

/**
 * A mass on a spring and a viscous damper, as it hangs on its host.
 *
 * <p>Its dynamic stiffness at the host is Z = −ω²m₂(k₂ + iωc₂)/(k₂ + iωc₂ − ω²m₂) with k₂ = m₂ω₂²
 * and c₂ = 2ζm₂ω₂ (Den Hartog, Mechanical Vibrations, ch. 3; memory).
 *
 * @param massKg m₂, kg, 0 or more
 * @param angularFrequencyRadPerS its own frequency ω₂ on a fixed host, rad/s, greater than 0
 * @param dampingRatio ζ = c₂/(2m₂ω₂), 0 or more; relative to the absorber's own frequency
 */
public record TunedMass(double massKg, double angularFrequencyRadPerS, double dampingRatio) {
  public TunedMass {
    Require.notNegative("massKg", massKg);
    Require.positive("angularFrequencyRadPerS", angularFrequencyRadPerS);
    Require.notNegative("dampingRatio", dampingRatio);
  }

  /**
   * Writes the dynamic stiffness Z = f/x at the host.
   *
   * @param omegaRadPerS ω, rad/s
   * @param target receives real and imaginary part, N/m
   */
  public void dynamicStiffness(double omegaRadPerS, double[] target) {
    double r = omegaRadPerS / angularFrequencyRadPerS;
    double springIm = 2 * dampingRatio * r;
    double leftRe = 1 - r * r;
    double scale = -omegaRadPerS * omegaRadPerS * massKg / (leftRe * leftRe + springIm * springIm);
    target[0] = scale * (leftRe + springIm * springIm);
    target[1] = scale * springIm * (leftRe - 1);
  }
}
