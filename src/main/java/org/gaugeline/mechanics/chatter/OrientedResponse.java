package org.gaugeline.mechanics.chatter;

/**
 * Response of the chip thickness to the cutting force as one or two complex numbers λ(ω), so that
 * the cut is at its limit where gain·a·(1 − e^{−iωT})·λ = 1.
 */
interface OrientedResponse {
  /** Number of branches, 1 or 2. */
  int branches();

  /** Factor that belongs to the depth, Pa. */
  double gainPa();

  /** Cuts per revolution. */
  int teeth();

  /** Frequencies between which λ is smooth, ascending. */
  double[] supportRadPerS();

  /** Writes real and imaginary part of each branch, in no fixed order; m/N. */
  void at(double omegaRadPerS, double[] lambda);
}
