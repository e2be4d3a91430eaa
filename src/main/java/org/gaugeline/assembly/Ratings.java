package org.gaugeline.assembly;

/**
 * What is marked on a holder or was measured; NaN stands for not given. A given value replaces the
 * prediction and is named as given.
 *
 * @param maxSpeedRadPerS marked speed limit
 * @param balanceGradeMPerS marked balance grade G, m/s (G6.3 is 0.0063)
 * @param balanceSpeedRadPerS speed of that grade
 * @param residualUnbalanceKgM measured residual unbalance
 * @param runoutTirM measured runout of the bore, TIR
 * @param massKg weighed mass
 * @param nutTorqueNm tightening torque
 * @param interferenceM diametral interference of a shrink bore
 * @param frictionCoefficient measured friction
 * @param clampingTorqueNm marked transmissible torque
 * @param axialHoldN marked axial hold
 */
public record Ratings(
    double maxSpeedRadPerS,
    double balanceGradeMPerS,
    double balanceSpeedRadPerS,
    double residualUnbalanceKgM,
    double runoutTirM,
    double massKg,
    double nutTorqueNm,
    double interferenceM,
    double frictionCoefficient,
    double clampingTorqueNm,
    double axialHoldN) {

  private static final double N = Double.NaN;

  /** Nothing marked, nothing measured. */
  public static final Ratings NONE = new Ratings(N, N, N, N, N, N, N, N, N, N, N);

  /** What stays true of a nose when something is put behind it: its clamping, not its balance. */
  Ratings ofNose() {
    return new Ratings(
        N,
        N,
        N,
        N,
        runoutTirM,
        N,
        nutTorqueNm,
        interferenceM,
        frictionCoefficient,
        clampingTorqueNm,
        axialHoldN);
  }
}
