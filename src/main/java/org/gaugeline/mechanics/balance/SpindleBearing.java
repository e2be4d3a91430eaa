package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;

/**
 * Front and rear bearing of a spindle that carries the tool overhung, and the share of the
 * bearing's rating that unbalance may use.
 *
 * <p>The share of the dynamic load rating is the criterion quoted for ISO 16084; the standard's
 * full formula with lever arms and two planes is not covered. A grade caps it, since no assembly
 * should turn worse than that grade (G40 in ISO 16084 clause 4.3).
 *
 * @param dynamicRatingN dynamic load rating C of the front bearing, N, above 0
 * @param unbalanceShare share of the rating that the unbalance force may reach, above 0 to 1
 * @param cap grade that the permissible unbalance never exceeds
 */
public record SpindleBearing(double dynamicRatingN, double unbalanceShare, BalanceGrade cap) {
  /** Checks the ranges. */
  public SpindleBearing {
    Require.positive("dynamicRatingN", dynamicRatingN);
    Require.positive("unbalanceShare", unbalanceShare);
    Require.within("unbalanceShare", unbalanceShare, 0, 1);
  }

  /**
   * Unbalance that the bearing rating allows, without the cap: U = s·C/ω².
   *
   * @param angularVelocityRadPerS angular velocity ω, rad/s, above 0
   * @return unbalance, kg·m
   * @throws IllegalArgumentException if the angular velocity is not above 0
   */
  public double ratedUnbalanceKgM(double angularVelocityRadPerS) {
    Require.positive("angularVelocityRadPerS", angularVelocityRadPerS);
    return unbalanceShare * dynamicRatingN / (angularVelocityRadPerS * angularVelocityRadPerS);
  }

  /**
   * Permissible unbalance: the smaller of what the rating allows and what the capping grade allows.
   *
   * @param massKg mass of the assembly, kg, above 0
   * @param angularVelocityRadPerS angular velocity, rad/s, above 0
   * @return unbalance, kg·m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double permissibleUnbalanceKgM(double massKg, double angularVelocityRadPerS) {
    return Math.min(
        ratedUnbalanceKgM(angularVelocityRadPerS),
        cap.permissibleUnbalanceKgM(massKg, angularVelocityRadPerS));
  }

  /**
   * Highest angular velocity for an unbalance: the smaller of √(s·C/U) and the speed at which the
   * capping grade is reached.
   *
   * @param unbalanceKgM unbalance U, kg·m, at least 0
   * @param massKg mass of the assembly, kg, above 0
   * @return angular velocity, rad/s; infinite without unbalance
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double angularVelocityRadPerS(double unbalanceKgM, double massKg) {
    Require.notNegative("unbalanceKgM", unbalanceKgM);
    return Math.min(
        Math.sqrt(unbalanceShare * dynamicRatingN / unbalanceKgM),
        cap.angularVelocityRadPerS(unbalanceKgM, massKg));
  }

  /**
   * Load on the front bearing from a radial force in an overhung plane: F·(b + L)/b (statics of the
   * overhung beam).
   *
   * @param radialForceN radial force F, N, at least 0
   * @param bearingSpanM distance b between the bearings, m, above 0
   * @param overhangM distance L of the force in front of the front bearing, m, at least 0
   * @return load, N
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double frontBearingForceN(
      double radialForceN, double bearingSpanM, double overhangM) {
    Require.notNegative("radialForceN", radialForceN);
    Require.positive("bearingSpanM", bearingSpanM);
    Require.notNegative("overhangM", overhangM);
    return radialForceN * (bearingSpanM + overhangM) / bearingSpanM;
  }
}
