package org.gaugeline.mechanics.damper;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.receptance.TunedMass;

/**
 * A tuned mass on one mode of a host, in ratios.
 *
 * <p>Two definitions of its damping are in use and differ by 1 + µ; this one relates to the
 * absorber's own frequency: ζ = c₂/(2m₂ω₂).
 *
 * @param massRatio µ = m₂/m₁, absorber over modal mass at its place, above 0 to 1
 * @param frequencyRatio f = ω₂/ω₁, greater than 0
 * @param dampingRatio ζ, 0 or more
 */
public record TunedDamper(double massRatio, double frequencyRatio, double dampingRatio) {
  public TunedDamper {
    Require.positive("massRatio", massRatio);
    Require.within("massRatio", massRatio, 0, 1);
    Require.positive("frequencyRatio", frequencyRatio);
    Require.notNegative("dampingRatio", dampingRatio);
  }

  /**
   * Classical tuning, which makes the largest |G| of an undamped host least: f = 1/(1 + µ), ζ =
   * √(3µ/(8(1 + µ))); the peak of k|G| is then near √(1 + 2/µ) (Den Hartog, Mechanical Vibrations,
   * ch. 3; the often printed √(3µ/(8(1 + µ)³)) is c₂/(2m₂ω₁)).
   *
   * @param massRatio µ, above 0 to 1
   * @return the tuned damper
   */
  public static TunedDamper denHartog(double massRatio) {
    return new TunedDamper(massRatio, 1 / (1 + massRatio), classicalDamping(massRatio));
  }

  /**
   * Tuning against chatter, which makes the negative real part of an undamped host least deep: f =
   * √[(µ + 2 + √(2µ + µ²))/(2(1 + µ)²)], ζ ≈ √(3µ/(8(1 + µ))) (Sims, J. Sound Vib. 301 (2007) 592;
   * memory). The optimum is flat in ζ. f is above 1 for small µ.
   *
   * @param massRatio µ, above 0 to 1
   * @return the tuned damper
   */
  public static TunedDamper chatter(double massRatio) {
    double up = massRatio + 2 + Math.sqrt(massRatio * (2 + massRatio));
    double f = Math.sqrt(up / 2) / (1 + massRatio);
    return new TunedDamper(massRatio, f, classicalDamping(massRatio));
  }

  private static double classicalDamping(double massRatio) {
    return Math.sqrt(3 * massRatio / (8 * (1 + massRatio)));
  }

  /**
   * Deepest negative real part that chatter tuning leaves on an undamped host, k·|min Re G| = (√(1
   * + 2/µ) − 1)/2; within 0.2 % of the numerical optimum for µ up to 0.1 (computed).
   *
   * @param massRatio µ, above 0 to 1
   * @return k·|min Re G|, dimensionless
   */
  public static double leastNegativeRealUndamped(double massRatio) {
    Require.positive("massRatio", massRatio);
    return (Math.sqrt(1 + 2 / massRatio) - 1) / 2;
  }

  /**
   * Mass ratio of an absorber at some place of a bar, for the bar's response at its tip: µ =
   * m_d(φ(z_d)/φ_tip)²/m_tip.
   *
   * @param massKg m_d, kg, greater than 0
   * @param shapeRatio φ(z_d)/φ_tip
   * @param tipModalMassKg m_tip, kg, greater than 0; ¼ρAL for a uniform bar
   * @return µ
   */
  public static double effectiveMassRatio(double massKg, double shapeRatio, double tipModalMassKg) {
    Require.positive("massKg", massKg);
    Require.positive("tipModalMassKg", tipModalMassKg);
    return massKg * shapeRatio * shapeRatio / tipModalMassKg;
  }

  /**
   * This damper with another frequency.
   *
   * @param share relative change of its frequency, −0.05 for 5 % too low
   * @return the detuned damper
   */
  public TunedDamper detuned(double share) {
    return new TunedDamper(massRatio, frequencyRatio * (1 + share), dampingRatio);
  }

  /**
   * This damper with another damping.
   *
   * @param share relative change of its damping
   * @return the changed damper
   */
  public TunedDamper withDampingChanged(double share) {
    return new TunedDamper(massRatio, frequencyRatio, dampingRatio * (1 + share));
  }

  /**
   * The mass itself, to hang on a host.
   *
   * @param hostRadPerS ω₁, rad/s
   * @param hostModalMassKg m₁ at the place of the absorber, kg
   * @return the tuned mass
   */
  public TunedMass toTunedMass(double hostRadPerS, double hostModalMassKg) {
    return new TunedMass(massRatio * hostModalMassKg, frequencyRatio * hostRadPerS, dampingRatio);
  }

  /**
   * Response of host and damper, kG = A/[(1 − r² + 2iζ₁r)A − µr²(f² + 2iζfr)], A = f² − r² + 2iζfr,
   * r = ω/ω₁ (Den Hartog, Mechanical Vibrations, ch. 3).
   *
   * @param r ω/ω₁
   * @param hostDampingRatio ζ₁
   * @param target receives real and imaginary part of kG
   */
  public void response(double r, double hostDampingRatio, double[] target) {
    double f2 = frequencyRatio * frequencyRatio;
    double aRe = f2 - r * r;
    double aIm = 2 * dampingRatio * frequencyRatio * r;
    double hostRe = 1 - r * r;
    double hostIm = 2 * hostDampingRatio * r;
    double pull = massRatio * r * r;
    double downRe = hostRe * aRe - hostIm * aIm - pull * f2;
    double downIm = hostRe * aIm + hostIm * aRe - pull * aIm;
    double square = downRe * downRe + downIm * downIm;
    target[0] = (aRe * downRe + aIm * downIm) / square;
    target[1] = (aIm * downRe - aRe * downIm) / square;
  }
}
