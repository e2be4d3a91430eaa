package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;

/**
 * Balance quality grade G: the velocity e·ω of the centre of mass about the axis of rotation (ISO
 * 21940-11). G2.5 stands for 2.5 mm/s.
 *
 * @param velocityMPerS the velocity e·ω, m/s, above 0
 */
public record BalanceGrade(double velocityMPerS) {
  /** Checks the range. */
  public BalanceGrade {
    Require.positive("velocityMPerS", velocityMPerS);
  }

  /**
   * Velocity e·ω that an unbalance gives: U·ω/m.
   *
   * @param unbalanceKgM unbalance U, kg·m, at least 0
   * @param massKg mass m of the assembly, kg, above 0
   * @param angularVelocityRadPerS angular velocity ω, rad/s, at least 0
   * @return velocity, m/s; the grade G reached is a thousand times this number
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double reachedMPerS(
      double unbalanceKgM, double massKg, double angularVelocityRadPerS) {
    Require.notNegative("unbalanceKgM", unbalanceKgM);
    Require.positive("massKg", massKg);
    Require.notNegative("angularVelocityRadPerS", angularVelocityRadPerS);
    return unbalanceKgM / massKg * angularVelocityRadPerS;
  }

  /**
   * Permissible unbalance: U = G·m/ω (ISO 21940-11; 9549·G·m/n in g·mm, kg and 1/min).
   *
   * @param massKg mass m of the assembly, kg, above 0
   * @param angularVelocityRadPerS angular velocity ω, rad/s, above 0
   * @return permissible unbalance, kg·m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double permissibleUnbalanceKgM(double massKg, double angularVelocityRadPerS) {
    Require.positive("massKg", massKg);
    return massKg * permissibleEccentricityM(angularVelocityRadPerS);
  }

  /**
   * Permissible eccentricity of the centre of mass: e = G/ω (ISO 21940-11; 9549·G/n in µm and
   * 1/min).
   *
   * @param angularVelocityRadPerS angular velocity ω, rad/s, above 0
   * @return permissible eccentricity, m
   * @throws IllegalArgumentException if the angular velocity is not above 0
   */
  public double permissibleEccentricityM(double angularVelocityRadPerS) {
    return velocityMPerS / Require.positive("angularVelocityRadPerS", angularVelocityRadPerS);
  }

  /**
   * Angular velocity up to which an unbalance keeps the grade: ω = G·m/U.
   *
   * @param unbalanceKgM unbalance U, kg·m, at least 0
   * @param massKg mass m of the assembly, kg, above 0
   * @return angular velocity, rad/s; infinite without unbalance
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double angularVelocityRadPerS(double unbalanceKgM, double massKg) {
    Require.notNegative("unbalanceKgM", unbalanceKgM);
    return velocityMPerS * Require.positive("massKg", massKg) / unbalanceKgM;
  }

  /**
   * Whether the grade can be reached on a seat at all: the seat's own eccentricity must not exceed
   * the permissible one, however well the assembly is balanced.
   *
   * @param seat seat of the assembly in the spindle
   * @param angularVelocityRadPerS angular velocity, rad/s, above 0
   * @return true if attainable
   * @throws IllegalArgumentException if the angular velocity is not above 0
   */
  public boolean isAttainableOn(SeatEccentricity seat, double angularVelocityRadPerS) {
    return seat.eccentricityM() <= permissibleEccentricityM(angularVelocityRadPerS);
  }
}
