package org.gaugeline.mechanics.damper;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.beam.ReducedModes;
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
   * The lowest mode of a reduced chain with a watched place, at its last solution. A ratio above 1
   * is taken as 1, beyond which the tunings are not meant to hold.
   *
   * @param modes of the host without the mass, solved
   * @param massKg the mass at the watched place, kg, greater than 0
   * @return the mode
   */
  public static TuningHost of(ReducedModes modes, double massKg) {
    // m_d(φ_p/φ_t)² over the modal mass 1/φ_t² of the tip
    double ratio = massKg * modes.placeShape(0) * modes.placeShape(0);
    return new TuningHost(
        modes.angularFrequencyRadPerS(0), Math.min(1, Math.max(LEAST_RATIO, ratio)), massKg);
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
