package org.gaugeline.mechanics.balance;

import org.gaugeline.mechanics.Require;

/**
 * Radial offset with which an assembly sits in the spindle after a tool change.
 *
 * @param eccentricityM offset e of the assembly's axis from the axis of rotation, m, at least 0
 */
public record SeatEccentricity(double eccentricityM) {
  /** Checks the range. */
  public SeatEccentricity {
    Require.notNegative("eccentricityM", eccentricityM);
  }

  /**
   * Seat whose total indicated runout is known: e = TIR/2.
   *
   * @param tirM total indicated runout, m, at least 0
   * @return the seat
   * @throws IllegalArgumentException if the runout is negative
   */
  public static SeatEccentricity ofTir(double tirM) {
    return new SeatEccentricity(tirM / 2);
  }

  /**
   * Unbalance from seating alone: U = m·e.
   *
   * @param massKg mass m of the assembly, kg, above 0
   * @return unbalance, kg·m
   * @throws IllegalArgumentException if the mass is not above 0
   */
  public double unbalanceKgM(double massKg) {
    return Require.positive("massKg", massKg) * eccentricityM;
  }

  /**
   * Velocity e·ω from seating alone, whatever the mass.
   *
   * @param angularVelocityRadPerS angular velocity ω, rad/s, at least 0
   * @return velocity, m/s; the best grade G on this seat is a thousand times this number
   * @throws IllegalArgumentException if the angular velocity is negative
   */
  public double velocityMPerS(double angularVelocityRadPerS) {
    return eccentricityM * Require.notNegative("angularVelocityRadPerS", angularVelocityRadPerS);
  }
}
