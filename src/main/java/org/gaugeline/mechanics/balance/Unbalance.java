package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;

/**
 * Unbalance of an assembly in the spindle: what the assembly keeps after balancing and what its
 * seat adds at a phase of chance.
 *
 * @param residualKgM residual unbalance of the assembly, kg·m, at least 0
 * @param seatingKgM unbalance from seating, kg·m, at least 0
 */
public record Unbalance(double residualKgM, double seatingKgM) {
  /** Checks the ranges. */
  public Unbalance {
    Require.notNegative("residualKgM", residualKgM);
    Require.notNegative("seatingKgM", seatingKgM);
  }

  /**
   * Root mean square over the phase: √(U² + Us²).
   *
   * @return unbalance, kg·m
   */
  public double typicalKgM() {
    return Math.sqrt(residualKgM * residualKgM + seatingKgM * seatingKgM);
  }

  /**
   * Both in phase: U + Us.
   *
   * @return unbalance, kg·m
   */
  public double worstKgM() {
    return residualKgM + seatingKgM;
  }

  /**
   * Centrifugal force of an unbalance: F = U·ω².
   *
   * @param unbalanceKgM unbalance U, kg·m, at least 0
   * @param angularVelocityRadPerS angular velocity ω, rad/s, at least 0
   * @return force, N
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double centrifugalForceN(double unbalanceKgM, double angularVelocityRadPerS) {
    Require.notNegative("unbalanceKgM", unbalanceKgM);
    Require.notNegative("angularVelocityRadPerS", angularVelocityRadPerS);
    return unbalanceKgM * angularVelocityRadPerS * angularVelocityRadPerS;
  }
}
