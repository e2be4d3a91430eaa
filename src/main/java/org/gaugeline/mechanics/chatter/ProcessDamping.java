package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.Require;

/**
 * Damping by the flank that rubs on the waves it leaves: a force against the velocity ṙ of the edge
 * into the work, F_r = −C·a·ṙ/v with v = ΩR, written as C = K_t·ℓ. So ωℓ/v says how it compares
 * with the regenerative force; it matters for waves 2πv/ω shorter than 2πℓ.
 *
 * <p>Linear, for small vibrations, the friction along the flank left out (Altintas, Eynian and
 * Onozuka, CIRP Annals 57/1 (2008) 389: C = 6.1e5 N/m in a medium carbon steel; Tyler and Schmitz,
 * J. Manuf. Process. 15 (2013): 2.5e5 N/m in a soft one; memory). It grows with the land that wear
 * leaves on the flank.
 *
 * @param lengthM ℓ, m, 0 or more; 0 = none
 * @param cuttingRadiusM R, m, greater than 0
 */
public record ProcessDamping(double lengthM, double cuttingRadiusM) {
  /** No damping by the cut. */
  public static final ProcessDamping NONE = new ProcessDamping(0, 1);

  public ProcessDamping {
    Require.notNegative("lengthM", lengthM);
    Require.positive("cuttingRadiusM", cuttingRadiusM);
  }

  /** Whether there is any. */
  public boolean exists() {
    return lengthM > 0;
  }

  /**
   * Time ℓ/v by which the velocity counts beside the displacement.
   *
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @return ℓ/v, s
   */
  double timeS(double spindleRadPerS) {
    return lengthM / (cuttingRadiusM * Require.positive("spindleRadPerS", spindleRadPerS));
  }
}
