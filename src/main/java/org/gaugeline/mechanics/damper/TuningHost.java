package org.gaugeline.mechanics.damper;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BendingMode;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.FirstShape;
import org.gaugeline.mechanics.receptance.TunedMass;

/**
 * The lowest bending mode of a host as a tuned mass meets it: the frequency that the mass is tuned
 * to, and how much of the mass the tip feels.
 *
 * @param angularFrequencyRadPerS ω₁ of the host without the mass, rad/s, greater than 0
 * @param massRatio µ = m_d(φ(z_d)/φ_tip)²/m_tip by the shape of that mode, above 0 to 1
 * @param massKg m_d, kg, greater than 0
 */
public record TuningHost(double angularFrequencyRadPerS, double massRatio, double massKg) {
  /** A mass nearer to the wall moves nothing, and has no tuning. */
  private static final double LEAST_RATIO = 1e-9;

  public TuningHost {
    Require.positive("angularFrequencyRadPerS", angularFrequencyRadPerS);
    Require.positive("massRatio", massRatio);
    Require.within("massRatio", massRatio, 0, 1);
    Require.positive("massKg", massKg);
  }

  /**
   * Solves a chain for its lowest mode and its shape at the place of the mass. A ratio above 1 is
   * taken as 1, beyond which the tunings are not meant to hold.
   *
   * @param chain the host without the mass
   * @param atM place of the mass from the base, m, 0 to the chain's length
   * @param massKg the mass, kg, greater than 0
   * @return the mode
   * @throws IllegalArgumentException if the place is outside the chain or the chain has no mass
   */
  public static TuningHost of(BeamChain chain, double atM, double massKg) {
    BendingModes solver = new BendingModes();
    solver.solve(chain, 1);
    BendingMode first = solver.toList().get(0);
    double shape = FirstShape.of(chain).ratioToTip(atM);
    double ratio = TunedDamper.effectiveMassRatio(massKg, shape, first.tipModalMassKg());
    return new TuningHost(
        first.angularFrequencyRadPerS(), Math.min(1, Math.max(LEAST_RATIO, ratio)), massKg);
  }

  /**
   * The mass tuned against chatter, {@link TunedDamper#chatter}.
   *
   * @return the tuned mass
   */
  public TunedMass chatterTuned() {
    return tuned(TunedDamper.chatter(massRatio));
  }

  /**
   * The mass tuned classically, {@link TunedDamper#denHartog}.
   *
   * @return the tuned mass
   */
  public TunedMass classicallyTuned() {
    return tuned(TunedDamper.denHartog(massRatio));
  }

  private TunedMass tuned(TunedDamper damper) {
    return damper.toTunedMass(angularFrequencyRadPerS, massKg / massRatio);
  }
}
