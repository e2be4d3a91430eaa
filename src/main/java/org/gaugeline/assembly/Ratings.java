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

  /** With what is known better of the same body. */
  Ratings with(Ratings better) {
    return new Ratings(
        or(better.maxSpeedRadPerS, maxSpeedRadPerS),
        or(better.balanceGradeMPerS, balanceGradeMPerS),
        or(better.balanceSpeedRadPerS, balanceSpeedRadPerS),
        or(better.residualUnbalanceKgM, residualUnbalanceKgM),
        or(better.runoutTirM, runoutTirM),
        or(better.massKg, massKg),
        or(better.nutTorqueNm, nutTorqueNm),
        or(better.interferenceM, interferenceM),
        or(better.frictionCoefficient, frictionCoefficient),
        or(better.clampingTorqueNm, clampingTorqueNm),
        or(better.axialHoldN, axialHoldN));
  }

  private static double or(double better, double otherwise) {
    return Double.isNaN(better) ? otherwise : better;
  }

  /**
   * What stays true of a nose when something is put behind it: its clamping and its marked speed,
   * not its balance.
   */
  Ratings ofNose() {
    return new Ratings(
        maxSpeedRadPerS,
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
